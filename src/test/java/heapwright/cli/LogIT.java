package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The program in a process of its own")
class LogIT {

    private static final String CASE = "cases/demo/leaf-heap-that-never-warmed.json";

    @TempDir
    private Path folder;

    private String err(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(args));
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(err.toFile())
                .start();
        assertTrue(process.waitFor(2, TimeUnit.MINUTES), "it hangs");
        assertEquals(Program.OK, process.exitValue(), Files.readString(err));
        return Files.readString(err);
    }

    @Test
    @DisplayName("says nothing on standard error while all is well, whether it logs or not")
    void silent() throws Exception {
        assertEquals("", err("checkup", CASE));
        assertEquals("", err("checkup", "--debug", CASE));
    }
}
