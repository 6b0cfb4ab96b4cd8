package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Remedy;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Steps tried on a pile as it is now")
class StepTrialsTest {

    private static final String COLD_CORE =
            "{'date': '%s', 'measured': {'core': {'value': 14, 'unit': 'C'}, 'outdoor': {'value': 4, 'unit': 'C'}}}";

    /** Built on 10 October, looked at on 5 November, with its core measured on 22 October. */
    private static PileModel autumn() {
        return WinterPiles.model(WinterPiles.good(COLD_CORE.formatted("2026-10-22")));
    }

    private static StepTrials trials(PileModel model) {
        return new StepTrials(PileNow.of(model));
    }

    private static Trial trial(StepTrials trials, Remedy... steps) {
        Map<Remedy, List<heapwright.process.dose.DoseAmount>> all = new LinkedHashMap<>();
        for (Remedy step : steps) {
            all.put(step, List.of());
        }
        return trials.together(all);
    }

    @Test
    @DisplayName("one alone wins what it wins by itself")
    void alone() {
        StepTrials trials = trials(autumn());
        Gain turned = trials.of(Remedy.TURN_FULLY, List.of()).orElseThrow();
        Trial.With with = trial(trials, Remedy.TURN_FULLY).with().orElseThrow();
        assertEquals(turned, with.gain());
        assertFalse(with.openedOnce());
        Gain straw = trials.of(Remedy.INSULATE, List.of()).orElseThrow();
        assertTrue(straw.warmerC().likely() > 0, straw.toString());
        assertTrue(with.core().likely().length == 120 && turned.days() == 120, "no more than 120 days");
    }

    @Test
    @DisplayName("that the model cannot try have no gain")
    void untried() {
        StepTrials trials = trials(autumn());
        assertFalse(trials.canTry(Remedy.COVER_AGAINST_RAIN, List.of()));
        assertTrue(trials.of(Remedy.COVER_AGAINST_RAIN, List.of()).isEmpty());
        assertFalse(trials.canTry(Remedy.ADD_WATER, List.of()), "no amount, no water");
        assertTrue(trials.canTry(Remedy.TURN_FULLY, List.of()));
    }

    @Test
    @DisplayName("none leave the pile alone, from where it stands on the day of advice")
    void none() {
        PileModel model = autumn();
        PileNow pile = PileNow.of(model);
        Trial trial = trial(new StepTrials(pile));
        assertTrue(trial.with().isEmpty());
        assertEquals(120, trial.days());
        assertEquals(LocalDate.of(2026, 11, 5), trial.date(0));
        assertEquals(model.climate().weather().airC(26), trial.outdoor().likely()[0], 3, "it is 5 November");
        double now = pile.state().coreC();
        assertTrue(
                trial.without().low()[0] <= now + 2 && trial.without().high()[0] >= now - 2,
                now + " to " + trial.without().likely()[0]);
    }

    @Test
    @DisplayName("that open the pile twice are one opening")
    void openedOnce() {
        StepTrials trials = trials(autumn());
        Trial both = trial(trials, Remedy.TURN_FULLY, Remedy.MAKE_AIR_HOLES);
        assertTrue(both.with().orElseThrow().openedOnce());
        assertEquals(
                trials.of(Remedy.TURN_FULLY, List.of()).orElseThrow(),
                both.with().orElseThrow().gain(),
                "a turning does what loosening would do");
        assertFalse(trial(trials, Remedy.TURN_FULLY, Remedy.INSULATE)
                .with()
                .orElseThrow()
                .openedOnce());
    }

    @Test
    @DisplayName("are looked at for two months at the least, however near spring is")
    void twoMonths() {
        PileModel spring = WinterPiles.model(TestPile.of(
                "'built': '2027-02-20', 'asOf': '2027-03-25', 'place': {" + WinterPiles.COLD_YEAR + "}, 'container': {"
                        + WinterPiles.bin("none", "none") + "}, 'recipe': [" + WinterPiles.GOOD + "], 'log': ["
                        + COLD_CORE.formatted("2027-03-20") + "]"));
        assertTrue(spring.ahead() < 60, "days to the first of May: " + spring.ahead());
        assertEquals(60, trial(trials(spring)).days());
    }

    /** No pile of thirty litres is at 65 °C after a month at -20 °C. */
    @Test
    @DisplayName("that the model cannot try are all of them where it is not one of this pile")
    void misfit() {
        StepTrials trials =
                trials(WinterPiles.model(TestPile.of("'built': '2026-12-10', 'asOf': '2027-01-10', 'place': {"
                        + "'monthlyMeanC': [-25,-25,-20,-12,-8,-4,-2,-4,-8,-12,-18,-24]}, 'recipe': [{'material':"
                        + " 'leaves-mixed', 'amount': 30, 'unit': 'L'}], 'log': [{'date': '2027-01-10', 'measured': {'core':"
                        + " {'value': 65, 'unit': 'C'}}}]")));
        assertFalse(trials.fits());
        assertFalse(trials.canTry(Remedy.TURN_FULLY, List.of()));
        assertTrue(trials.of(Remedy.TURN_FULLY, List.of()).isEmpty());
        assertTrue(trials(autumn()).fits());
    }
}
