package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A season with one pile at the command line, each command a process of its own: built in October, one advice helps, one
 * fails, a frost, a thaw, finished in May. {@code heapwright.web.SeasonJobIT} lives the same in a browser.
 */
@DisplayName("A season at the command line")
class SeasonIT {

    private static final String BUILT = """
            {"heapwright": "pile/1", "name": "Heap by the shed", "built": "2024-10-12", "asOf": "2024-10-12",
             "place": {"latitude": 60.2, "climate": "inland"},
             "container": {"kind": "slatted-bin", "length": {"value": 1, "unit": "m"}, "width": {"value": 1, "unit": "m"},
                           "height": {"value": 1, "unit": "m"}},
             "recipe": [{"material": "leaves-mixed", "amount": 60, "unit": "bucket"},
                        {"material": "kitchen-scraps", "amount": 14, "unit": "bucket"},
                        {"material": "grass-clippings", "amount": 10, "unit": "bucket"}]}
            """;

    /** A line of how a job is done is longer than its name. */
    private static final int HOW_TO = 60;

    @TempDir
    private Path folder;

    private Path file;

    @Test
    @DisplayName("tells no step twice after it failed, contradicts nothing, and every figure can be traced")
    void season() throws Exception {
        file = Files.writeString(folder.resolve("heap.json"), BUILT);
        assertTrue(checkup().contains("Nothing to put right"));
        note("--on", "2024-10-20", "--core", "41", "--outdoor", "7");
        note("--on", "2024-11-03", "--seen", "soggy, smells sour", "--core", "14", "--outdoor", "5");
        String wet = checkup("--keep");
        assertTrue(wet.contains("too much water") && wet.contains("Mix dry browns"), wet);
        assertTraced();
        note(
                "--on",
                "2024-11-12",
                "--helped",
                "--added",
                "3 wheelbarrow leaves-mixed",
                "--done",
                "turned-fully",
                "--not-seen",
                "soggy, smells-sour",
                "--core",
                "27");
        String dried = checkup();
        assertFalse(dried.contains("too much water") || dried.contains("Turn the whole pile"), dried);
        assertEquals(List.of(), repeated(wet, dried), "what helped is not told again");

        note("--on", "2024-12-20", "--seen", "frozen-crust", "--core", "6", "--outdoor", "-12");
        String frost = checkup("--keep");
        assertTrue(frost.contains("winter slowness") && frost.contains("Wrap and cover"), frost);
        assertFalse(frost.contains("Turn the whole pile"), frost);
        assertTraced();
        note("--on", "2025-01-20", "--did-not-help", "--core", "-1", "--outdoor", "-9");
        String frozen = checkup();
        assertTrue(frozen.contains("a frozen pile"), frozen);
        assertEquals(List.of(), repeated(frost, frozen), "what failed is not told in the same words");

        note("--on", "2025-03-28", "--seen", "soggy", "--core", "5", "--outdoor", "6");
        String thaw = checkup("--keep");
        assertTrue(thaw.contains("too much water") && !thaw.contains("a frozen pile"), thaw);
        assertTraced();
        note("--on", "2025-04-22", "--helped", "--not-seen", "soggy", "--core", "24");
        String spring = checkup();
        assertFalse(spring.contains("too much water") || spring.contains("Wrap and cover"), spring);
        note(
                "--on",
                "2025-05-20",
                "--seen",
                "dark-crumbly, smells-earthy, no-reheat-after-turning",
                "--core",
                "17",
                "--outdoor",
                "15");
        String ripe = checkup();
        assertTrue(ripe.contains("finished compost") && ripe.contains("Test whether it is ready"), ripe);

        String history = run("history", file.toString());
        for (String noted :
                List.of("core 41 °C", "core -1 °C", "outdoors -12 °C", "3 wheelbarrows of leaves", "soggy: no")) {
            assertTrue(history.contains(noted), noted + " in " + history);
        }
        assertEquals(4, count(history, "it helped: ") + count(history, "it did not help: Wrap"), history);
        assertTrue(run("due", folder.toString()).contains("Test whether it is ready"));
        assertTrue(run("sanitise", file.toString()).contains("does not show the core hot enough"));

        note("--on", "2025-05-21", "--core", "95");
        run("note", file.toString(), "--take-back", "2025-05-21");
        assertEquals(ripe, checkup(), "a slip that was taken back leaves no trace in the advice");
    }

    /** Lines of how-tos that stand in both. */
    private static List<String> repeated(String one, String other) {
        return one.lines()
                .filter(l -> l.startsWith("   ") && l.length() > HOW_TO)
                .filter(other::contains)
                .toList();
    }

    private static int count(String text, String words) {
        return text.split(java.util.regex.Pattern.quote(words), -1).length - 1;
    }

    /** Every amount comes with its working, every finding with its evidence, and evidence and rules with sources. */
    private void assertTraced() throws Exception {
        JsonNode advice = new ObjectMapper().readTree(run("checkup", "--json", file.toString()));
        int doses = 0;
        for (JsonNode step : advice.get("steps")) {
            assertTrue(step.get("why").size() > 0, step.toString());
            for (JsonNode dose : step.path("doses")) {
                assertTrue(dose.get("working").size() > 0, dose.toString());
                doses++;
            }
        }
        assertTrue(doses > 0, "the advice has amounts");
        for (JsonNode finding : advice.get("findings")) {
            for (JsonNode row : finding.get("for")) {
                assertFalse(row.get("source").asText().isBlank(), row.toString());
            }
        }
    }

    private String checkup(String... flags) throws Exception {
        List<String> all = new ArrayList<>(List.of("checkup"));
        all.addAll(List.of(flags));
        all.add(file.toString());
        return run(all.toArray(String[]::new));
    }

    private void note(String... flags) throws Exception {
        List<String> all = new ArrayList<>(List.of("note", file.toString()));
        all.addAll(List.of(flags));
        String said = run(all.toArray(String[]::new));
        assertTrue(said.startsWith("Noted on "), said);
    }

    private String run(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dfile.encoding=UTF-8",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(Arrays.asList(args));
        Path out = folder.resolve("out.txt");
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile());
        builder.redirectError(folder.resolve("err.txt").toFile());
        builder.environment().putAll(Map.of("LC_ALL", "C.UTF-8"));
        Process process = builder.start();
        assertTrue(process.waitFor(2, TimeUnit.MINUTES));
        assertEquals(
                Program.OK, process.exitValue(), () -> String.join(" ", args) + ": " + read(folder.resolve("err.txt")));
        return read(out);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
