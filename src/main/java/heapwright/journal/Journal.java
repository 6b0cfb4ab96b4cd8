package heapwright.journal;

import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Vocabulary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Pile files in a folder. Saving never loses anything: a file that changed since it was opened stays, and what was to
 * be saved is kept beside it; the version before the last save is kept; a deleted file can be fetched back; a crash
 * leaves the old file or the new one, whole. Several threads, journals and programs may work on one folder.
 *
 * <p>An id names a file by the listing of the folder only. It is safe to pass on an id from anywhere: one that is not
 * listed is not there. Links are shown as broken files and not followed. The folder is made by the first write.
 *
 * <p>Methods throw {@link JournalFault} when the surroundings do not allow it: the disk is full, the folder is locked by
 * another program for more than three seconds, and so on; then nothing has been changed but, at most, the version before.
 */
public final class Journal {

    /** The folder in the journal to which deleted files move. */
    public static final String REMOVED = "Removed";

    /** The folder in the journal with the version before the last save of each file. */
    public static final String BEFORE = "Version before";

    private static final Duration PATIENCE = Duration.ofSeconds(3);

    private final Path path;
    private final PileReader reader;
    private final Listing listing;
    private final SafeFile files;
    private final Writer writer;
    private final FolderLock lock;

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
        this.files = new SafeFile(ops);
        this.writer = new Writer(ops, reader, clock);
        this.lock = new FolderLock(patience);
    }

    /** The folder for people who name none: "Heapwright piles" in their home folder. */
    public static Path usualFolder(Path home) {
        return home.resolve("Heapwright piles");
    }

    /** The folder of this journal, an absolute path. */
    public Path folder() {
        return path;
    }

    /** What will stand in the way of the next save, as far as can be seen without writing; empty if nothing does. */
    public Optional<JournalFault> obstacle() {
        return Diagnosis.obstacle(path);
    }

    /** All files, by name and then by id; none if the folder is not there yet. A broken file does not hide the others. */
    public List<Listed> list() throws IOException {
        return reading(listing::of);
    }

    /** All deleted files, in the same order; {@link #undoDelete} takes their ids. */
    public List<Listed> removed() throws IOException {
        return reading(folder -> {
            Optional<Folder> removed = folder.innerIfThere(REMOVED);
            return removed.isPresent() ? listing.of(removed.get()) : List.of();
        });
    }

    /** The file as it is now; empty if there is none by that id. */
    public Optional<JournalFile> open(String id) throws IOException {
        return reading(folder -> writer.content(folder, id).map(Content::shelf));
    }

    /** The file as it was before it was last saved; empty if it was not saved over yet. */
    public Optional<JournalFile> before(String id) throws IOException {
        return reading(folder -> {
            Optional<Folder> before = folder.innerIfThere(BEFORE);
            return before.isPresent() ? writer.content(before.get(), id).map(Content::shelf) : Optional.empty();
        });
    }

    /** The file that a request wrote that was done before; empty if it was not. */
    public Optional<String> done(RequestKey key) throws IOException {
        return reading(folder -> writer.done(folder, key));
    }

    /** Puts a pile into a new file, named after the pile; {@code Saved} or {@code Refused}. */
    public Saving create(Pile pile) throws IOException {
        return create(pile, Optional.empty());
    }

    /**
     * Does as {@link #create(Pile)}, and only once however often it is asked.
     *
     * @param key the request
     */
    public Saving create(Pile pile, RequestKey key) throws IOException {
        return create(pile, Optional.of(key));
    }

    private Saving create(Pile pile, Optional<RequestKey> key) throws IOException {
        return alone(folder -> writer.create(folder, pile, key));
    }

    /**
     * Saves a pile over the file it came from. Saving what the file already holds changes nothing and is fine.
     *
     * @param id the file
     * @param version what {@link Stored#version} was when the pile was opened
     * @param pile what the file is to hold
     */
    public Saving save(String id, String version, Pile pile) throws IOException {
        return save(id, version, pile, Optional.empty());
    }

    /**
     * Does as {@link #save(String, String, Pile)}, and only once however often it is asked.
     *
     * @param key the request
     */
    public Saving save(String id, String version, Pile pile, RequestKey key) throws IOException {
        return save(id, version, pile, Optional.of(key));
    }

    private Saving save(String id, String version, Pile pile, Optional<RequestKey> key) throws IOException {
        return alone(folder -> writer.save(folder, id, version, pile, key));
    }

    /**
     * Changes a pile as its file holds it at that moment, however often it changed since a person looked at it: for what
     * only adds to it. Done once, however often it is asked.
     *
     * @param id the file
     * @param change makes the new pile of the present one; it is called under the lock and must be quick
     * @param key the request
     * @return empty if there is no such file or it is broken, and then nothing was done
     */
    public Optional<Saving> change(String id, UnaryOperator<Pile> change, RequestKey key) throws IOException {
        return alone(folder -> writer.change(folder, id, change, key));
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

    /** What is done with the folder, for a save under the lock. */
    private interface Work<T> {
        T with(Folder folder) throws IOException;
    }

    private <T> T reading(Work<T> work) throws IOException {
        try {
            return work.with(new Folder(path));
        } catch (IOException e) {
            throw Diagnosis.of(path, e, false);
        }
    }

    private <T> T alone(Work<T> work) throws IOException {
        try {
            if (!Files.isDirectory(path)) {
                Files.createDirectories(path);
            }
            Path real = path.toRealPath();
            return lock.alone(real, () -> work.with(new Folder(real)));
        } catch (IOException e) {
            throw Diagnosis.of(path, e, true);
        }
    }
}
