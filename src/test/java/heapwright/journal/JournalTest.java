package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {

    @TempDir
    Path home;

    private Path folder;
    private Journal journal;

    @BeforeEach
    void open() {
        folder = home.resolve("piles");
        journal = Samples.journal(folder);
    }

    private static List<String> ids(List<Listed> files) {
        return files.stream().map(Listed::id).toList();
    }

    private String text(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    @Test
    void anEmptyJournalListsNothingAndMakesNoFolder() throws IOException {
        assertEquals(List.of(), journal.list());
        assertEquals(List.of(), journal.removed());
        assertEquals(Optional.empty(), journal.open("a"));
        assertEquals(Optional.empty(), journal.before("a"));
        assertFalse(Files.exists(folder));
    }

    @Test
    void theUsualFolderIsInTheHomeFolder() {
        assertEquals(home.resolve("Heapwright piles"), Journal.usualFolder(home));
        assertTrue(Samples.journal(Path.of("x")).folder().isAbsolute());
    }

    @Test
    void aCreatedPileIsNamedAfterItselfAndOpensTheSame() throws IOException {
        Pile pile = Samples.pile("Heap by the birches");
        Stored created = Samples.saved(journal.create(pile));
        assertEquals("heap-by-the-birches", created.id());
        assertEquals(pile, created.pile());
        assertEquals(created, Samples.stored(journal, created.id()));
        assertEquals(List.of(Listed.of(created)), journal.list());
        assertTrue(Files.isRegularFile(folder.resolve("heap-by-the-birches.json")));
    }

    @Test
    void pilesOfOneNameGetFilesOfTheirOwn() throws IOException {
        assertEquals("heap", Samples.saved(journal.create(Samples.pile("Heap"))).id());
        assertEquals(
                "heap-2", Samples.saved(journal.create(Samples.pile("HEAP!"))).id());
        Files.writeString(folder.resolve("Heap-3.json"), "mine");
        assertEquals(
                "heap-4", Samples.saved(journal.create(Samples.pile("heap"))).id());
        assertEquals("mine", text("Heap-3.json"));
    }

    @Test
    void theListIsInOrderOfNames() throws IOException {
        journal.create(Samples.pile("beech"));
        journal.create(Samples.pile("Alder"));
        journal.create(Samples.pile("Ash"));
        assertEquals(List.of("alder", "ash", "beech"), ids(journal.list()));
    }

    @Test
    void savingReplacesTheFileAndKeepsTheVersionBefore() throws IOException {
        Stored first = Samples.saved(journal.create(Samples.pile("Heap")));
        assertEquals(Optional.empty(), journal.before("heap"));
        Stored second = Samples.saved(journal.save("heap", first.version(), Samples.noted(first.pile(), "one")));
        assertNotEquals(first.version(), second.version());
        assertEquals(
                List.of("one"), Samples.notes(Samples.stored(journal, "heap").pile()));
        assertEquals(Optional.of(first), journal.before("heap"));
        journal.save("heap", second.version(), Samples.noted(second.pile(), "two"));
        assertEquals(Optional.of(second), journal.before("heap"));
        assertEquals(List.of("heap"), ids(journal.list()));
    }

    @Test
    void savingTheSameTwiceIsNoConflictAndLosesNoVersionBefore() throws IOException {
        Stored first = Samples.saved(journal.create(Samples.pile("Heap")));
        Pile pile = Samples.noted(first.pile(), "one");
        Stored second = Samples.saved(journal.save("heap", first.version(), pile));
        assertEquals(second, Samples.saved(journal.save("heap", first.version(), pile)));
        assertEquals(Optional.of(first), journal.before("heap"));
        assertEquals(List.of("heap"), ids(journal.list()));
    }

    @Test
    void aStaleSaveKeepsBothVersions() throws IOException {
        Stored opened = Samples.saved(journal.create(Samples.pile("Heap")));
        Stored theirs = Samples.saved(journal.save("heap", opened.version(), Samples.noted(opened.pile(), "theirs")));
        Saving.Conflict conflict =
                Samples.conflict(journal.save("heap", opened.version(), Samples.noted(opened.pile(), "ours")));
        assertEquals(Optional.of(theirs), conflict.current());
        assertEquals(theirs, Samples.stored(journal, "heap"));
        assertEquals("heap-kept-2026-11-25-1405", conflict.kept().id());
        assertEquals("Heap, kept 2026-11-25 14:05", conflict.kept().name());
        assertEquals(conflict.kept(), Samples.stored(journal, conflict.kept().id()));
        assertEquals(List.of("ours"), Samples.notes(conflict.kept().pile()));
        Saving.Conflict next =
                Samples.conflict(journal.save("heap", opened.version(), Samples.noted(opened.pile(), "third")));
        assertEquals("heap-kept-2026-11-25-1405-2", next.kept().id());
    }

    @Test
    void aKeptCopyOfTheLongestNameCanBeRead() throws IOException {
        String name = "\uD83C\uDF42".repeat(120);
        Stored opened = Samples.saved(journal.create(Samples.pile(name)));
        Saving.Conflict conflict =
                Samples.conflict(journal.save(opened.id(), "stale", Samples.noted(opened.pile(), "ours")));
        assertTrue(conflict.kept().name().endsWith("\uD83C\uDF42, kept 2026-11-25 14:05"));
        assertEquals(conflict.kept(), Samples.stored(journal, conflict.kept().id()));
    }

    @Test
    void savingToAFileThatIsGoneKeepsThePile() throws IOException {
        Stored opened = Samples.saved(journal.create(Samples.pile("Heap")));
        Files.delete(folder.resolve("heap.json"));
        Saving.Conflict conflict =
                Samples.conflict(journal.save("heap", opened.version(), Samples.noted(opened.pile(), "ours")));
        assertEquals(Optional.empty(), conflict.current());
        assertEquals(List.of(Listed.of(conflict.kept())), journal.list());
    }

    @Test
    void aChangeByHandIsAConflict() throws IOException {
        Stored opened = Samples.saved(journal.create(Samples.pile("Heap")));
        Path file = folder.resolve("heap.json");
        String edited = Files.readString(file).replace("soggy", "dust-dry");
        Files.writeString(file, edited);
        Samples.conflict(journal.save("heap", opened.version(), Samples.noted(opened.pile(), "ours")));
        assertEquals(edited, text("heap.json"));
    }

    @Test
    void aBrokenFileHidesNothingAndIsNeverWrittenOver() throws IOException {
        Stored opened = Samples.saved(journal.create(Samples.pile("Heap")));
        journal.create(Samples.pile("Other"));
        Files.writeString(folder.resolve("heap.json"), "{\"heapwright\": \"pile/1\", ");
        List<Listed> list = journal.list();
        assertEquals(List.of("heap", "other"), ids(list));
        Broken broken = assertInstanceOf(Broken.class, journal.open("heap").orElseThrow());
        assertEquals(Listed.of(broken), list.get(0));
        assertEquals("heap.json", broken.name());
        assertEquals("heap.json", broken.problems().get(0).file());
        Saving.Conflict conflict =
                Samples.conflict(journal.save("heap", opened.version(), Samples.noted(opened.pile(), "ours")));
        assertEquals(Optional.of(broken), conflict.current());
        assertEquals("{\"heapwright\": \"pile/1\", ", text("heap.json"));
        assertEquals(
                "heap-2", Samples.saved(journal.create(Samples.pile("Heap"))).id());
    }

    @Test
    void filesThatAreTooLargeOrNoTextAreBroken() throws IOException {
        Files.createDirectories(folder);
        Files.write(folder.resolve("large.json"), new byte[PileReader.LARGEST + 1]);
        Files.write(folder.resolve("bytes.json"), new byte[] {(byte) 0xC3, 0x28});
        Files.createDirectory(folder.resolve("folder.json"));
        List<Listed> list = journal.list();
        assertEquals(List.of("bytes", "folder", "large"), ids(list));
        assertTrue(
                list.stream().allMatch(f -> f.pile().isEmpty() && !f.problems().isEmpty()), list::toString);
    }

    @Test
    void whatIsNoPileFileIsLeftAlone() throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("notes.txt"), "x");
        Files.writeString(folder.resolve(".hidden.json"), "x");
        Files.writeString(folder.resolve(SafeFile.TEMPORARY), "half a f");
        assertEquals(List.of(), journal.list());
        assertEquals(Optional.empty(), journal.open(".hidden"));
    }

    @Test
    void whatCouldNotBeReadAgainIsRefusedAndNothingIsWritten() throws IOException {
        Saving.Refused refused = assertInstanceOf(Saving.Refused.class, journal.create(Samples.pile("two\nlines")));
        assertEquals("/name", refused.problems().get(0).pointer());
        assertEquals(List.of(), journal.list());
        Stored opened = Samples.saved(journal.create(Samples.pile("Heap")));
        Pile early =
                Noting.noted(opened.pile(), Samples.entry(opened.pile().built().minusDays(1), "too early"));
        assertInstanceOf(Saving.Refused.class, journal.save("heap", opened.version(), early));
        assertInstanceOf(Saving.Refused.class, journal.save("gone", opened.version(), early));
        assertEquals(List.of(Listed.of(opened)), journal.list());
        assertEquals(Optional.empty(), journal.before("heap"));
    }

    @Test
    void aCaseKeepsWhatItExpects() throws IOException {
        Files.createDirectories(folder);
        Files.writeString(
                folder.resolve("case.json"),
                "{\"heapwright\": \"pile/1\", \"asOf\": \"2026-11-21\", \"case\": {\"first\": [\"too-wet\"]}}");
        Stored opened = Samples.stored(journal, "case");
        Stored saved = Samples.saved(journal.save("case", opened.version(), Samples.noted(opened.pile(), "one")));
        assertEquals(saved, Samples.stored(journal, "case"));
        assertTrue(text("case.json").contains("\"too-wet\""), () -> "the case went missing");
        assertFalse(text("case.json").contains("\r"));
    }

    @Test
    void aDeletedFileComesBackUnderItsId() throws IOException {
        Stored stored = Samples.saved(journal.create(Samples.pile("Heap")));
        byte[] bytes = Files.readAllBytes(folder.resolve("heap.json"));
        assertEquals(Optional.of("heap"), journal.delete("heap"));
        assertEquals(List.of(), journal.list());
        assertEquals(List.of(Listed.of(stored)), journal.removed());
        assertEquals(Optional.empty(), journal.delete("heap"));
        assertEquals(
                "heap-2", Samples.saved(journal.create(Samples.pile("Heap"))).id());
        assertEquals(Optional.of("heap"), journal.undoDelete("heap"));
        assertEquals(List.of(), journal.removed());
        assertEquals(stored, Samples.stored(journal, "heap"));
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("heap.json")));
        assertEquals(Optional.empty(), journal.undoDelete("heap"));
    }

    @Test
    void deletingAndFetchingBackWriteOverNothing() throws IOException {
        journal.create(Samples.pile("Heap"));
        journal.delete("heap");
        Files.writeString(folder.resolve("heap.json"), "second");
        assertEquals(Optional.of("heap-2"), journal.delete("heap"));
        Files.writeString(folder.resolve("heap.json"), "third");
        assertEquals(Optional.of("heap-2"), journal.undoDelete("heap-2"));
        assertEquals(Optional.of("heap-3"), journal.undoDelete("heap"));
        assertEquals("second", text("heap-2.json"));
        assertEquals("third", text("heap.json"));
        assertEquals("Heap", Samples.stored(journal, "heap-3").name());
    }

    @Test
    void filesWithNamesOfTheirOwnWorkToo() throws IOException {
        Files.createDirectories(folder);
        Stored made = Samples.saved(journal.create(Samples.pile("Heap")));
        Files.move(folder.resolve("heap.json"), folder.resolve("My Heap, 2 & 3.json"));
        Stored opened = Samples.stored(journal, "My Heap, 2 & 3");
        assertEquals(made.version(), opened.version());
        Samples.saved(journal.save(opened.id(), opened.version(), Samples.noted(opened.pile(), "one")));
        assertEquals(List.of("My Heap, 2 & 3"), ids(journal.list()));
        assertEquals(Optional.of(opened), journal.before(opened.id()));
        assertEquals(Optional.of(opened.id()), journal.delete(opened.id()));
        assertEquals(Optional.of(opened.id()), journal.undoDelete(opened.id()));
    }

    @Test
    void aFolderThatIsAFileIsSaidToBeOne() throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(Journal.REMOVED), "x");
        journal.create(Samples.pile("Other"));
        IOException thrown = assertThrows(IOException.class, () -> journal.delete("other"));
        assertTrue(thrown.getMessage().contains(Journal.REMOVED), thrown::getMessage);
        assertEquals("Other", Samples.stored(journal, "other").name());
    }
}
