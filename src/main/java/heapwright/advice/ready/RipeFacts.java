package heapwright.advice.ready;

import heapwright.advice.Advice;
import heapwright.advice.engine.Firing;
import heapwright.advice.fact.AlreadyIn;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Condition;
import heapwright.knowledge.KeepOutClass;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Trait;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/** What a run of the rules knows of a pile, as the question of ripeness asks for it. */
final class RipeFacts {

    private final Advice advice;
    private final Set<Sign> seen = EnumSet.noneOf(Sign.class);
    private final Set<Sign> denied = EnumSet.noneOf(Sign.class);
    private final Set<KeepOutClass> already = EnumSet.noneOf(KeepOutClass.class);
    private final Set<Trait> wentIn = EnumSet.noneOf(Trait.class);
    private final Set<Condition> holds = EnumSet.noneOf(Condition.class);

    RipeFacts(Advice advice) {
        this.advice = advice;
        advice.outcome().facts().forEach(fact -> {
            if (fact instanceof Seen s && !s.outlived()) {
                seen.add(s.sign());
            } else if (fact instanceof Denied d) {
                denied.add(d.sign());
            } else if (fact instanceof AlreadyIn a) {
                already.add(a.kind());
            } else if (fact instanceof WentIn w) {
                wentIn.add(w.trait());
            }
        });
        advice.outcome().of(Holds.class).stream()
                .filter(Firing::rather)
                .forEach(f -> holds.add(((Holds) f.result()).condition()));
    }

    boolean seen(Sign... any) {
        return Arrays.stream(any).anyMatch(seen::contains);
    }

    boolean denied(Sign... any) {
        return Arrays.stream(any).anyMatch(denied::contains);
    }

    /** Whether stuff of one of these classes went in, however long ago, and left a trace. */
    boolean alreadyIn(KeepOutClass... any) {
        return Arrays.stream(any).anyMatch(already::contains);
    }

    /** Whether one of these signs was looked for, whatever was found. */
    boolean lookedFor(Sign... any) {
        return seen(any) || denied(any);
    }

    boolean wentIn(Set<Trait> any) {
        return any.stream().anyMatch(wentIn::contains);
    }

    boolean holds(Condition... any) {
        return Arrays.stream(any).anyMatch(holds::contains);
    }

    boolean likely(Cause cause) {
        return advice.findings().stream()
                .anyMatch(f -> f.cause() == cause && f.grade().atLeast(Grade.LIKELY));
    }

    boolean contradicts() {
        return !advice.contradictions().isEmpty();
    }
}
