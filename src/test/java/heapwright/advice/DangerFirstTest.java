package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.fact.Grade;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.pile.Pile;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Danger comes first whatever else is seen or not seen (common practice, no source). */
@DisplayName("Danger comes first")
class DangerFirstTest {

    @Test
    @DisplayName("when it smokes, whatever one other answer says")
    void smoke() {
        assertEquals(List.of(), misses(List.of("smoke"), Cause.FIRE_RISK, Remedy.CALL_FIRE_SERVICE));
    }

    @Test
    @DisplayName("when it is hot and charred, whatever one other answer says")
    void charred() {
        assertEquals(List.of(), misses(List.of("charred", "core-hot"), Cause.FIRE_RISK, Remedy.CALL_FIRE_SERVICE));
    }

    @Test
    @DisplayName("when foul gas gathers in a closed shed, whatever one other answer says")
    void gas() {
        for (String gas : List.of("smells-ammonia", "smells-rotten-egg")) {
            assertEquals(
                    List.of(),
                    misses(List.of(gas, "closed-shed"), Cause.GAS_IN_CLOSED_SPACE, Remedy.LEAVE_AND_AIR_SHED));
        }
    }

    /** The signs that, answered yes or no beside the danger, push it from the first place. */
    private static List<String> misses(List<String> danger, Cause cause, Remedy first) {
        List<String> misses = new ArrayList<>();
        for (Sign other : Sign.values()) {
            if (!danger.contains(other.id()) && !hurts(other)) {
                List<String> both = new ArrayList<>(danger);
                both.add(other.id());
                check(misses, "+" + other.id(), TestPile.seen(spaced(both), ""), cause, first);
                check(
                        misses,
                        "-" + other.id(),
                        TestPile.seen(spaced(danger), spaced(List.of(other.id()))),
                        cause,
                        first);
            }
        }
        return misses;
    }

    /** Somebody hurt or ill outranks every danger: see {@link KeepOutPairsTest}. */
    private static boolean hurts(Sign sign) {
        return TestPile.KNOWLEDGE.signs().get(sign).sense() == Sense.INCIDENT;
    }

    private static void check(List<String> misses, String what, Pile pile, Cause cause, Remedy first) {
        Advice advice = TestPile.ADVISOR.diagnose(pile);
        boolean smokes = List.of("+smoke", "+charred", "+glow", "+ash-warm", "+oily-rags").contains(what);
        Set<Cause> dangers = smokes ? EnumSet.of(cause, Cause.FIRE_RISK) : EnumSet.of(cause);
        Set<Remedy> calls = smokes ? EnumSet.of(first, Remedy.CALL_FIRE_SERVICE) : EnumSet.of(first);
        boolean leads = !advice.findings().isEmpty()
                && dangers.contains(advice.findings().get(0).cause())
                && advice.findings().get(0).grade().atLeast(Grade.LIKELY);
        boolean acts = !advice.steps().isEmpty()
                && calls.contains(advice.steps().get(0).main().remedy());
        if (!leads || !acts) {
            misses.add(what);
        }
    }

    private static String spaced(List<String> ids) {
        return String.join(" ", ids);
    }
}
