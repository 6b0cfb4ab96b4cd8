package heapwright.journal;

import com.fasterxml.jackson.databind.JsonNode;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Pile files in a folder. Saving never loses anything: a file that changed since it was opened stays, and what was to
 * be saved is kept beside it; the version before the last save is kept; a deleted file can be fetched back; a crash
 * leaves the old file or the new one, whole. Several threads, journals and programs may work on one folder.
 *
 * <p>An id names a file by the listing of the folder only. It is safe to pass on an id from anywhere: one that is not
 * listed is not there. Links are shown as broken files and not followed. The folder is made by the first write.
 *
 * <p>Methods throw {@link IOException} when the disk fails, or when another program keeps the folder locked for more
 * than ten seconds; then nothing has been changed but, at most, the version before.
 */
public final class Journal {

    /** The folder in the journal to which deleted files move. */
    public static final String REMOVED = "Removed";

    /** The folder in the journal with the version before the last save of each file. */
    public static final String BEFORE = "Version before";

    private static final Logger LOG = LoggerFactory.getLogger(Journal.class);
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Path path;
    private final PileReader reader;
    private final Listing listing;
    private final Clock clock;
    private final SafeFile files;
    private final FolderLock lock;
    private final Drafts drafts = new Drafts();

    /**
     * Opens a journal, without touching the disk.
     *
     * @param folder the folder
     * @param vocabulary the ids that documents may use; read once
     * @param clock tells, in its time zone, when a copy was kept; nothing else
     */
    public Journal(Path folder, Vocabulary vocabulary, Clock clock) {
        this(folder, vocabulary, clock, new Disk(), PATIENCE);
    }

    Journal(Path folder, Vocabulary vocabulary, Clock clock, FileOps ops, Duration patience) {
        this.path = folder.toAbsolutePath();
        this.reader = new PileReader(vocabulary);
        this.listing = new Listing(reader);
        this.clock = clock;
        this.files = new SafeFile(ops);
        this.lock = new FolderLock(patience);
    }

    /** The folder for people who name none: "Heapwright piles" in their home folder. */
    public static Path usualFolder() {
        return Path.of(System.getProperty("user.home"), "Heapwright piles");
    }

    /** The folder of this journal, an absolute path. */
    public Path folder() {
        return path;
    }

    /** All files, by name and then by id; none if the folder is not there yet. A broken file does not hide the others. */
    public List<Listed> list() throws IOException {
        return listing.of(new Folder(path));
    }

    /** All deleted files, in the same order; {@link #undoDelete} takes their ids. */
    public List<Listed> removed() throws IOException {
        Optional<Folder> removed = new Folder(path).innerIfThere(REMOVED);
        return removed.isPresent() ? listing.of(removed.get()) : List.of();
    }

    /** The file as it is now; empty if there is none by that id. */
    public Optional<Shelf> open(String id) throws IOException {
        return content(new Folder(path), id).map(Content::shelf);
    }

    /** The file as it was before it was last saved; empty if it was not saved over yet. */
    public Optional<Shelf> before(String id) throws IOException {
        Optional<Folder> before = new Folder(path).innerIfThere(BEFORE);
        return before.isPresent() ? content(before.get(), id).map(Content::shelf) : Optional.empty();
    }

    /** Puts a pile into a new file, named after the pile; {@code Saved} or {@code Refused}. */
    public Saving create(Pile pile) throws IOException {
        return alone(folder -> put(folder, pile, Slug.of(pile.name()), Optional.empty()));
    }

