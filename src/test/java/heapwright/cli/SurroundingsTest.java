package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The command line, in surroundings that are not as one would wish,")
class SurroundingsTest {

    private static final Path CASE = Path.of("cases/demo/sour-soggy-cold-three-weeks-old.json");

    @TempDir
    private Path folder;

    /** A disk that is full after some bytes, as {@code /dev/full} is from the first. */
    private static final class FullDisk extends OutputStream {
        @Override
        public void write(int b) throws IOException {
            throw new IOException("No space left on device");
        }
    }

    private static int run(OutputStream out, ByteArrayOutputStream err, String... args) {
        return new Program(new Terminal(
                        new ByteArrayInputStream(new byte[0]),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false))
                .run(args);
    }

    @Test
    @DisplayName("does not pass off an answer that could not be written as given")
    void unwritten() {
        for (String[] args :
                List.of(new String[] {"signs"}, new String[] {"--help"}, new String[] {"rules", "--json"})) {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            assertEquals(Program.UNWRITTEN, run(new FullDisk(), err, args), args[0]);
            assertTrue(err.toString(StandardCharsets.UTF_8).contains("could be written"), err::toString);
            assertEquals(Program.OK, run(new ByteArrayOutputStream(), err, args), args[0]);
        }
        assertEquals(Program.BAD_INPUT, run(new FullDisk(), new ByteArrayOutputStream(), "checkup", "none.json"));
    }

    @Tag("thorough")
    @Test
    @DisplayName("opens a file whose name has letters that plain ASCII has not")
    void lettersBeyondAscii() throws IOException, InterruptedException {
        assumeTrue(
                System.getProperty("os.name").equals("Linux"),
                "elsewhere names of files have an alphabet of their own");
        String name = new String(new byte[] {'m', (byte) 0xC3, (byte) 0xB6, 'k', 'k', 'i'}, StandardCharsets.UTF_8);
        Files.createDirectory(folder.resolve("plain"));
        // The shell makes the names, since this test may run under plain ASCII itself.
        shell("mkdir '" + name + "' && cp \"$1\" '" + name + "'/'" + name + ".json' && cp \"$1\" 'a" + name + ".json'");
        Said said = shell("LC_ALL=C exec \"$2\" -XX:TieredStopAtLevel=1 -cp \"$3\" heapwright.cli.Main audit '" + name
                + "'/'" + name + ".json'");
        assertEquals(Program.OK, said.code(), said.text());
        assertFalse(said.text().isBlank());
        shell("cp '" + name + "'/'" + name + ".json' '" + name + "'/m\u00e4kki.json");
        Said two = shell("LC_ALL=C exec \"$2\" -XX:TieredStopAtLevel=1 -cp \"$3\" heapwright.cli.Main audit '" + name
                + "'/'" + name + ".json'");
        assertEquals(Program.BAD_INPUT, two.code(), "two files look the same there");
        assertTrue(two.text().contains("LC_ALL=C.UTF-8"), two.text());
    }

    private record Said(int code, String text) {}

    /** Runs a line of the shell in the folder, given as bytes of UTF-8; $1 is the case, $2 Java, $3 the class path. */
    private Said shell(String line) throws IOException, InterruptedException {
        Path script = Files.write(folder.resolve("plain/line.sh"), line.getBytes(StandardCharsets.UTF_8));
        List<String> command = new ArrayList<>(
                List.of("sh", script.toString(), CASE.toAbsolutePath().toString()));
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add(System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Said(process.waitFor(), text);
    }

    @Test
    @DisplayName("says at the start of serve that piles cannot be kept in a file")
    void notAFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        for (Path piles : List.of(file, file.resolve("piles"))) {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            assertEquals(
                    Program.BAD_INPUT,
                    run(
                            new ByteArrayOutputStream(),
                            err,
                            "serve",
                            "--no-browser",
                            "--port",
                            "0",
                            "--piles",
                            piles.toString()));
            String said = err.toString(StandardCharsets.UTF_8);
            assertTrue(said.contains("\"" + file + "\" is not a folder") && said.contains("Example:"), said);
        }
    }
}
