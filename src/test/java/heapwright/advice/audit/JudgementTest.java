package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Judges;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Topic;
import heapwright.knowledge.Known;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Strength;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A judgement of a recipe")
class JudgementTest {

    private static final RuleInfo RULE =
            new RuleInfo("AUDIT-0", "a rule", Pass.AUDIT, Strength.FAIR, Known.JUDGEMENT, "JUDGEMENT", "Because.");

    private static Judgement judged(Mark mark, Object... because) {
        return Judgement.of(new Firing(RULE, List.of(because), new Judges(Topic.MOISTURE, mark)));
    }

    @Test
    @DisplayName("says of what and what, as its rule does")
    void says() {
        Judgement slow = judged(Mark.SLOW);
        assertEquals(Topic.MOISTURE, slow.topic());
        assertEquals(Mark.SLOW, slow.mark());
        assertEquals(RULE, slow.firing().rule());
    }

    @Test
    @DisplayName("names the limit that was passed: of two edges the one that parts good from less good")
    void decidedBy() {
        LimitIs slow = new LimitIs(Limit.MOISTURE_SLOW, 40);
        LimitIs good = new LimitIs(Limit.MOISTURE_GOOD_LOW, 50);
        assertEquals(good, judged(Mark.SLOW, slow, "other", good).decidedBy().orElseThrow());
        assertEquals(good, judged(Mark.SLOW, good, slow).decidedBy().orElseThrow());
        assertEquals(slow, judged(Mark.WRONG, "other", slow).decidedBy().orElseThrow());
        assertTrue(judged(Mark.FITS, good).decidedBy().isEmpty(), "nothing was passed");
        assertTrue(judged(Mark.WRONG, "other").decidedBy().isEmpty());
    }
}
