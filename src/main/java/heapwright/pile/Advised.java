package heapwright.pile;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A step that was advised for a pile and taken on, and what came of it.
 *
 * @param date the day of the advice
 * @param step id of the step
 * @param amount how much of what, in words as it was told; empty where nothing was weighed
 * @param look the day on which its effect should show
 * @param outcome what came of it
 * @param told the day for which that was told; empty while nobody has, and in documents that do not say
 */
public record Advised(
        LocalDate date, String step, String amount, LocalDate look, Outcome outcome, Optional<LocalDate> told) {

    /** A step that is taken on and of which nobody has told yet. */
    public Advised(LocalDate date, String step, String amount, LocalDate look) {
        this(date, step, amount, look, Outcome.OPEN, Optional.empty());
    }

    /** What came of a step. */
    public enum Outcome implements Token {
        /** Nobody has told yet. */
        OPEN,
        /** It was done; whether it helps shows later. */
        DONE,
        /** It was done, and what should show has shown. */
        HELPED,
        /** It was done, and what should show has not shown. */
        DID_NOT_HELP,
        /** It was not done. */
        NOT_DONE;

        /** Whether it is still to be told what came of it. */
        public boolean open() {
            return this == OPEN || this == DONE;
        }
    }

    /** Whether it waits for an answer on that day. */
    public boolean asks(LocalDate day) {
        return outcome.open() && !day.isBefore(look);
    }

    /** The day for which its outcome was told; where that is not known the day of the advice, than which it is no earlier. */
    public LocalDate since() {
        return told.orElse(date);
    }

    /** The same with what came of it, as told on a day. */
    public Advised with(Outcome outcome, LocalDate day) {
        return new Advised(date, step, amount, look, outcome, Optional.of(day.isBefore(date) ? date : day));
    }
}
