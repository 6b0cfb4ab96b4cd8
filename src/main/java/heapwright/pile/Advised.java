package heapwright.pile;

import java.time.LocalDate;

/**
 * A step that was advised for a pile and taken on, and what came of it.
 *
 * @param date the day of the advice
 * @param step id of the step
 * @param amount how much of what, in words as it was told; empty where nothing was weighed
 * @param look the day on which its effect should show
 * @param outcome what came of it
 */
public record Advised(LocalDate date, String step, String amount, LocalDate look, Outcome outcome) {

    /** What came of a step. */
    public enum Outcome implements Token {
        /** Nobody has told yet. */
        OPEN,
        /** It was done, and what should show has shown. */
        HELPED,
        /** It was done, and what should show has not shown. */
        DID_NOT_HELP,
        /** It was not done. */
        NOT_DONE
    }

    /** Whether it waits for an answer on that day. */
    public boolean asks(LocalDate day) {
        return outcome == Outcome.OPEN && !day.isBefore(look);
    }

    /** The same with what came of it. */
    public Advised with(Outcome told) {
        return new Advised(date, step, amount, look, told);
    }
}
