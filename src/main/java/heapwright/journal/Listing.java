package heapwright.journal;

import heapwright.pile.PileReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Lists folders, and reads a file again only when it may have changed. It is taken to hold what it held when its size,
 * its number, and the times of its change are the same, and it had been left alone for a while when it was read: a file
 * that changes twice within a tick of the clock looks the same after the second change. Only lists are told so; who opens
 * or saves a file reads it.
 */
final class Listing {

    /** How long a file must have been left alone; far above the tick of any file system (FAT: 2 s). */
    private static final Duration SETTLED = Duration.ofSeconds(3);

    /** How many files are remembered, some 300 bytes each. */
    private static final int MOST = 50_000;

    private static final String WITH_CHANGE = "unix:size,lastModifiedTime,ctime,ino";
    private static final String PLAIN = "size,lastModifiedTime,fileKey";

    private final PileReader reader;
    private final Map<Path, Known> known = new ConcurrentHashMap<>();

    Listing(PileReader reader) {
        this.reader = reader;
    }

    private record Known(Map<String, Object> marks, Listed listed) {}

    /** The files of a folder, by name and then by id. */
    List<Listed> of(Folder folder) throws IOException {
        List<Listed> all = new ArrayList<>();
        List<Path> files = folder.files();
        for (Path file : files) {
            listed(file).ifPresent(all::add);
        }
        forget(folder, files);
        all.sort(Comparator.comparing(Listed::name, String.CASE_INSENSITIVE_ORDER)
                .thenComparing(Listed::id));
        return List.copyOf(all);
    }

    private void forget(Folder folder, List<Path> files) {
        HashSet<Path> there = new HashSet<>(files);
        known.keySet().removeIf(file -> folder.holds(file) && !there.contains(file));
    }

    private Optional<Listed> listed(Path file) throws IOException {
        Instant now = Instant.now();
        Optional<Map<String, Object>> marks = marks(file);
        Known before = known.get(file);
        if (before != null && marks.isPresent() && before.marks().equals(marks.get())) {
            return Optional.of(before.listed());
        }
        Optional<Listed> read = Content.read(file, reader).map(Content::shelf).map(Listed::of);
        if (read.isPresent() && marks.isPresent() && settled(marks.get(), now) && known.size() < MOST) {
            known.put(file, new Known(marks.get(), read.get()));
        } else {
            known.remove(file);
        }
        return read;
    }

    /** Whether the file was left alone for a while; one from the future was not. */
    private static boolean settled(Map<String, Object> marks, Instant now) {
        return marks.values().stream()
                .filter(FileTime.class::isInstance)
                .allMatch(time -> ((FileTime) time).toInstant().isBefore(now.minus(SETTLED)));
    }

    /** What tells a file from what it was; empty if it is gone. */
    private static Optional<Map<String, Object>> marks(Path file) throws IOException {
        boolean unix = file.getFileSystem().supportedFileAttributeViews().contains("unix");
        try {
            return Optional.of(Files.readAttributes(file, unix ? WITH_CHANGE : PLAIN, LinkOption.NOFOLLOW_LINKS));
        } catch (NoSuchFileException gone) {
            return Optional.empty();
        }
    }
}
