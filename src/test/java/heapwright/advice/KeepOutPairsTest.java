package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.knowledge.KeepOutInfo;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.pile.Pile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds whatever else is seen: of every sign of hurt, and of every class that must stay out and is in. */
@DisplayName("Beside every other sign")
@Tag("thorough")
class KeepOutPairsTest {

    /** Steps that only take a sample or a reading, and the one against fire. */
    private static final Set<Remedy> HARMLESS =
            EnumSet.of(Remedy.MEASURE_CORE, Remedy.BIOASSAY, Remedy.TEST_READINESS, Remedy.SPREAD_AND_WET);

    @Test
    @DisplayName("first aid comes first, and nothing opens, turns, wets or feeds the pile")
    void firstAid() {
        List<String> misses = new ArrayList<>();
        for (Sign hurt : signs(Sense.INCIDENT)) {
            for (Sign other : Sign.values()) {
                Advice advice = advice(hurt, other);
                boolean first = advice.steps().get(0).urgency() == Urgency.FIRST_AID;
                if (!first || !disturbing(advice, Set.of()).isEmpty()) {
                    misses.add(hurt.id() + " with " + other.id() + ": " + steps(advice));
                }
            }
        }
        assertEquals(List.of(), misses);
    }

    @Test
    @DisplayName("nothing but its own step is done to a pile that holds what must stay out")
    void nothingForkedThrough() {
        Set<Remedy> own = own();
        List<String> misses = new ArrayList<>();
        for (KeepOutInfo kind : TestPile.KNOWLEDGE.keepOuts().values()) {
            if (!kind.nothingForkedThrough()) {
                continue;
            }
            for (Sign in : kind.signs()) {
                for (Sign other : Sign.values()) {
                    Advice advice = advice(in, other);
                    boolean first = own.contains(advice.steps().get(0).main().remedy())
                            || advice.steps().get(0).urgency().compareTo(Urgency.NOW) <= 0
                            // nothing can be taken out of ice
                            || other == Sign.FROZEN_THROUGH;
                    if (!first || !disturbing(advice, own).isEmpty()) {
                        misses.add(in.id() + " with " + other.id() + ": " + steps(advice));
                    }
                }
            }
        }
        assertEquals(List.of(), misses);
    }

    /** The steps of the classes, each for what is in already. */
    private static Set<Remedy> own() {
        return TestPile.KNOWLEDGE.keepOuts().values().stream()
                .filter(KeepOutInfo::nothingForkedThrough)
                .flatMap(k -> k.step().stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Remedy.class)));
    }

    private static List<Sign> signs(Sense sense) {
        return Arrays.stream(Sign.values())
                .filter(s -> TestPile.KNOWLEDGE.signs().get(s).sense() == sense)
                .toList();
    }

    private static Advice advice(Sign one, Sign other) {
        Pile pile = TestPile.seen(one == other ? one.id() : one.id() + " " + other.id(), "");
        return TestPile.ADVISOR.diagnose(pile);
    }

    private static List<Remedy> disturbing(Advice advice, Set<Remedy> allowed) {
        return steps(advice).stream()
                .filter(r -> !allowed.contains(r) && !HARMLESS.contains(r))
                .filter(r -> info(r).does().disturbs())
                .toList();
    }

    private static List<Remedy> steps(Advice advice) {
        List<Remedy> all = new ArrayList<>();
        for (Step step : advice.steps()) {
            all.add(step.main().remedy());
            step.alternatives().forEach(o -> all.add(o.remedy()));
        }
        return all;
    }

    private static RemedyInfo info(Remedy remedy) {
        return TestPile.KNOWLEDGE.remedies().get(remedy);
    }
}
