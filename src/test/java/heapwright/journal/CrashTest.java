package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.Pile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A save ends at each of its steps in turn; what is left is the old file or the new one, whole. */
class CrashTest {

    /** Steps of a save: delete, write, rename, sync for the version before, then the same for the file. */
    private static final int STEPS = 8;

    private static final int RENAME_OF_THE_FILE = 6;

    private static final Set<Integer> SYNCS = Set.of(3, 7);

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"true, true", "true, false", "false, true", "false, false"})
    void theOldFileOrTheNewOneIsWhole(boolean crash, boolean half) throws IOException {
        Journal sound = Samples.journal(folder);
        Stored old = Samples.saved(sound.create(Samples.pile("Heap")));
        for (int step = 0; step < STEPS; step++) {
            Pile pile = Samples.noted(old.pile(), "note " + step);
            FailingDisk disk = new FailingDisk(step, crash, half);
            boolean ended = ends(Samples.journal(folder, disk), old, pile);
            assertTrue(disk.failed(), "a save has fewer steps than " + step);

            Stored left = Samples.stored(sound, "heap");
            // A folder that cannot be synced is no reason to give up, so only a crash ends a save there.
            boolean done = !crash && SYNCS.contains(step);
            boolean renamed = done || step > RENAME_OF_THE_FILE;
            assertEquals(renamed ? pile : old.pile(), left.pile(), "after step " + step);
            assertEquals(done, !ended, "step " + step);
            assertEquals(List.of(Listed.of(left)), sound.list());
            if (!crash) {
                assertFalse(Files.exists(folder.resolve(SafeFile.TEMPORARY)), "step " + step);
            }

            old = Samples.saved(sound.save("heap", left.version(), Samples.noted(left.pile(), "after " + step)));
            assertEquals(Optional.of(left), sound.before("heap"));
            assertFalse(Files.exists(folder.resolve(SafeFile.TEMPORARY)), "step " + step);
        }
        FailingDisk beyond = new FailingDisk(STEPS, crash, half);
        assertFalse(ends(Samples.journal(folder, beyond), old, Samples.noted(old.pile(), "last")));
        assertFalse(beyond.failed(), "a save has more steps than the test knows");
    }

    private static boolean ends(Journal journal, Stored old, Pile pile) {
        try {
            Samples.saved(journal.save(old.id(), old.version(), pile));
            return false;
        } catch (IOException | FailingDisk.Crash e) {
            return true;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void aPileThatIsBeingCreatedIsThereWholeOrNotAtAll(int step) throws IOException {
        Journal crashing = Samples.journal(folder, new FailingDisk(step, true, true));
        assertThrows(FailingDisk.Crash.class, () -> crashing.create(Samples.pile("Heap")));
        assertEquals(List.of(), Samples.journal(folder).list());
        assertEquals(
                "heap",
                Samples.saved(Samples.journal(folder).create(Samples.pile("Heap")))
                        .id());
    }

    @Test
    void aDeleteThatFailsLeavesTheFileInOnePlace() throws IOException {
        Journal sound = Samples.journal(folder);
        Stored stored = Samples.saved(sound.create(Samples.pile("Heap")));
        for (int step = 0; step < 3; step++) {
            Journal crashing = Samples.journal(folder, new FailingDisk(step, true, true));
            assertThrows(FailingDisk.Crash.class, () -> crashing.delete("heap"));
            List<Listed> both = new ArrayList<>(sound.list());
            both.addAll(sound.removed());
            assertEquals(List.of(Listed.of(stored)), both, "after step " + step);
            sound.undoDelete("heap");
        }
    }
}
