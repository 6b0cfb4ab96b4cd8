package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Weighed;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Known;
import heapwright.knowledge.Strength;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A run of the rules written by hand: what they said, on what facts, and how likely each cause came out. */
final class HandRun {

    /** What a cause has that nothing is said of. */
    static final double UNLIKELY = 0.01;

    private final List<Object> facts = new ArrayList<>();
    private final List<Firing> firings = new ArrayList<>();
    private final Map<Cause, Double> likelihoods = new EnumMap<>(Cause.class);

    HandRun fact(Object fact) {
        facts.add(fact);
        return this;
    }

    HandRun says(Object result) {
        String id = "RULE-" + (firings.size() + 1);
        RuleInfo rule = new RuleInfo(id, id, Pass.REMEDY, Strength.STRONG, Known.JUDGEMENT, "JUDGEMENT", "So it is.");
        firings.add(new Firing(rule, List.of(), result));
        return this;
    }

    HandRun likely(Cause cause, double likelihood) {
        likelihoods.put(cause, likelihood);
        return this;
    }

    static Weighed weighed(Cause cause, double likelihood) {
        return new Weighed(cause, likelihood, likelihood, List.of(), List.of());
    }

    static Finding finding(Cause cause, double likelihood) {
        return new Finding(weighed(cause, likelihood), Optional.empty());
    }

    Outcome outcome() {
        Map<Cause, Weighed> weighed = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            weighed.put(cause, weighed(cause, likelihoods.getOrDefault(cause, UNLIKELY)));
        }
        return new Outcome(facts, firings, weighed);
    }
}