    /**
     * Saves a pile over the file it came from. Saving what the file already holds changes nothing and is fine.
     *
     * @param id the file
     * @param version what {@link Stored#version} was when the pile was opened
     * @param pile what the file is to hold
     */
    public Saving save(String id, String version, Pile pile) throws IOException {
        return alone(folder -> {
            Optional<Content> current = content(folder, id);
            Optional<JsonNode> caseObject = current.flatMap(Content::caseObject);
            if (current.isPresent() && current.get().shelf() instanceof Stored stored) {
                Content old = current.get();
                Content draft = Content.of(old.file(), drafts.bytes(pile, caseObject), reader);
                if (draft.shelf() instanceof Broken broken) {
                    return new Saving.Refused(broken.problems(), broken.further());
                }
                if (draft.sameBytes(old)) {
                    return new Saving.Saved(stored);
                }
                if (stored.version().equals(version)) {
                    return replace(folder, old, draft);
                }
            }
            return keep(folder, pile, current, caseObject);
        });
    }

    /**
     * Moves a file to the folder {@link #REMOVED}; a broken one too.
     *
     * @return its id there, for {@link #undoDelete}; empty if there is no such file
     */
    public Optional<String> delete(String id) throws IOException {
        return alone(folder -> {
            Optional<Path> file = folder.find(id);
            return file.isPresent() ? Optional.of(move(file.get(), folder.inner(REMOVED))) : Optional.empty();
        });
    }

    /**
     * Moves a deleted file back.
     *
     * @param id its id among the {@link #removed}
     * @return its id in the journal, another if a new file took the old one; empty if there is no such file
     */
    public Optional<String> undoDelete(String id) throws IOException {
        return alone(folder -> {
            Optional<Folder> removed = folder.innerIfThere(REMOVED);
            Optional<Path> file = removed.isPresent() ? removed.get().find(id) : Optional.empty();
            return file.isPresent() ? Optional.of(move(file.get(), folder)) : Optional.empty();
        });
    }

    private String move(Path file, Folder to) throws IOException {
        Path place = to.placeFor(file);
        files.move(file, place);
        return Folder.id(place);
    }

    private Saving replace(Folder folder, Content old, Content draft) throws IOException {
        files.write(folder.inner(BEFORE).same(old.file()), old.bytes());
        files.write(draft.file(), draft.bytes());
        return new Saving.Saved((Stored) draft.shelf());
    }

    private Saving keep(Folder folder, Pile pile, Optional<Content> current, Optional<JsonNode> caseObject)
            throws IOException {
        LocalDateTime now = LocalDateTime.now(clock);
        Saving kept = put(folder, drafts.kept(pile, now), drafts.keptSlug(pile, now), caseObject);
        if (kept instanceof Saving.Saved saved) {
            LOG.info(
                    "A file had changed since it was opened; what was to be saved is kept as {}.",
                    saved.stored().id());
            return new Saving.Conflict(current.map(Content::shelf), saved.stored());
        }
        return kept;
    }

    private Saving put(Folder folder, Pile pile, String slug, Optional<JsonNode> caseObject) throws IOException {
        // A deleted file keeps its name, so that fetching it back brings the id it had.
        Set<String> taken = new HashSet<>(folder.taken());
        for (String inner : List.of(REMOVED, BEFORE)) {
            taken.addAll(folder.takenIn(inner));
        }
        String id = Slug.free(slug, wanted -> taken.contains(wanted + Folder.ENDING));
        Content draft = Content.of(folder.place(id), drafts.bytes(pile, caseObject), reader);
        if (draft.shelf() instanceof Broken broken) {
            return new Saving.Refused(broken.problems(), broken.further());
        }
        files.write(draft.file(), draft.bytes());
        return new Saving.Saved((Stored) draft.shelf());
    }

    private Optional<Content> content(Folder folder, String id) throws IOException {
        return folder.find(id).flatMap(file -> Content.read(file, reader));
    }

    /** What is done with the folder under the lock. */
    private interface Work<T> {
        T with(Folder folder) throws IOException;
    }

    private <T> T alone(Work<T> work) throws IOException {
        if (!Files.isDirectory(path)) {
            Files.createDirectories(path);
        }
        Path real = path.toRealPath();
        return lock.alone(real, () -> work.with(new Folder(real)));
    }
}
