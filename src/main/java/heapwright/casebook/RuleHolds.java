package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.audit.Audit;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Proposes;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Evidence;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Tells which rules and rows of evidence the cases hold. A case holds one when it agrees with all of them and no longer
 * agrees once that one is left out. One that nothing holds could say anything, or could go.
 */
public final class RuleHolds {

    private final Advisor advisor;
    private final List<Heard> heard;

    /**
     * Runs every case once with all rules.
     *
     * @param advisor knows all rules and rows
     * @param cases the cases; those that do not agree with all of them hold nothing
     */
    public RuleHolds(Advisor advisor, List<Case> cases) {
        this.advisor = advisor;
        this.heard = cases.parallelStream()
                .flatMap(c -> Heard.of(c, advisor).stream())
                .sorted(Comparator.comparingInt((Heard h) -> h.rules().size())
                        .thenComparing(h -> h.tested().file()))
                .toList();
    }

    /**
     * A rule or row of evidence with what holds it.
     *
     * @param rule the rule or row
     * @param firesIn in how many of the cases that agree it fires
     * @param holder a case that fails without it, the plainest or the one in which it moves its cause furthest; empty
     *     when none does
     */
    public record Hold(RuleInfo rule, int firesIn, Optional<Case> holder) {}

    /**
     * Each rule and row that is asked for with what holds it, in order of id. The few rules that join rows with what is so
     * are not among them: what they find is told by the rows, and without one of them no row of its kind would be held.
     */
    public List<Hold> of(Predicate<RuleInfo> asked) {
        Set<String> rows = new TreeSet<>();
        advisor.knowledge().evidence().forEach(row -> rows.add(row.id()));
        return advisor.rules().parallelStream()
                .filter(asked)
                .filter(rule -> rule.pass() != Pass.WEIGH || rows.contains(rule.id()))
                .map(this::hold)
                .toList();
    }

    private Hold hold(RuleInfo rule) {
        List<Heard> fires =
                heard.stream().filter(h -> h.rules().contains(rule.id())).toList();
        Optional<Evidence> row = advisor.knowledge().evidence().stream()
                .filter(r -> r.id().equals(rule.id()))
                .findFirst();
        List<Heard> candidates = row.map(r -> mostMoved(fires, r)).orElse(fires);
        Advisor without = advisor.without(rule.id());
        Optional<Case> holder = candidates.stream()
                .map(Heard::tested)
                .filter(c -> !Verdict.of(c, without).agrees())
                .findFirst();
        return new Hold(rule, fires.size(), holder);
    }

    /** The cases whose advice a row can change, those first in which it moves its cause furthest. */
    private List<Heard> mostMoved(List<Heard> fires, Evidence row) {
        Map<Heard, Double> moves = new LinkedHashMap<>();
        for (Heard one : fires) {
            Weighed with = one.weighed().get(row.cause());
            Weighed without = with.without(row.id(), advisor.knowledge().weights());
            if (one.proposed().contains(row.cause())
                    || with.grade().atLeast(Grade.POSSIBLE)
                    || without.grade().atLeast(Grade.POSSIBLE)) {
                moves.put(one, Math.abs(with.likelihood() - without.likelihood()));
            }
        }
        return moves.entrySet().stream()
                .sorted(Map.Entry.<Heard, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * A case that agrees.
     *
     * @param rules the ids of the rules and rows that fired in it
     * @param weighed every cause as weighed: of one that is not even possible nothing but its steps is ever told
     * @param proposed the causes that steps are proposed for
     */
    private record Heard(Case tested, Set<String> rules, Map<Cause, Weighed> weighed, Set<Cause> proposed) {

        static Optional<Heard> of(Case tested, Advisor advisor) {
            Advice advice = advisor.diagnose(tested.pile());
            Optional<Audit> audit = Verdict.audit(tested, advisor);
            if (!Verdict.of(tested, advice, audit).agrees()) {
                return Optional.empty();
            }
            Set<String> rules = new TreeSet<>();
            Stream.concat(
                            advice.outcome().firings().stream(),
                            audit.stream().flatMap(a -> a.judgements().stream()).map(j -> j.firing()))
                    .forEach(f -> rules.add(f.rule().id()));
            Set<Cause> proposed = EnumSet.noneOf(Cause.class);
            advice.outcome().of(Proposes.class).forEach(f -> proposed.add(((Proposes) f.result()).cause()));
            return Optional.of(new Heard(tested, rules, advice.outcome().weighed(), proposed));
        }
    }
}
