package heapwright.journal;

import heapwright.pile.Problem;
import java.util.List;
import java.util.Optional;

/** What came of saving a pile. */
public sealed interface Saving {

    /**
     * The pile is on disk.
     *
     * @param stored the pile with its new version
     */
    record Saved(Stored stored) implements Saving {}

    /**
     * The file is no longer what the person had opened, so both are kept: the file as it is, and theirs in a file of
     * its own.
     *
     * @param current what the file now holds; empty if it is gone
     * @param kept what was to be saved, under a name that says when it was kept
     */
    record Conflict(Optional<JournalFile> current, Stored kept) implements Saving {}

    /**
     * Nothing was written, because what would have been written could not be read again.
     *
     * @param problems what is wrong with the pile, at least one
     * @param further how many more problems there are
     */
    record Refused(List<Problem> problems, int further) implements Saving {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
