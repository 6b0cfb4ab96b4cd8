package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import heapwright.process.heat.Bands;
import heapwright.process.heat.Range;
import heapwright.report.Catalogue;
import heapwright.report.OutlookReport;
import heapwright.report.Units;
import heapwright.report.Words;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What lies ahead")
class PileOutlookTest {

    private static final String COLD = "[-9,-9,-3,4,11,15,18,16,10,4,-2,-7]";
    private static final String MILD = "[9,9,11,13,15,18,20,20,18,15,12,10]";

    private static final Forecaster FORECASTER = new Forecaster(TestPile.KNOWLEDGE);

    private static PileOutlook fresh(String year, String insulation) {
        return FORECASTER
                .ahead(TestPile.of("'built': '2026-10-10', 'asOf': '2026-10-10', 'place': {'monthlyMeanC': " + year
                        + "}, 'container': {" + WinterPiles.bin("none", insulation) + "}, 'recipe': ["
                        + WinterPiles.GOOD + "], 'aim': {'readyBy': '2027-05-01'}"))
                .orElseThrow();
    }

    private static double meanCore(PileOutlook ahead) {
        return Arrays.stream(ahead.core().likely()).average().orElseThrow();
    }

    @Test
    @DisplayName("reaches to the next spring, with bands in order")
    void bands() {
        PileOutlook ahead = fresh(COLD, "none");
        assertEquals(203, ahead.core().likely().length);
        for (int d = 0; d < 203; d++) {
            assertTrue(ahead.core().low()[d] <= ahead.core().likely()[d]);
            assertTrue(ahead.core().likely()[d] <= ahead.core().high()[d]);
        }
        assertTrue(ahead.fresh());
        assertTrue(ahead.figures().volumeLeft().likely() < 1);
        assertTrue(ahead.plans().stream().anyMatch(p -> p.plan() == Plan.BUILT_EARLIER));
    }

    @Test
    @DisplayName("is warmer in a milder place and in straw")
    void monotone() {
        double cold = meanCore(fresh(COLD, "none"));
        double mild = meanCore(fresh("[-1,-1,5,12,19,23,26,24,18,12,6,1]", "none"));
        double straw = meanCore(fresh(COLD, "straw"));
        assertTrue(mild > cold, mild + " against " + cold);
        assertTrue(straw > cold, straw + " against " + cold);
    }

    @Test
    @DisplayName("goes on from a pile as it stands")
    void standing() {
        Pile hot = WinterPiles.good("{'date': '2026-11-05', 'measured': {'core': {'value': 58, 'unit': 'C'}}}");
        Pile cold = WinterPiles.good("{'date': '2026-11-05', 'measured': {'core': {'value': 4, 'unit': 'C'}}}");
        double now = FORECASTER.ahead(hot).orElseThrow().core().likely()[0];
        double other = FORECASTER.ahead(cold).orElseThrow().core().likely()[0];
        assertTrue(now > 45, "hot: " + now);
        assertTrue(other < 12, "cold: " + other);
    }

    @Test
    @DisplayName("is wide for a pile whose recipe is not told")
    void typical() {
        Pile pile = WinterPiles.pile(WinterPiles.COLD_YEAR, WinterPiles.bin("none", "none"), "", "");
        assertTrue(FORECASTER.ahead(pile).isEmpty());
        assertTrue(FORECASTER.aheadOfTypical(pile).orElseThrow().model().typical());
    }

    @Test
    @DisplayName("is the same twice")
    void sameTwice() {
        PileOutlook one = fresh(COLD, "none");
        PileOutlook other = fresh(COLD, "none");
        assertEquals(List.of(one.figures(), one.plans()), List.of(other.figures(), other.plans()));
        assertTrue(Arrays.equals(one.core().high(), other.core().high()));
    }

    private static PileOutlook of(String built, String asOf, String year, String more) {
        return FORECASTER
                .ahead(TestPile.of("'built': '" + built + "', 'asOf': '" + asOf + "', 'place': {'monthlyMeanC': " + year
                        + "}, 'container': {" + WinterPiles.bin("none", "none") + "}, 'recipe': [" + WinterPiles.GOOD
                        + "]" + more))
                .orElseThrow();
    }

    private static PileOutlook.PlanOutcome plan(PileOutlook ahead, Plan plan) {
        return ahead.plans().stream()
                .filter(p -> p.plan() == plan)
                .findFirst()
                .orElseThrow(() -> new AssertionError(plan + " is not among " + ahead.plans()));
    }

