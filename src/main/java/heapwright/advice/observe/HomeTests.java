package heapwright.advice.observe;

import heapwright.knowledge.HomeTestInfo;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.pile.Tested;
import java.util.ArrayList;
import java.util.List;

/** What the rules read of home tests: a poor result is the sign that the table names, and a good one denies it. */
final class HomeTests {

    private HomeTests() {}

    /** The same pile with its test results as signs; what was said of a sign on the same day stands. */
    static Pile asSigns(Pile pile, Knowledge knowledge) {
        return pile.log().stream().allMatch(e -> e.tested().isEmpty())
                ? pile
                : pile.withLog(
                        pile.log().stream().map(e -> asSigns(e, knowledge)).toList(), pile.struck());
    }

    private static Entry asSigns(Entry entry, Knowledge knowledge) {
        List<String> seen = new ArrayList<>(entry.seen());
        List<String> notSeen = new ArrayList<>(entry.notSeen());
        for (Tested one : entry.tested()) {
            HomeTestInfo info = knowledge.endUse().tests().get(one.test());
            info.signIfPoor()
                    .map(s -> s.id())
                    .filter(s -> !entry.seen().contains(s) && !entry.notSeen().contains(s))
                    .ifPresent(s -> {
                        if (one.result() == Tested.Result.POOR) {
                            seen.add(s);
                        } else if (one.result() == Tested.Result.GOOD) {
                            notSeen.add(s);
                        }
                    });
        }
        return new Entry(
                entry.date(),
                seen,
                notSeen,
                entry.measured(),
                entry.done(),
                entry.added(),
                entry.tested(),
                entry.note());
    }
}
