package heapwright.pile;

import java.time.LocalDate;
import java.util.List;

/**
 * One day's entry in the pile's record.
 *
 * @param date the day
 * @param seen ids of signs that were noticed
 * @param notSeen ids of signs that were looked for and not found; a sign in neither list was not looked for
 * @param measured what was measured
 * @param done what was done
 * @param added what was added
 * @param tested home tests of which the result was read on that day
 * @param note free words, never read by the rules
 */
public record Entry(
        LocalDate date,
        List<String> seen,
        List<String> notSeen,
        Measured measured,
        List<Action> done,
        List<Ingredient> added,
        List<Tested> tested,
        String note) {
    public Entry {
        seen = List.copyOf(seen);
        notSeen = List.copyOf(notSeen);
        done = List.copyOf(done);
        added = List.copyOf(added);
        tested = List.copyOf(tested);
    }

    /** An entry of a day on which no test was read. */
    public Entry(
            LocalDate date,
            List<String> seen,
            List<String> notSeen,
            Measured measured,
            List<Action> done,
            List<Ingredient> added,
            String note) {
        this(date, seen, notSeen, measured, done, added, List.of(), note);
    }
}
