package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.audit.Audit;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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
     * @param holder a case that fails without it, the one in which the fewest rules fire; empty when none does
     */
    public record Hold(RuleInfo rule, int firesIn, Optional<Case> holder) {}

    /** Each rule of some passes with what holds it, in order of id. */
    public List<Hold> of(Set<Pass> passes) {
        return advisor.rules().parallelStream()
                .filter(r -> passes.contains(r.pass()))
                .map(this::hold)
                .toList();
    }

    private Hold hold(RuleInfo rule) {
        List<Heard> candidates =
                heard.stream().filter(h -> h.rules().contains(rule.id())).toList();
        Advisor without = advisor.without(rule.id());
        Optional<Case> holder = candidates.stream()
                .map(Heard::tested)
                .filter(c -> !Verdict.of(c, without).agrees())
                .findFirst();
        return new Hold(rule, candidates.size(), holder);
    }

    /** A case that agrees, with the ids of the rules that fired in it. */
    private record Heard(Case tested, Set<String> rules) {

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
            return Optional.of(new Heard(tested, rules));
        }
    }
}
