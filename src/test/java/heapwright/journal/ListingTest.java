package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("thorough")
@DisplayName("A list of the folder")
class ListingTest {

    @TempDir
    private Path folder;

    private Journal journal;

    @BeforeEach
    void open() {
        journal = Samples.journal(folder);
    }

    /** Lets the files look as if nobody had touched them for a while; the change of that itself needs a moment too. */
    private void settle() throws IOException, InterruptedException {
        FileTime before = FileTime.from(Instant.now().minus(Duration.ofHours(1)));
        for (Listed file : journal.list()) {
            Files.setLastModifiedTime(folder.resolve(file.id() + ".json"), before);
        }
        Thread.sleep(3_100);
        journal.list();
    }

    private Listed only() throws IOException {
        List<Listed> all = journal.list();
        assertEquals(1, all.size());
        return all.get(0);
    }

    @Test
    @DisplayName("reads no file again that was left alone")
    void remembered() throws Exception {
        journal.create(Samples.pile("Heap"));
        settle();
        assertSame(only(), only());
    }

    @Test
    @DisplayName("tells a save at once, also one that leaves size and time as they were")
    void saved() throws Exception {
        Stored stored = Samples.saved(journal.create(Samples.pile("Heap A")));
        settle();
        Listed before = only();
        Path file = folder.resolve(before.id() + ".json");
        FileTime time = Files.getLastModifiedTime(file);
        String text = Files.readString(file);
        Files.writeString(file, text.replace("Heap A", "Heap B"));
        Files.setLastModifiedTime(file, time);
        assertEquals("Heap B", only().name());
        assertFalse(before.pile().equals(only().pile()), "the version is another");
        assertEquals(stored.id(), only().id());
    }

    @Test
    @DisplayName("trusts no file that may be in the middle of changing")
    void unsettled() throws Exception {
        journal.create(Samples.pile("Heap"));
        assertTrue(only() != only(), "read again");
    }

    @Test
    @DisplayName("forgets a file that is gone, and tells one that takes its place")
    void gone() throws Exception {
        journal.create(Samples.pile("Heap"));
        settle();
        journal.delete("heap");
        assertEquals(List.of(), journal.list());
        assertEquals("heap", journal.removed().get(0).id());
        Files.writeString(folder.resolve("heap.json"), "{");
        assertTrue(only().pile().isEmpty());
    }
}
