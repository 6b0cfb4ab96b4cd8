package heapwright.journal;

import com.fasterxml.jackson.databind.JsonNode;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Decides what a save comes to, and writes it: each request once, no file over another. Whoever calls holds the
 * {@link FolderLock}.
 */
final class Writer {

    private static final Logger LOG = LoggerFactory.getLogger(Writer.class);

    private final FileOps ops;
    private final SafeFile files;
    private final PileReader reader;
    private final Clock clock;
    private final Drafts drafts = new Drafts();

    Writer(FileOps ops, PileReader reader, Clock clock) {
        this.ops = ops;
        this.files = new SafeFile(ops);
        this.reader = reader;
        this.clock = clock;
    }

    /** Puts files in their places. */
    private interface Writing {
        void write() throws IOException;
    }

    /** What the file of that id holds; nothing if there is none. */
    Optional<Content> content(Folder folder, String id) throws IOException {
        return folder.find(id).flatMap(file -> Content.read(file, reader));
    }

    /** See {@link Journal#create}. */
    Saving create(Folder folder, Pile pile, Optional<RequestKey> key) throws IOException {
        Optional<Stored> before = doneBefore(folder, key);
        return before.isPresent()
                ? new Saving.Saved(before.get())
                : put(folder, pile, Slug.of(pile.name()), Optional.empty(), key);
    }

    /** See {@link Journal#save}. */
    Saving save(Folder folder, String id, String version, Pile pile, Optional<RequestKey> key) throws IOException {
        Optional<Content> current = content(folder, id);
        Optional<Stored> before = doneBefore(folder, key);
        if (before.isPresent()) {
            return before.get().id().equals(id)
                    ? new Saving.Saved(before.get())
                    : new Saving.Conflict(current.map(Content::shelf), before.get());
        }
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
                return replace(folder, old, draft, key);
            }
        }
        return keep(folder, pile, current, caseObject, key);
    }

    /** See {@link Journal#change}. */
    Optional<Saving> change(Folder folder, String id, UnaryOperator<Pile> change, RequestKey key) throws IOException {
        Optional<Content> current = content(folder, id);
        Optional<Stored> stored =
                current.map(Content::shelf).filter(Stored.class::isInstance).map(Stored.class::cast);
        if (stored.isEmpty()) {
            return Optional.empty();
        }
        Pile changed = change.apply(stored.get().pile());
        return Optional.of(save(folder, id, stored.get().version(), changed, Optional.of(key)));
    }

    private Saving replace(Folder folder, Content old, Content draft, Optional<RequestKey> key) throws IOException {
        receipts(folder).settle(Folder.id(old.file()), old.version());
        return written(folder, draft, key, () -> {
            files.write(folder.inner(Journal.BEFORE).same(old.file()), old.bytes());
            files.write(draft.file(), draft.bytes());
        });
    }

    private Saving keep(
            Folder folder,
            Pile pile,
            Optional<Content> current,
            Optional<JsonNode> caseObject,
            Optional<RequestKey> key)
            throws IOException {
        LocalDateTime now = LocalDateTime.now(clock);
        Saving kept = put(folder, drafts.kept(pile, now), drafts.keptSlug(pile, now), caseObject, key);
        if (kept instanceof Saving.Saved saved) {
            LOG.info(
                    "A file had changed since it was opened; what was to be saved is kept as {}.",
                    saved.stored().id());
            return new Saving.Conflict(current.map(Content::shelf), saved.stored());
        }
        return kept;
    }

    private Saving put(Folder folder, Pile pile, String slug, Optional<JsonNode> caseObject, Optional<RequestKey> key)
            throws IOException {
        // A deleted file keeps its name, so that fetching it back brings the id it had.
        Set<String> taken = new HashSet<>(folder.taken());
        for (String inner : List.of(Journal.REMOVED, Journal.BEFORE)) {
            taken.addAll(folder.takenIn(inner));
        }
        String id = Slug.free(slug, wanted -> taken.contains(wanted + Folder.ENDING));
        Content draft = Content.of(folder.place(id), drafts.bytes(pile, caseObject), reader);
        if (draft.shelf() instanceof Broken broken) {
            return new Saving.Refused(broken.problems(), broken.further());
        }
        return written(folder, draft, key, () -> files.write(draft.file(), draft.bytes()));
    }

    /** Writes, with a receipt begun before and closed after where the request has a key. */
    private Saving written(Folder folder, Content draft, Optional<RequestKey> key, Writing writing) throws IOException {
        if (key.isPresent()) {
            receipts(folder).begin(key.get(), Folder.id(draft.file()), draft.version());
        }
        writing.write();
        if (key.isPresent()) {
            try {
                receipts(folder).done(key.get());
            } catch (IOException e) {
                // The pile is on the disk, and what was begun tells so as long as the file is as it was written.
                LOG.warn("A receipt could not be closed.", e);
            }
        }
        return new Saving.Saved((Stored) draft.shelf());
    }

    private Receipts receipts(Folder folder) {
        return new Receipts(ops, folder.path());
    }

    /** The file that a request wrote before; empty if it did not. */
    Optional<String> done(Folder folder, RequestKey key) throws IOException {
        Optional<Receipts.Receipt> receipt = receipts(folder).of(key);
        if (receipt.isEmpty()) {
            return Optional.empty();
        }
        String id = receipt.get().id();
        return receipt.get().done() || holds(folder, receipt.get()) ? Optional.of(id) : Optional.empty();
    }

    /** Whether a file was written, although the program ended before it could close the receipt. */
    private boolean holds(Folder folder, Receipts.Receipt receipt) throws IOException {
        for (Optional<Folder> place : List.of(Optional.of(folder), folder.innerIfThere(Journal.REMOVED))) {
            Optional<Content> content = place.isPresent() ? content(place.get(), receipt.id()) : Optional.empty();
            if (content.map(Content::version).equals(Optional.of(receipt.version()))) {
                return true;
            }
        }
        return false;
    }

    /** What a request wrote before, as it is now; empty if there was no such request, or its file is gone since. */
    private Optional<Stored> doneBefore(Folder folder, Optional<RequestKey> key) throws IOException {
        Optional<String> id = key.isPresent() ? done(folder, key.get()) : Optional.empty();
        Optional<Content> content = id.isPresent() ? content(folder, id.get()) : Optional.empty();
        return content.map(Content::shelf).filter(Stored.class::isInstance).map(Stored.class::cast);
    }
}
