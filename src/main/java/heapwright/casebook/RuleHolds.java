package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.audit.Audit;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Rulebook;
import heapwright.knowledge.Knowledge;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Tells which rules the cases hold. A case holds a rule when it agrees with the whole rulebook and no longer agrees once
 * that rule is left out. A rule that nothing holds could say anything, or could go.
 */
public final class RuleHolds {

    private final Knowledge knowledge;
    private final Rulebook rulebook;
    private final List<Heard> heard;

    /**
     * Runs every case once with all rules.
     *
     * @param cases the cases; those that do not agree with the whole rulebook hold nothing
     */
    public RuleHolds(Knowledge knowledge, Rulebook rulebook, List<Case> cases) {
        this.knowledge = knowledge;
        this.rulebook = rulebook;
        Advisor advisor = new Advisor(knowledge, rulebook);
        this.heard = cases.parallelStream()
                .flatMap(c -> Heard.of(c, advisor).stream())
                .sorted(Comparator.comparingInt((Heard h) -> h.rules().size())
                        .thenComparing(h -> h.tested().file()))
                .toList();
    }

    /**
     * A rule with what holds it.
     *
     * @param rule the rule
     * @param firesIn in how many of the cases that agree it fires
     * @param holder a case that fails without it, the one in which the fewest rules fire; empty when none does
     */
    public record Hold(RuleInfo rule, int firesIn, Optional<Case> holder) {}

    /** Each rule of some passes with what holds it, in order of id. */
    public List<Hold> of(Set<Pass> passes) {
        return rulebook.rules().parallelStream()
                .filter(r -> passes.contains(r.pass()))
                .map(this::hold)
                .toList();
    }

    private Hold hold(RuleInfo rule) {
        List<Heard> candidates =
                heard.stream().filter(h -> h.rules().contains(rule.id())).toList();
        Advisor without = new Advisor(knowledge, rulebook.without(rule.id()));
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
