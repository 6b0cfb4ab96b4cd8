package heapwright.journal;

import heapwright.pile.Keeper;
import heapwright.pile.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A file of the journal as a list tells it: enough to choose by, without the pile itself, of which a list of thousands
 * has no need.
 *
 * @param id names the file within the journal
 * @param name what to call it, as {@link JournalFile#name}
 * @param pile about the pile; empty if the file cannot be read as one
 * @param problems what is wrong then, the first few
 */
public record Listed(String id, String name, Optional<About> pile, List<Problem> problems) {

    private static final int MOST_PROBLEMS = 10;

    public Listed {
        problems = List.copyOf(problems);
    }

    /**
     * What a list tells of a pile.
     *
     * @param version as {@link Stored#version}
     * @param built the day it was built
     * @param builtAssumed whether that day is a guess
     * @param builtAbout whether it was told roughly
     * @param entries the days of its record
     * @param kept whether it is told what whoever looks after it has for it
     */
    public record About(
            String version, LocalDate built, boolean builtAssumed, boolean builtAbout, int entries, boolean kept) {}

    /** The file as a list tells it. */
    public static Listed of(JournalFile shelf) {
        if (shelf instanceof Broken broken) {
            List<Problem> problems =
                    broken.problems().stream().limit(MOST_PROBLEMS).toList();
            return new Listed(broken.id(), broken.name(), Optional.empty(), problems);
        }
        Stored stored = (Stored) shelf;
        About about = new About(
                stored.version(),
                stored.pile().built(),
                stored.pile().builtAssumed(),
                stored.pile().builtAbout(),
                stored.pile().log().size(),
                !stored.pile().keeper().equals(Keeper.unknown()));
        return new Listed(stored.id(), stored.name(), Optional.of(about), List.of());
    }
}
