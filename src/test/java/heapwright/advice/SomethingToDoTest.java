package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.Grade;
import heapwright.casebook.JudgedCases;
import heapwright.casebook.JudgedCases.Judged;
import heapwright.knowledge.CauseInfo;
import heapwright.pile.Entry;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever is held back, a likely trouble leaves something to do. Each case is tried as it is and in hard frost. */
@DisplayName("A likely trouble")
@Tag("thorough")
class SomethingToDoTest {

    private static final double HARD_FROST = -15;

    @Test
    @DisplayName("leaves something to do, in every case")
    void asItIs() {
        List<String> idle = new ArrayList<>();
        int troubled = 0;
        for (Judged judged : JudgedCases.all()) {
            troubled += look(judged.tested().file().toString(), judged.advice(), idle);
        }
        assertEquals("", String.join("\n", idle));
        assertTrue(troubled > 500, "only " + troubled + " cases have a likely trouble");
    }

    @Test
    @DisplayName("leaves something to do in hard frost, in every ninth case")
    void inHardFrost() {
        List<String> idle = new ArrayList<>();
        int troubled = 0;
        List<Judged> all = JudgedCases.all();
        for (int i = 0; i < all.size(); i += 9) {
            Pile pile = inHardFrost(all.get(i).tested().pile());
            troubled += look(all.get(i).tested().file().toString(), TestPile.ADVISOR.diagnose(pile), idle);
        }
        assertEquals("", String.join("\n", idle));
        assertTrue(troubled > 50, "only " + troubled + " piles have a likely trouble");
    }

    private static int look(String file, Advice advice, List<String> idle) {
        List<String> troubles = advice.findings().stream()
                .filter(f -> f.setAside().isEmpty() && f.likelihood() >= Grade.LIKELY.from())
                .filter(f -> TestPile.KNOWLEDGE.causes().get(f.cause()).kind() == CauseInfo.Kind.TROUBLE)
                .map(f -> f.cause().id())
                .toList();
        if (!troubles.isEmpty() && advice.steps().isEmpty()) {
            idle.add(file + ": " + troubles);
        }
        return troubles.isEmpty() ? 0 : 1;
    }

    private static Pile inHardFrost(Pile pile) {
        OptionalDouble none = OptionalDouble.empty();
        List<Entry> log = new ArrayList<>(pile.log());
        Measured frost = new Measured(none, none, none, OptionalDouble.of(HARD_FROST), none, none, none, none);
        log.add(new Entry(pile.asOf(), List.of(), List.of(), frost, List.of(), List.of(), ""));
        return pile.with(pile.name(), pile.asOf(), pile.recipe(), log);
    }
}
