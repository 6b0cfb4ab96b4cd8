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
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
    private static final String CUT = "…";

    /** Sections of the answer that the README shows to the end; of the others it shows what stands at the margin. */
    private static final Set<String> WHOLE = Set.of("Do this first", "Held back", "The figures behind it");

    private static final String EVIDENCE = "What is likely, and why";

    @Test
    @DisplayName("names the command that runs and the command that tests")
    void commands() {
        String readme = Papers.read(README);
        assertTrue(readme.contains(
                "mvn -q -DskipTests package && java -jar target/heapwright.jar checkup " + CARD + "\n"));
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
                readme.substring(0, from + FROM.length()) + "```text\n" + shortened(checkup()) + "```\n"
                        + readme.substring(to));
    }

    private static List<String> checkup() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream said = new PrintStream(out, true, StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(new ByteArrayInputStream(new byte[0]), said, said, false);
        assertEquals(Program.OK, new Program(terminal).run("checkup", CARD));
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }

    private static String shortened(List<String> lines) {
        List<List<String>> sections = new ArrayList<>();
        for (String line : lines) {
            boolean afterBlank = sections.isEmpty() || last(last(sections)).isBlank();
            if (afterBlank && line.matches("\\p{Lu}[^.:]*")) {
                sections.add(new ArrayList<>());
            }
            last(sections).add(line);
        }
        StringBuilder text = new StringBuilder();
        for (List<String> section : sections) {
            boolean whole = section == sections.get(0) || WHOLE.contains(section.get(0));
            (whole ? section : margin(section)).forEach(l -> text.append(l).append('\n'));
        }
        return text.toString();
    }

    /** A section without what is indented or listed, but with the whole of the first finding. */
    private static List<String> margin(List<String> section) {
        boolean evidence = section.get(0).equals(EVIDENCE);
        List<String> shown = new ArrayList<>();
        int atMargin = 0;
        for (String line : section.stream().filter(l -> !l.isBlank()).toList()) {
            boolean here = line.matches("[^\\s-].*");
            atMargin += here ? 1 : 0;
            if (here || (evidence && atMargin == 2)) {
                shown.add(line);
            } else if (!last(shown).equals(CUT)) {
                shown.add(CUT);
            }
        }
        shown.add("");
        return shown;
    }

    private static <T> T last(List<T> list) {
        return list.get(list.size() - 1);
    }
}
