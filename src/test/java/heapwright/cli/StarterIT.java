package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The starter")
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the starter is a shell script")
class StarterIT {

    private static final Path STARTER = Path.of("target/heapwright").toAbsolutePath();
    private static final Path JAR = Path.of("target/heapwright.jar").toAbsolutePath();
    private static final String CASE = "cases/demo/leaf-heap-that-never-warmed.json";

    @TempDir
    private Path folder;

    @Test
    @DisplayName("says what the jar says")
    void same() throws Exception {
        Said plain = run(Map.of(), java(), "-jar", JAR.toString(), "audit", CASE);
        assertEquals(0, plain.code());
        assertFalse(plain.out().isBlank());
        assertEquals(plain, run(Map.of(), STARTER.toString(), "audit", CASE));
    }

    @Test
    @DisplayName("takes the rules from the archive that the build left")
    void archived() throws Exception {
        Path log = folder.resolve("classes.log");
        Said said = run(Map.of("_JAVA_OPTIONS", "-Xlog:class+load:file=" + log), STARTER.toString(), "audit", CASE);
        assertEquals(0, said.code());
        List<String> rules = Files.readAllLines(log).stream()
                .filter(l -> l.contains("heapwright.rules."))
                .toList();
        long shared =
                rules.stream().filter(l -> l.contains("shared objects file")).count();
        assertTrue(shared > 0.9 * rules.size() && shared > 100, shared + " of " + rules.size());
    }

    @Test
    @DisplayName("works from another folder, by a link, without the archive, and hands on the exit code")
    void elsewhere() throws Exception {
        Path there = Files.createDirectories(folder.resolve("a b"));
        Files.copy(JAR, there.resolve("heapwright.jar"));
        Path copy = Files.copy(STARTER, there.resolve("heapwright"), java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
        Path link = Files.createSymbolicLink(folder.resolve("hw"), copy);
        Said said = run(
                Map.of(), link.toString(), "audit", folder.resolve("none.json").toString());
        assertEquals(Program.BAD_INPUT, said.code());
        assertTrue(said.err().contains("none.json"), said.err());
        assertFalse(said.err().contains("warning"), said.err());
    }

    /** The archive of another Java is as good as none; what Java thinks of it is nobody's business. */
    @Test
    @DisplayName("says nothing of an archive that is not for this Java")
    void anotherArchive() throws Exception {
        Path there = Files.createDirectories(folder.resolve("other"));
        Files.copy(JAR, there.resolve("heapwright.jar"));
        Path copy = Files.copy(STARTER, there.resolve("heapwright"), java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
        Files.write(there.resolve("heapwright.jsa"), new byte[100_000]);
        Said said = run(Map.of(), copy.toString(), "audit", CASE);
        assertEquals(0, said.code());
        assertEquals("", said.err());
    }

    @Test
    @DisplayName("reads and makes files whose names have letters that plain ASCII has not")
    void lettersBeyondAscii() throws Exception {
        Path script = folder.resolve("line.sh");
        String name = "m\u00f6kki";
        String line = "cd \"$1\" && cp \"$3\" " + name + ".json && LC_ALL=C exec \"$2\" why --chart " + name + ".svg "
                + name + ".json > /dev/null";
        Files.write(script, line.getBytes(StandardCharsets.UTF_8));
        Said said = run(
                Map.of(),
                "sh",
                script.toString(),
                folder.toString(),
                STARTER.toAbsolutePath().toString(),
                Path.of("cases/demo/sour-soggy-cold-three-weeks-old.json")
                        .toAbsolutePath()
                        .toString());
        assertEquals(0, said.code(), said.err());
    }

    private record Said(int code, String out, String err) {}

    private Said run(Map<String, String> environment, String... command) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertTrue(process.waitFor(5, TimeUnit.MINUTES), "it hangs");
        return new Said(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }
}
