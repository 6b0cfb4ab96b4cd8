package heapwright.casebook;

import heapwright.pile.Advised;
import heapwright.pile.Pile;
import java.time.LocalDate;

/**
 * A season with one pile, told once with all its notes, to be looked at on several of its days.
 *
 * @param whole the pile with everything up to its last day
 */
record Season(Pile whole) {

    /**
     * The pile as its file stood when advice was asked for on a day: without what was noted later, and before that advice
     * was taken on. What came of a step is known from the day on which it was told, else from its day to look on.
     */
    Pile on(LocalDate day) {
        return whole.with(
                        whole.name(),
                        day,
                        whole.recipe().stream()
                                .filter(i -> !i.date().isAfter(day))
                                .toList(),
                        whole.log().stream().filter(e -> !e.date().isAfter(day)).toList())
                .withAdvised(whole.advised().stream()
                        .filter(a -> a.date().isBefore(day))
                        .map(a -> a.told().orElse(a.look()).isAfter(day) ? open(a) : a)
                        .toList());
    }

    private static Advised open(Advised step) {
        return new Advised(step.date(), step.step(), step.amount(), step.look());
    }
}
