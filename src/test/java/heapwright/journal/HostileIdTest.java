package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import heapwright.pile.PileWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever id comes in, and whatever lies in the folder, nothing outside the folder is read, changed or moved. */
class HostileIdTest {

    @TempDir
    Path home;

    private Path folder;
    private Path outside;
    private Journal journal;

    @BeforeEach
    void open() throws IOException {
        folder = home.resolve("a/piles");
        outside = home.resolve("outside.json");
        Files.write(outside, new PileWriter().bytes(Samples.pile("Outside")));
        journal = Samples.journal(folder);
        journal.create(Samples.pile("Heap"));
        journal.create(Samples.pile("Gone"));
        journal.delete("gone");
    }

    static Stream<String> hostile() {
        return Stream.of(
                "",
                ".",
                "..",
                "/",
                "../../outside",
                "..\\..\\outside",
                "../piles/heap",
                "./heap",
                "heap/",
                "heap/.",
                "heap.json",
                "heap\0",
                "heap\0.json",
                "heap ",
                "HEAP",
                "Removed/gone",
                "Removed\\gone",
                "Removed",
                "Version before/heap",
                ".heapwright-lock",
                ".heapwright-unfinished",
                "%2e%2e%2f%2e%2e%2foutside",
                "..%c0%af..%c0%afoutside",
                "\uFF0E\uFF0E\uFF0Foutside",
                "/etc/passwd",
                "C:\\Windows\\win",
                "\\\\host\\share\\outside",
                "heap:stream",
                "con",
                "*",
                "h*p",
                "\uD800",
                "\u202Epaeh",
                "x".repeat(100_000));
    }

    private Map<String, String> tree(Path root) throws IOException {
        Map<String, String> tree = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : paths.toList()) {
                boolean file = Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
                tree.put(root.relativize(path).toString(), file ? Files.readString(path) : "");
            }
        }
        return tree;
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void anIdThatIsNotListedIsNotThere(String id) throws IOException {
        Map<String, String> tree = tree(home);
        assertEquals(Optional.empty(), journal.open(id));
        assertEquals(Optional.empty(), journal.before(id));
        assertEquals(Optional.empty(), journal.delete(id));
        assertEquals(Optional.empty(), journal.undoDelete(id));
        assertEquals(tree, tree(home));
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void savingToSuchAnIdKeepsThePileInTheFolderUnderAPlainName(String id) throws IOException {
        Map<String, String> tree = tree(home);
        Saving.Conflict conflict = Samples.conflict(journal.save(id, "x", Samples.pile("Heap")));
        assertEquals("heap-kept-2026-11-25-1405", conflict.kept().id());
        Map<String, String> after = tree(home);
        after.remove("a/piles/heap-kept-2026-11-25-1405.json");
        assertEquals(tree, after);
    }

    @Test
    void hostileNamesMakePlainFiles() throws IOException {
        for (String name : List.of("../../outside", "/etc/passwd", "..", "C:\\outside.json", "\uFF0E\uFF0E\uFF0Fx")) {
            Stored stored = Samples.saved(journal.create(Samples.pile(name)));
            assertEquals(name, Samples.stored(journal, stored.id()).name());
            assertEquals(
                    List.of(),
                    Stream.of(stored.id())
                            .filter(id -> !id.matches("[a-z0-9-]+"))
                            .toList());
        }
        assertEquals("Outside", Samples.stored(Samples.journal(home), "outside").name());
    }

    @Test
    void aLinkOutOfTheFolderIsShownAsBrokenAndNotFollowed() throws IOException {
        Files.createSymbolicLink(folder.resolve("link.json"), outside);
        Files.createSymbolicLink(folder.resolve("nowhere.json"), home.resolve("nothing"));
        Broken broken = assertInstanceOf(Broken.class, journal.open("link").orElseThrow());
        assertEquals("a link", broken.problems().get(0).found());
        assertEquals(3, journal.list().size());
        String before = Files.readString(outside);
        String version = Samples.stored(Samples.journal(home), "outside").version();
        Samples.conflict(journal.save("link", version, Samples.pile("Heap")));
        assertEquals(Optional.of("link"), journal.delete("link"));
        assertEquals(before, Files.readString(outside));
        assertEquals(true, Files.isSymbolicLink(folder.resolve("Removed/link.json")));
    }

    @Test
    void linksInPlaceOfTheInnerFoldersAndFilesAreRefused() throws IOException {
        Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
        Path other = home.resolve("b");
        Journal trapped = Samples.journal(other);
        Samples.saved(Samples.journal(elsewhere).create(Samples.pile("Elsewhere")));
        Set<String> there = names(elsewhere);
        Stored stored = Samples.saved(trapped.create(Samples.pile("Heap")));
        Files.createSymbolicLink(other.resolve(Journal.REMOVED), elsewhere);
        Files.createSymbolicLink(other.resolve(Journal.BEFORE), elsewhere);
        Files.createSymbolicLink(other.resolve(SafeFile.TEMPORARY), outside);
        obstructed(Journal.REMOVED, () -> trapped.delete("heap"));
        assertEquals(List.of(), trapped.removed());
        assertEquals(Optional.empty(), trapped.before("heap"));
        obstructed(Journal.BEFORE, () -> trapped.save("heap", stored.version(), Samples.noted(stored.pile(), "one")));
        assertEquals(List.of(Listed.of(stored)), trapped.list());
        Files.delete(other.resolve(Journal.BEFORE));
        Samples.saved(trapped.save("heap", stored.version(), Samples.noted(stored.pile(), "one")));
        Files.delete(other.resolve(FolderLock.FILE));
        Files.createSymbolicLink(other.resolve(FolderLock.FILE), outside);
        obstructed(FolderLock.FILE, () -> trapped.create(Samples.pile("Heap")));
        Files.delete(other.resolve(FolderLock.FILE));
        Files.createSymbolicLink(other.resolve(Receipts.FILE), outside);
        obstructed(Receipts.FILE, () -> trapped.create(Samples.pile("Heap"), RequestKey.of("a")));
        assertEquals("Outside", Samples.stored(Samples.journal(home), "outside").name());
        assertEquals(there, names(elsewhere));
    }

    private static void obstructed(String name, Executable work) {
        JournalFault fault = assertThrows(JournalFault.class, work);
        assertEquals(JournalFault.Kind.OBSTRUCTED, fault.kind(), fault::getMessage);
        assertEquals(name, fault.name());
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        }
    }

    @Test
    void theFolderItselfMayBeReachedThroughALink() throws IOException {
        Path link = Files.createSymbolicLink(home.resolve("link"), folder);
        Journal linked = Samples.journal(link);
        assertEquals(
                "other", Samples.saved(linked.create(Samples.pile("Other"))).id());
        assertEquals(journal.list(), linked.list());
    }
}
