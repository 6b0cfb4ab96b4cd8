package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Tells in which cases each rule and each row of evidence speaks. */
public final class RuleCases {

    private RuleCases() {}

    /**
     * The cases in their order, by the id of each rule or row that speaks in one.
     *
     * @param advisor knows the rules and rows
     * @param cases all cases
     */
    public static Map<String, List<Case>> of(Advisor advisor, List<Case> cases) {
        Map<String, List<Case>> byRule = new TreeMap<>();
        cases.parallelStream()
                .map(c -> new Spoken(c, ids(c, advisor)))
                .toList()
                .forEach(s -> s.ids()
                        .forEach(id -> byRule.computeIfAbsent(id, i -> new ArrayList<>())
                                .add(s.tested())));
        return byRule;
    }

    private record Spoken(Case tested, Set<String> ids) {}

    private static Set<String> ids(Case tested, Advisor advisor) {
        Advice advice = advisor.diagnose(tested.pile());
        Set<String> ids = new TreeSet<>();
        Stream.concat(
                        advice.outcome().firings().stream(),
                        Verdict.audit(tested, advisor).stream()
                                .flatMap(a -> a.judgements().stream())
                                .map(j -> j.firing()))
                .forEach(f -> ids.add(f.rule().id()));
        return ids;
    }
}
