package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.cli.Program;
import heapwright.cli.Terminal;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.PileReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The README")
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final String CARD = "cases/demo/sour-soggy-cold-three-weeks-old.json";
    private static final String FROM = "<!-- transcript: made by ReadmeTest -->\n";
    private static final String TO = "<!-- end of transcript -->\n";

    @Test
    @DisplayName("names the command that runs and the command that tests")
    void commands() {
        String readme = Papers.read(README);
        assertTrue(readme.contains("mvn -q -DskipTests package && target/heapwright checkup " + CARD + "\n"));
        assertTrue(readme.contains("mvn -B verify\n"));
    }

    @Test
    @DisplayName("shows a pile file that can be read")
    void pileFile() {
        Matcher json = Pattern.compile("(?s)```json\\n(.*?)```").matcher(Papers.read(README));
        assertTrue(json.find());
        PileReader reader = new PileReader(KnowledgeReader.packed().vocabulary());
        assertEquals(
                List.of(),
                reader.read("README.md", json.group(1).getBytes(StandardCharsets.UTF_8))
                        .problems());
    }

    @Test
    @DisplayName("shows what the program says, shortened only where it says so")
    void transcript() {
        String readme = Papers.read(README);
        int from = readme.indexOf(FROM);
        int to = readme.indexOf(TO);
        assertTrue(from >= 0 && to > from, "the marks of the transcript are gone");
        Papers.hold(
                README,
                readme.substring(0, from + FROM.length()) + "```text\n" + checkup() + "```\n" + readme.substring(to));
    }

    private static String checkup() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream said = new PrintStream(out, true, StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(new ByteArrayInputStream(new byte[0]), said, said, false);
        assertEquals(Program.OK, new Program(terminal).run("checkup", CARD));
        return out.toString(StandardCharsets.UTF_8);
    }
}
