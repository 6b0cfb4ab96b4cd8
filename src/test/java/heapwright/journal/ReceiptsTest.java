package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.Pile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A request that is sent again is done once, also by another journal on the folder, as after a restart. */
class ReceiptsTest {

    private static final RequestKey KEY = RequestKey.of("once", "heap");

    /** Steps of a save with a receipt: begin; delete, write, rename, sync twice; done. */
    private static final int STEPS = 10;

    @TempDir
    Path folder;

    private Journal journal() {
        return Samples.journal(folder);
    }

    @Test
    void aPileIsCreatedOncePerRequest() throws IOException {
        Stored made = Samples.saved(journal().create(Samples.pile("Heap"), KEY));
        assertEquals(made, Samples.saved(journal().create(Samples.pile("Heap"), KEY)));
        assertEquals(List.of(Listed.of(made)), journal().list());
        assertEquals(Optional.of("heap"), journal().done(KEY));
        RequestKey other = RequestKey.of("once more", "heap");
        assertEquals(Optional.empty(), journal().done(other));
        assertEquals(
                "heap-2",
                Samples.saved(journal().create(Samples.pile("Heap"), other)).id());
    }

    @Test
    void aNoteIsSavedOncePerRequestHoweverManyCameBetween() throws IOException {
        Stored made = Samples.saved(journal().create(Samples.pile("Heap")));
        Stored noted = Samples.saved(journal().save("heap", made.version(), Samples.noted(made.pile(), "one"), KEY));
        Stored next = Samples.saved(journal().save("heap", noted.version(), Samples.noted(noted.pile(), "two")));
        Stored last = Samples.saved(journal().save("heap", next.version(), Samples.noted(next.pile(), "three")));
        Pile again = Samples.noted(last.pile(), "one");
        assertEquals(last, Samples.saved(journal().save("heap", made.version(), again, KEY)));
        assertEquals(List.of(Listed.of(last)), journal().list());
    }

    @Test
    void aConflictKeepsOneCopyPerRequest() throws IOException {
        Stored made = Samples.saved(journal().create(Samples.pile("Heap")));
        journal().save("heap", made.version(), Samples.noted(made.pile(), "theirs"));
        Pile ours = Samples.noted(made.pile(), "ours");
        Saving.Conflict first = Samples.conflict(journal().save("heap", made.version(), ours, KEY));
        Saving.Conflict again = Samples.conflict(journal().save("heap", made.version(), ours, KEY));
        assertEquals(first, again);
        assertEquals(2, journal().list().size());
    }

    @Test
    void aChangeGoesIntoThePileAsItIsThenAndOnce() throws IOException {
        Stored made = Samples.saved(journal().create(Samples.pile("Heap")));
        journal().save("heap", made.version(), Samples.noted(made.pile(), "theirs"));
        for (int sent = 0; sent < 2; sent++) {
            Stored now = Samples.saved(journal()
                    .change("heap", pile -> Samples.noted(pile, "ours"), KEY)
                    .orElseThrow());
            assertEquals(List.of("theirs", "ours"), Samples.notes(now.pile()));
        }
        assertEquals(1, journal().list().size());
        assertEquals(Optional.empty(), journal().change("gone", pile -> pile, RequestKey.of("other")));
    }

    /** A program is killed at each step of a save, and the note is sent again to the next one. */
    @Test
    void aKilledSaveThatIsSentAgainIsThereOnce() throws IOException {
        Stored old = Samples.saved(journal().create(Samples.pile("Heap")));
        for (int step = 0; step < STEPS; step++) {
            for (boolean half : List.of(true, false)) {
                String note = "note " + step + half;
                RequestKey key = RequestKey.of(note);
                Journal crashing = Samples.journal(folder, new FailingDisk(step, true, half));
                String version = old.version();
                Pile pile = Samples.noted(old.pile(), note);
                assertThrows(FailingDisk.Crash.class, () -> crashing.save("heap", version, pile, key));
                Stored left = Samples.stored(journal(), "heap");
                Optional<String> done = journal().done(key);
                assertEquals(Samples.notes(left.pile()).contains(note), done.isPresent(), "after step " + step);
                old = Samples.saved(journal().save("heap", version, Samples.noted(left.pile(), note), key));
                assertEquals(
                        1,
                        Samples.notes(old.pile()).stream().filter(note::equals).count(),
                        note);
                assertEquals(1, journal().list().size(), note);
            }
        }
    }

