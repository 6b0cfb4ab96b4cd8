package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.winter.Factor;
import heapwright.advice.winter.Story;
import heapwright.advice.winter.Verdict;
import heapwright.knowledge.Cause;
import heapwright.pile.Pile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Why a pile is as it is")
class WhyAnswerTest {

    private static final Optional<Story> NO_STORY = Optional.empty();

    private static Optional<Story> story(Verdict verdict, Factor factor, double shortfall) {
        return Optional.of(
                new Story(null, null, verdict, null, factor, factor, Optional.empty(), null, shortfall, null));
    }

    private static WhyAnswer of(Optional<Story> story, Finding... findings) {
        return WhyAnswer.of(List.of(findings), story).orElseThrow();
    }

    private static Finding likely(Cause cause) {
        return HandRun.finding(cause, 0.7);
    }

    @Test
    @DisplayName("is not known where no finding is likely and no core was measured")
    void unknown() {
        assertTrue(WhyAnswer.of(List.of(), NO_STORY).isEmpty());
        assertTrue(WhyAnswer.of(List.of(HandRun.finding(Cause.TOO_WET, 0.59)), NO_STORY)
                .isEmpty());
        assertTrue(WhyAnswer.of(List.of(likely(Cause.PATHOGEN_RISK)), NO_STORY).isEmpty(), "it holds nothing back");
    }

    @Test
    @DisplayName("is what the temperatures say where no finding is likely")
    void modelAlone() {
        assertEquals(
                new WhyAnswer(
                        Verdict.JUST_WINTER, Factor.COLD, Optional.empty(), Optional.empty(), Optional.empty(), false),
                of(story(Verdict.JUST_WINTER, Factor.COLD, 0), HandRun.finding(Cause.TOO_WET, 0.5)));
        assertEquals(
                new WhyAnswer(
                        Verdict.SOMETHING_WRONG,
                        Factor.AIR,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        true),
                of(story(Verdict.SOMETHING_WRONG, Factor.AIR, 0.6)));
    }

    @ParameterizedTest
    @CsvSource({
        "FINISHED, FINISHED, FOOD",
        "MATURING, FINISHED, FOOD",
        "SPENT, FINISHED, FOOD",
        "JUST_BUILT, TOO_EARLY, NONE",
        "WORKING_WELL, WORKING, NONE",
        "SLOWED_BY_WINTER, JUST_WINTER, COLD",
        "FROZEN_IN, JUST_WINTER, FROZEN",
        "TOO_SMALL_FOR_COLD, JUST_WINTER, COLD",
        "TOO_WET, SOMETHING_WRONG, AIR",
        "TOO_DRY, SOMETHING_WRONG, WATER",
        "OVERHEATED, SOMETHING_WRONG, HEAT",
        "DISTURBED_TOO_OFTEN, SOMETHING_WRONG, HANDLING"
    })
    @DisplayName("is the likeliest finding that can hold a pile back, likely at 60 in 100")
    void byFinding(Cause cause, Verdict verdict, Factor factor) {
        WhyAnswer expected =
                new WhyAnswer(verdict, factor, Optional.of(cause), Optional.empty(), Optional.empty(), false);
        assertEquals(expected, of(NO_STORY, HandRun.finding(cause, 0.60)));
        assertEquals(expected, of(NO_STORY, likely(Cause.PATHOGEN_RISK), likely(cause), likely(Cause.COARSE_WOOD)));
        assertEquals(
                new WhyAnswer(verdict, factor, Optional.of(cause), Optional.empty(), Optional.empty(), true),
                of(story(verdict, Factor.NONE, 3), likely(cause)),
                "the temperatures bear it out");
        assertEquals(expected, of(story(verdict, Factor.NONE, 0), likely(cause)));
        assertEquals(expected, of(story(Verdict.TOO_EARLY, Factor.NONE, 0), likely(cause)), "nothing is said yet");
        Verdict other = verdict == Verdict.WORKING ? Verdict.FINISHED : Verdict.WORKING;
        assertEquals(
                Optional.of(other),
                of(story(other, Factor.NONE, 0), likely(cause)).temperatures(),
                "the temperatures say another thing");
    }

    @ParameterizedTest
    @EnumSource(
            value = Cause.class,
            names = {"TOO_MUCH_NITROGEN", "TOO_ALKALINE", "FAT_COATED", "POORLY_MIXED"})
    @DisplayName("is not winter alone where something is wrong with the mix itself")
    void notWinterAlone(Cause ofTheMix) {
        for (Cause winter : List.of(Cause.SLOWED_BY_WINTER, Cause.FROZEN_IN, Cause.TOO_SMALL_FOR_COLD)) {
            assertEquals(
                    Verdict.SOMETHING_WRONG,
                    of(NO_STORY, likely(ofTheMix), likely(winter)).verdict());
        }
        assertEquals(
                Verdict.FINISHED,
                of(NO_STORY, likely(ofTheMix), likely(Cause.SPENT)).verdict());
    }

    @Test
    @DisplayName("of a small pile in the cold is winter, unless it was colder than a healthy one of its size")
    void small() {
        Finding small = likely(Cause.TOO_SMALL_FOR_COLD);
        assertEquals(
                Verdict.JUST_WINTER,
                of(story(Verdict.WORKING, Factor.NONE, 0), small).verdict());
        assertEquals(
                Verdict.SOMETHING_WRONG,
                of(story(Verdict.SOMETHING_WRONG, Factor.SIZE, 9), small).verdict());
    }

    @Test
    @DisplayName("does not name another thing of the model's where that bears the finding out")
    void bornOut() {
        Pile pile = TestPile.of("'asOf': '2027-01-20', 'built': '2026-11-10',"
                + "'place': {'monthlyMeanC': [-9,-9,-3,4,11,15,18,16,10,4,-2,-7]},"
                + "'container': {'kind': 'slatted-bin', 'length': {'value': 1, 'unit': 'm'},"
                + " 'width': {'value': 1, 'unit': 'm'}, 'height': {'value': 1, 'unit': 'm'}},"
                + "'recipe': [{'material': 'leaves-mixed', 'amount': 5, 'unit': 'wheelbarrow'},"
                + " {'material': 'kitchen-scraps', 'amount': 8, 'unit': 'bucket'},"
                + " {'material': 'grass-clippings', 'amount': 1, 'unit': 'wheelbarrow'}],"
                + "'log': [{'date': '2026-11-20', 'measured': {'core': {'value': 42, 'unit': 'C'}}},"
                + " {'date': '2026-12-15', 'measured': {'core': {'value': 18, 'unit': 'C'}}},"
                + " {'date': '2027-01-20', 'seen': ['squeeze-holds', 'smells-earthy'],"
                + " 'measured': {'core': {'value': 2, 'unit': 'C'}, 'outdoor': {'value': -12, 'unit': 'C'}}}]");
        Advice advice = Advisor.packed(TestPile.KNOWLEDGE).advise(pile);
        Story story = advice.story().orElseThrow();
        WhyAnswer why = advice.why().orElseThrow();
        assertEquals(Verdict.JUST_WINTER, why.verdict());
        assertEquals(Factor.SHELTER, story.costs().get(0).factor(), "straw would have helped most");
        assertEquals(Optional.empty(), why.model(), "though the model blames " + story.factor());
    }
}
