package heapwright.journal;

import heapwright.journal.JournalFault.Kind;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds out what stood in the way when work in a folder failed. */
final class Diagnosis {

    /** A disk with less room than this takes no pile with its version before; in bytes. Our judgement. */
    private static final long TOO_LITTLE = 64 * 1024;

    private Diagnosis() {}

    /** The fault behind an exception of reading or writing in the folder. */
    static JournalFault of(Path folder, IOException failure, boolean writing) {
        if (failure instanceof JournalFault known) {
            return known;
        }
        Optional<JournalFault> standing = obstacle(folder);
        if (standing.isPresent() && (writing || standing.get().kind() != Kind.READ_ONLY)) {
            JournalFault fault = standing.get();
            return new JournalFault(fault.kind(), fault.getMessage(), failure);
        }
        Optional<Path> taken = writing ? taken(folder) : Optional.empty();
        if (taken.isPresent()) {
            return JournalFault.obstructed(taken.get(), failure);
        }
        if (failure instanceof AccessDeniedException) {
            Kind kind = writing ? Kind.READ_ONLY : Kind.UNREADABLE;
            return new JournalFault(kind, "access was denied: " + failure.getMessage(), failure);
        }
        if (writing && full(folder, failure)) {
            return new JournalFault(Kind.FULL, "there is no room left for " + folder, failure);
        }
        return new JournalFault(Kind.FAILED, "the disk failed: " + failure.getMessage(), failure);
    }

    /** What will stand in the way of the next write, as far as can be seen without writing. */
    static Optional<JournalFault> obstacle(Path folder) {
        Path there = folder;
        while (!Files.exists(there) && there.getParent() != null) {
            there = there.getParent();
        }
        if (!Files.isDirectory(there)) {
            return Optional.of(new JournalFault(Kind.NO_FOLDER, "\"" + there + "\" is not a folder", null));
        }
        if (!Files.isReadable(there) || !Files.isExecutable(there)) {
            return Optional.of(new JournalFault(Kind.UNREADABLE, "\"" + there + "\" may not be read", null));
        }
        if (!Files.isWritable(there)) {
            return Optional.of(new JournalFault(Kind.READ_ONLY, "nothing may be written in \"" + there + "\"", null));
        }
        return Optional.empty();
    }

    /** A file of the journal's own in whose place something else stands, such as a link or a folder. */
    private static Optional<Path> taken(Path folder) {
        return Stream.of(FolderLock.FILE, SafeFile.TEMPORARY, Receipts.FILE)
                .map(folder::resolve)
                .filter(file -> Files.exists(file, LinkOption.NOFOLLOW_LINKS))
                .filter(file -> !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                .findFirst();
    }

    /** The words of the system come in its language, so the room left is looked at too. */
    private static boolean full(Path folder, IOException failure) {
        String words = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
        if (words.contains("no space left") || words.contains("quota") || words.contains("not enough space")) {
            return true;
        }
        try {
            return Files.getFileStore(folder).getUsableSpace() < TOO_LITTLE;
        } catch (IOException e) {
            failure.addSuppressed(e);
            return false;
        }
    }
}