    /** The one step after which only the file itself shows that it was written. */
    @Test
    void whatAKilledProgramLeftOpenIsClosedBeforeTheFileChangesAgain() throws IOException {
        Stored made = Samples.saved(journal().create(Samples.pile("Heap")));
        Journal crashing = Samples.journal(folder, new FailingDisk(STEPS - 1, true, false));
        Pile one = Samples.noted(made.pile(), "one");
        assertThrows(FailingDisk.Crash.class, () -> crashing.save("heap", made.version(), one, KEY));
        Stored left = Samples.stored(journal(), "heap");
        assertEquals(one, left.pile());
        Stored two = Samples.saved(journal().save("heap", left.version(), Samples.noted(left.pile(), "two")));
        Samples.saved(journal().save("heap", two.version(), Samples.noted(two.pile(), "three")));
        assertEquals(Optional.of("heap"), journal().done(KEY));
    }

    @Test
    void aReceiptThatCannotBeClosedIsNoReasonToFail() throws IOException {
        Stored made = Samples.saved(journal().create(Samples.pile("Heap")));
        FailingDisk disk = new FailingDisk(STEPS - 1, false, true);
        Pile one = Samples.noted(made.pile(), "one");
        Stored saved = Samples.saved(Samples.journal(folder, disk).save("heap", made.version(), one, KEY));
        assertTrue(disk.failed());
        assertEquals(List.of("one"), Samples.notes(saved.pile()));
        assertEquals(Optional.of("heap"), journal().done(KEY));
    }

    @Test
    void theReceiptsStayShortAndForgetTheOldestOnly() throws IOException {
        Receipts receipts = new Receipts(new Disk(), folder);
        List<RequestKey> keys =
                IntStream.range(0, 1_000).mapToObj(i -> RequestKey.of("" + i)).toList();
        for (RequestKey key : keys) {
            receipts.begin(key, "heap", "0".repeat(64));
            receipts.done(key);
        }
        assertTrue(Files.size(folder.resolve(Receipts.FILE)) < Receipts.LARGEST + 1_024);
        assertEquals(Optional.empty(), receipts.of(keys.get(0)));
        for (RequestKey key : keys.subList(900, 1_000)) {
            assertTrue(receipts.of(key).orElseThrow().done());
        }
        assertEquals(List.of(), journal().list());
    }

    @Test
    void anyBytesInTheReceiptsArePassedOver() throws IOException {
        Receipts receipts = new Receipts(new Disk(), folder);
        Files.write(folder.resolve(Receipts.FILE), new byte[] {(byte) 0xC3, 0x28, 'b', 'e', 'g', 'u', 'n', ' '});
        String strange = "my\nheap ö";
        receipts.begin(KEY, strange, "f".repeat(64));
        Files.writeString(folder.resolve(Receipts.FILE), "done " + KEY.value().substring(3), StandardOpenOption.APPEND);
        assertEquals(
                new Receipts.Receipt(strange, "f".repeat(64), false),
                receipts.of(KEY).orElseThrow());
        receipts.done(KEY);
        assertTrue(receipts.of(KEY).orElseThrow().done());
    }

    @Test
    void anotherContentIsAnotherRequest() {
        assertEquals(RequestKey.of("a", "b"), RequestKey.of("a", "b"));
        assertNotEquals(RequestKey.of("a", "b"), RequestKey.of("ab", ""));
        assertNotEquals(RequestKey.of("a", "b"), RequestKey.of("b", "a"));
        assertThrows(IllegalArgumentException.class, () -> new RequestKey("../x"));
        assertFalse(RequestKey.of().value().isEmpty());
    }
}