    @Test
    @DisplayName("begins on the day it was built for three days, and then on the day of advice")
    void firstDay() {
        PileOutlook planned = of("2026-10-10", "2026-10-10", COLD, "");
        PileOutlook threeDays = of("2026-10-10", "2026-10-13", COLD, "");
        assertEquals(LocalDate.of(2026, 10, 10), threeDays.firstDay());
        assertArrayEquals(planned.core().likely(), threeDays.core().likely());
        assertEquals(planned.plans(), threeDays.plans());
        PileOutlook fourDays = of("2026-10-10", "2026-10-14", COLD, "");
        assertTrue(!fourDays.fresh());
        assertEquals(LocalDate.of(2026, 10, 14), fourDays.firstDay());
        assertEquals(199, fourDays.core().likely().length, "to the first of May");
        assertEquals(planned.now().sky().airC(4), fourDays.now().sky().airC(0), 1e-9);
        PileOutlook measured = of(
                "2026-10-10",
                "2026-10-13",
                COLD,
                ", 'log': [{'date': '2026-10-13', 'measured': {'core': {'value': 40, 'unit': 'C'}}}]");
        assertTrue(!measured.fresh(), "a pile whose core was measured stands");
    }

    @Test
    @DisplayName("tries what can still be built otherwise on a fresh pile, and what can be done on one that stands")
    void waysThatFit() {
        List<Plan> fresh = of("2026-10-10", "2026-10-13", COLD, "").plans().stream()
                .map(PileOutlook.PlanOutcome::plan)
                .toList();
        assertTrue(fresh.contains(Plan.TURNED_IN_TWO_WEEKS) && fresh.contains(Plan.BUILT_EARLIER), fresh.toString());
        assertTrue(!fresh.contains(Plan.TURNED_NOW), fresh.toString());
        List<Plan> standing = of("2026-10-10", "2026-10-14", COLD, "").plans().stream()
                .map(PileOutlook.PlanOutcome::plan)
                .toList();
        assertTrue(standing.contains(Plan.TURNED_NOW), standing.toString());
        assertTrue(
                !standing.contains(Plan.TURNED_IN_TWO_WEEKS) && !standing.contains(Plan.BUILT_EARLIER),
                standing.toString());
    }

    @Test
    @DisplayName("finds the first mild day of spring on the same date whenever it is asked, also past the look ahead")
    void sameSpring() {
        PileOutlook fresh = of("2026-10-10", "2026-10-10", COLD, "");
        PileOutlook standing = of("2026-10-10", "2026-10-20", COLD, "");
        int day = plan(fresh, Plan.TURNED_IN_SPRING).day();
        assertTrue(day > fresh.core().likely().length, "day " + day);
        assertEquals(day - 10, plan(standing, Plan.TURNED_IN_SPRING).day());
        assertEquals(240, fresh.lookedDays());
    }

    @Test
    @DisplayName("is the wider the less is told")
    void wider() {
        Pile untold = WinterPiles.pile(WinterPiles.COLD_YEAR, WinterPiles.bin("none", "none"), "", "");
        Pile told = WinterPiles.good("");
        double wide = width(FORECASTER.aheadOfTypical(untold).orElseThrow().outdoor());
        double usual = width(FORECASTER.ahead(told).orElseThrow().outdoor());
        assertTrue(wide > usual + 0.5, wide + " against " + usual);
    }

    private static double width(Bands bands) {
        double sum = 0;
        for (int d = 0; d < bands.low().length; d++) {
            sum += bands.high()[d] - bands.low()[d];
        }
        return sum / bands.low().length;
    }

    @Test
    @DisplayName("counts a wish from the day of advice: an old, spent pile rests three weeks more (CCME05)")
    void wish() {
        String spent = ", 'aim': {'readyBy': '%s'}";
        WantedDate early = of("2025-04-01", "2026-09-01", MILD, spent.formatted("2026-09-21"))
                .wish()
                .orElseThrow();
        assertEquals(0, early.chance());
        WantedDate rested = of("2025-04-01", "2026-09-01", MILD, spent.formatted("2026-09-22"))
                .wish()
                .orElseThrow();
        assertTrue(rested.chance() > 0.5, rested.toString());
    }

    @Test
    @DisplayName("in straw is warmer by some kelvin for more days, and no likelier to freeze through")
    void straw() {
        PileOutlook bare = of("2026-10-10", "2026-10-10", COLD, "");
        PileOutlook.PlanOutcome straw = plan(bare, Plan.INSULATED);
        Gain gain = straw.gain();
        assertTrue(gain.warmerC().low() > 0.5 && gain.warmerC().high() < 20, straw.toString());
        assertTrue(gain.moreWarmDays().likely() > 5, straw.toString());
        assertTrue(gain.moreWarmDays().high() <= gain.days(), straw.toString());
        assertTrue(gain.frost().with() <= gain.frost().without(), straw.toString());
        assertTrue(gain.daysWon().likely() >= 0, straw.toString());
        assertEquals(120, gain.days(), "as a step is looked at");
    }

