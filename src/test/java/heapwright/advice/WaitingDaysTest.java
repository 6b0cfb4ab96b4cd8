package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.WentIn;
import heapwright.advice.fact.Withholds;
import heapwright.knowledge.Known;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Strength;
import heapwright.knowledge.Trait;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Waiting days")
class WaitingDaysTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    private static final Object TWO_WEEKS = new LimitIs(Limit.AGE_YOUNG, 14);
    private static final Object NO_DAYS = new LimitIs(Limit.CORE_ACTIVE, 45);
    private static final Object FOUR_DAYS_AGO = new WentIn(Trait.LEAVES, 4, 0.5);
    private static final Object TEN_DAYS_AGO = new WentIn(Trait.LEAVES, 10, 0.5);

    private static Optional<LocalDate> over(Object... because) {
        RuleInfo rule =
                new RuleInfo("GUARD-1", "a: b", Pass.GUARD, Strength.FAIR, Known.JUDGEMENT, "JUDGEMENT", "So it is.");
        return WaitingDays.over(
                new Firing(rule, List.of(because), new Withholds(Remedy.ADD_UREA)), DAY, TestPile.KNOWLEDGE);
    }

    @Test
    @DisplayName("run from the day on which it went in, the last where there are several")
    void run() {
        assertEquals(Optional.of(LocalDate.of(2026, 12, 1)), over(TWO_WEEKS, FOUR_DAYS_AGO));
        assertEquals(Optional.of(LocalDate.of(2026, 12, 1)), over(TWO_WEEKS, TEN_DAYS_AGO, FOUR_DAYS_AGO));
    }

    @Test
    @DisplayName("are none where the rule counts no days or nothing went in")
    void none() {
        assertEquals(Optional.empty(), over(NO_DAYS, FOUR_DAYS_AGO));
        assertEquals(Optional.empty(), over(TWO_WEEKS));
        assertEquals(Optional.empty(), over());
    }

    @Test
    @DisplayName("end with the later of two days")
    void later() {
        assertEquals(DAY, WaitingDays.later(DAY, DAY.minusDays(1)));
        assertEquals(DAY, WaitingDays.later(DAY.minusDays(1), DAY));
    }
}
