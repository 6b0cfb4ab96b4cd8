package heapwright.advice;

import heapwright.advice.observe.Tried;
import heapwright.knowledge.Remedy;
import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Pile;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is remembered of earlier advice on a pile.
 *
 * @param failed steps that were done and did not help, when they were last tried
 * @param asking steps whose effect should show by now and of which nobody has told
 * @param waiting steps that were taken on and whose day to look has not come
 * @param stale whether it was told what came of the last work and nothing was noted since, so that all signs are older
 */
public record Memory(Set<Remedy> failed, List<Advised> asking, List<Advised> waiting, boolean stale) {

    public Memory {
        failed = Set.copyOf(failed);
        asking = List.copyOf(asking);
        waiting = List.copyOf(waiting);
    }

    /** What is remembered on the day of advice. */
    public static Memory of(Pile pile) {
        List<Advised> recent = Tried.recent(pile);
        Set<Remedy> failed = EnumSet.noneOf(Remedy.class);
        for (Advised one : recent) {
            Remedy remedy = remedy(one);
            if (one.outcome() == Outcome.DID_NOT_HELP) {
                failed.add(remedy);
            } else if (one.outcome() == Outcome.HELPED) {
                failed.remove(remedy);
            }
        }
        return new Memory(
                failed,
                recent.stream().filter(a -> a.asks(pile.asOf())).toList(),
                recent.stream()
                        .filter(a -> a.outcome().open() && !a.asks(pile.asOf()))
                        .collect(Collectors.toList()),
                stale(pile, recent));
    }

    private static boolean stale(Pile pile, List<Advised> recent) {
        return recent.stream()
                .filter(a -> a.outcome() == Outcome.HELPED || a.outcome() == Outcome.DID_NOT_HELP)
                .reduce((first, second) -> second)
                .filter(last -> pile.log().stream().noneMatch(e -> e.date().isAfter(last.date())))
                .isPresent();
    }

    /** The remedy of a step that was advised. */
    public static Remedy remedy(Advised advised) {
        return Tried.remedy(advised);
    }
}