    @Test
    @DisplayName(
            "of a pile built of frozen stuff that sleeps in frost wins nothing but the days by which it is built earlier")
    void asleep() {
        PileOutlook frozen = of(
                "2026-10-10",
                "2026-10-10",
                "[-25,-25,-20,-12,-8,-4,-2,-4,-8,-12,-18,-24]",
                ", 'log': [{'date': '2026-10-10', 'seen': ['snow-mixed-in']}]");
        for (PileOutlook.PlanOutcome outcome : frozen.plans()) {
            assertTrue(outcome.gain().uncounted() && !outcome.gain().tells(), outcome.toString());
        }
        Range earlier = plan(frozen, Plan.BUILT_EARLIER).gain().daysWon();
        assertEquals(new Range(28, 28, 28), earlier);
        assertEquals(28, plan(frozen, Plan.BUILT_EARLIER).day());
        assertEquals(1, plan(frozen, Plan.TURNED_IN_TWO_WEEKS).gain().frost().with());
        PileOutlook mild = of("2026-10-10", "2026-10-10", MILD, "");
        assertEquals(0, plan(mild, Plan.INSULATED).gain().frost().with());
    }

    private static String core(String date, double celsius) {
        return "{'date': '" + date + "', 'measured': {'core': {'value': " + celsius + ", 'unit': 'C'}}}";
    }

    @ParameterizedTest
    @ValueSource(doubles = {4, 25, 58, 62.5})
    @DisplayName("starts from the core measured today, and its highest is never below that")
    void startsFromToday(double celsius) {
        PileOutlook ahead =
                FORECASTER.ahead(WinterPiles.good(core("2026-11-05", celsius))).orElseThrow();
        assertEquals(celsius, ahead.core().likely()[0], 0.1);
        assertEquals(celsius, ahead.core().low()[0], 0.1);
        assertEquals(celsius, ahead.core().high()[0], 0.1);
        assertTrue(
                ahead.figures().peakC().low() >= celsius - 0.1, ahead.figures().toString());
    }

    @Test
    @DisplayName("is as unsure on its first day as on others where nothing was measured that day")
    void unsureFromTheFirstDay() {
        PileOutlook old =
                FORECASTER.ahead(WinterPiles.good(core("2026-11-01", 50))).orElseThrow();
        assertTrue(old.core().high()[0] - old.core().low()[0] > 5, "K on the first day");
        PileOutlook today =
                FORECASTER.ahead(WinterPiles.good(core("2026-11-05", 50))).orElseThrow();
        assertEquals(0, today.core().high()[0] - today.core().low()[0], 0.2);
        assertEquals(LocalDate.of(2026, 11, 15), today.now().date(10));
    }

    @Test
    @DisplayName("says day by day what will hold it back, to the end of the look ahead")
    void heldBack() {
        PileOutlook ahead = of("2026-10-10", "2026-10-20", COLD, "");
        int days = ahead.core().likely().length;
        assertTrue(!ahead.held().costs(0, days - 1).isEmpty(), "half a year with months of frost costs something");
    }

    @Test
    @DisplayName("carries on the rate that the readings taught")
    void learnedRate() {
        String slow = core("2026-10-18", 22) + "," + core("2026-10-26", 20) + "," + core("2026-11-05", 18);
        String quick = core("2026-10-18", 66) + "," + core("2026-10-26", 64) + "," + core("2026-11-05", 18);
        double slowly = rate(WinterPiles.model(WinterPiles.good(slow)));
        double quickly = rate(WinterPiles.model(WinterPiles.good(quick)));
        assertTrue(slowly < 0.8 && slowly < quickly, slowly + " against " + quickly);
        assertEquals(1, rate(WinterPiles.model(WinterPiles.good(""))), 1e-9, "nothing measured, nothing learned");
    }

    private static double rate(PileModel model) {
        return PileNow.of(model).state().stage().rate();
    }

    /** No pile of thirty litres is at 65 °C after four weeks at -20 °C. */
    @Test
    @DisplayName("gives no dates and no other ways where a reading is far from what the model can be made to say")
    void misfit() {
        String year = "[-25,-25,-20,-12,-8,-4,-2,-4,-8,-12,-18,-24]";
        PileOutlook ahead = FORECASTER
                .ahead(TestPile.of("'built': '2026-12-10', 'asOf': '2027-01-10', 'place': {'monthlyMeanC': " + year
                        + "}, 'recipe': [{'material': 'leaves-mixed', 'amount': 30, 'unit': 'L'}], 'log': ["
                        + core("2027-01-10", 65) + "], 'aim': {'readyBy': '2027-06-01'}"))
                .orElseThrow();
        assertTrue(!ahead.fits(), "missed by " + ahead.now().missK());
        assertTrue(ahead.plans().isEmpty() && ahead.wish().isEmpty());
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        String headline = new OutlookReport(words, false).headline(ahead);
        assertTrue(
                headline.startsWith("The model does not fit this pile") && !headline.contains("Ready about"), headline);
        assertTrue(!headline.contains("above 40") && !headline.contains("freezes through"), headline);
        assertTrue(new OutlookReport(words, false).figures(ahead).isEmpty(), "what it reckons is of another pile");
        assertTrue(FORECASTER.ahead(WinterPiles.good("")).orElseThrow().fits());
    }
}
