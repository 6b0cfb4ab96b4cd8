package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The file that a note goes into: whole at every moment, and no note of another program is written over. */
@Timeout(60)
class PlainFileTest {

    private static final byte[] OLD = "old\n".getBytes(StandardCharsets.UTF_8);
    private static final byte[] NEW = "new and longer\n".getBytes(StandardCharsets.UTF_8);

    /** Delete, write, rename, sync. */
    private static final int STEPS = 4;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void plant() throws IOException {
        file = folder.resolve("heap.json");
        Files.write(file, OLD);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aCrashAtAnyStepLeavesTheOldOrTheNewWhole(boolean half) throws IOException {
        for (int step = 0; step < STEPS; step++) {
            Files.write(file, OLD);
            FailingDisk disk = new FailingDisk(step, true, half);
            assertThrows(FailingDisk.Crash.class, () -> new PlainFile(file, disk).replace(OLD, NEW));
            assertArrayEquals(step < STEPS - 1 ? OLD : NEW, Files.readAllBytes(file), "step " + step);
            byte[] left = Files.readAllBytes(file);
            assertTrue(new PlainFile(file).replace(left, NEW), "the next note goes in, step " + step);
        }
    }

    /** A full disk fails in the write, a disk set to reading only in any step. */
    @Test
    void aStepThatFailsIsToldAndLeavesTheFile() throws IOException {
        for (int step = 0; step < STEPS - 1; step++) {
            FailingDisk disk = new FailingDisk(step, false, true);
            assertThrows(JournalFault.class, () -> new PlainFile(file, disk).replace(OLD, NEW), "step " + step);
            assertArrayEquals(OLD, Files.readAllBytes(file), "step " + step);
            assertFalse(Files.exists(folder.resolve(SafeFile.TEMPORARY)), "step " + step);
        }
    }

    @Test
    void twoWritersLoseNothing() throws Exception {
        int each = 40;
        ExecutorService writers = Executors.newFixedThreadPool(2);
        List<Future<?>> ends = new ArrayList<>();
        for (String name : List.of("a", "b")) {
            ends.add(writers.submit(() -> {
                for (int i = 0; i < each; i++) {
                    boolean done = false;
                    while (!done) {
                        byte[] before = Files.readAllBytes(file);
                        byte[] after = (new String(before, StandardCharsets.UTF_8) + name + i + "\n")
                                .getBytes(StandardCharsets.UTF_8);
                        done = new PlainFile(file).replace(before, after);
                    }
                }
                return null;
            }));
        }
        for (Future<?> end : ends) {
            end.get();
        }
        writers.shutdown();
        List<String> lines = Files.readAllLines(file);
        assertEquals(1 + 2 * each, lines.size());
        assertEquals(lines.size(), new TreeSet<>(lines).size());
    }
}
