package heapwright.process.heat;

import static heapwright.process.heat.Fixtures.good;
import static heapwright.process.heat.Fixtures.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Published behaviour of oxygen, water, nitrogen, volume and time; numbers as in docs/method/heat.md. */
class LossesTest {
    private static final Constants.Kinetics K = Constants.standard().kinetics();

    @Test
    @DisplayName("15 MOTE82, GINK96: fresh rich matter in plenty of air peaks near 20-30 W per kg of dry matter")
    void peakPower() {
        double peak = Scenes.peakPower();
        assertTrue(peak >= 20 && peak <= 30, peak + " W/kg");
    }

    @Test
    @DisplayName("16 HAUG93, COON68, MASON06: 9.8-14.8 kJ per g of oxygen, 17-25 kJ per g of organic matter")
    void heatPerOxygenAndMatter() {
        assertTrue(K.heatPerKgOxygen() >= 13.6e6 && K.heatPerKgOxygen() <= 14.4e6);
        double perMatter = K.heatPerKgOxygen() * K.oxygenPerKg();
        assertTrue(perMatter >= 17e6 && perMatter <= 25e6);
        Ledger ledger = run(good(1), 12, Envelope.slatted(), 12, 60).ledger();
        assertEquals(perMatter, ledger.heatReleased() / ledger.dryLost(), 1e-6 * perMatter);
    }

    @Test
    @DisplayName(
            "17 SASK08, CORNPOR: oxygen stays between 0 and that outdoors; a choked pile runs out, a loose one not")
    void oxygenFollowsAirSpace() {
        assertTrue(K.oxygenPerKg() >= 1.2 && K.oxygenPerKg() <= 1.5);
        Course loose = run(good(0.6), 15, Envelope.slatted(), 12, 20);
        Course choked = run(Matter.of(0.6, 850, 0.7, 0.25, 0.4, 0.25, 25, 4), 15, Envelope.slatted(), 12, 20);
        for (Course c : List.of(loose, choked)) {
            for (Day d : c.days()) {
                assertTrue(d.oxygenCore() >= 0 && d.oxygenCore() <= 20.9, d.toString());
            }
        }
        assertTrue(
                loose.days().get(12).oxygenCore() > 5,
                "loose " + loose.days().get(12).oxygenCore());
        assertTrue(
                choked.days().get(6).oxygenCore() < 2,
                "choked " + choked.days().get(6).oxygenCore());
    }

    @Test
    @DisplayName("18 FINHOG93: in a strong draught most heat leaves with vapour, and an active pile dries")
    void draughtCarriesHeatAndWater() {
        Course strong = Scenes.drawn(40);
        Course usual = Scenes.drawn(1);
        double share = strong.ledger().heatAired() / strong.ledger().heatReleased();
        double own = usual.ledger().heatAired() / usual.ledger().heatReleased();
        assertTrue(share > 0.6, "share in a strong draught " + share);
        assertTrue(own > 0.05 && own < share, "share in a passive pile " + own);
        assertTrue(
                strong.last().moistureMean() < 0.52, "strong " + strong.last().moistureMean());
        assertTrue(usual.ledger().waterVapour() > usual.ledger().waterFormed());
    }

    @Test
    @DisplayName("19 CORNMIX, CORNMOIST: slow below 35-40 % water, stopped below 30 %, short of air when soaked")
    void waterResponse() {
        double right = Scenes.decayed(0.57, 480);
        double dryish = Scenes.decayed(0.36, 340);
        double dry = Scenes.decayed(0.25, 280);
        double soaked = Scenes.decayed(0.74, 850);
        assertTrue(dryish < 0.7 * right, "at 36 % " + dryish + " against " + right);
        assertTrue(dry < 0.25 * right, "at 25 % " + dry);
        assertTrue(soaked < 0.6 * right, "at 74 % " + soaked);
    }

    @Test
    @DisplayName("20 SASK08, a city programme: half the volume goes in a month if active, 50-70 % in the end")
    void volumeLoss() {
        Course course = Scenes.turnedWeekly();
        double month = course.days().get(30).volumeM3();
        double end = course.last().volumeM3();
        assertTrue(month >= 0.4 && month <= 0.68, "after a month " + month);
        assertTrue(end >= 0.28 && end <= 0.5, "in the end " + end);
    }

    @Test
    @DisplayName("21 WSUWHAT, CORNFAQ: manure 1-3 months in summer, 3-6 in winter; untended leaves more than a year")
    void finishDates() {
        int summer = Scenes.summerDays();
        int winter = Scenes.winterDays();
        assertTrue(summer >= 25 && summer <= 95, "summer " + summer);
        assertTrue(winter >= summer && winter <= 200, "winter " + winter);
        assertTrue(Scenes.leavesDays() > 365, "leaves " + Scenes.leavesDays());
    }

    @Test
    @DisplayName("22 GOT56: from C:N 30 to 78 the time at most doubles")
    void carbonToNitrogenSlows() {
        int at20 = Scenes.halfFoodDays(20);
        int at30 = Scenes.halfFoodDays(30);
        int at78 = Scenes.halfFoodDays(78);
        assertTrue(at20 <= at30 + 1, at20 + " and " + at30);
        assertTrue(at78 > 1.2 * at30 && at78 <= 2.3 * at30, at30 + " and " + at78);
    }

    @Test
    @DisplayName("23 IDAHO: C:N 30 ends near 10-15, two thirds of consumed carbon leave")
    void endPoint() {
        assertEquals(2.0 / 3, 1 - K.humusYield(), 0.05);
        Course course = Scenes.toTheEnd();
        double ratio = course.last().carbonToNitrogen();
        assertTrue(ratio >= 9.5 && ratio <= 16.5, "end " + ratio);
    }

    @Test
    @DisplayName(
            "24 GOT56, SUND05: more nitrogen is lost the lower C:N, and ammonia at 67 °C is over twice that at 55 °C")
    void nitrogenLoss() {
        double at15 = Scenes.nitrogenLost(15);
        double at20 = Scenes.nitrogenLost(20);
        double at25 = Scenes.nitrogenLost(25);
        double at30 = Scenes.nitrogenLost(30);
        assertTrue(at15 > at20 && at20 > at25 && at25 >= at30, at15 + " " + at20 + " " + at25 + " " + at30);
        assertTrue(at30 < 0.06, "C:N 30: " + at30);
        assertTrue(at20 > 0.12 && at20 < 0.5, "C:N 20: " + at20);
        double hot = Factors.freeAmmonia(8, 67) * Math.exp(0.05 * 12);
        assertTrue(hot > 2 * Factors.freeAmmonia(8, 55), "ratio " + hot / Factors.freeAmmonia(8, 55));
    }

    @Test
    @DisplayName("25 SUND05: below pH 6 with more than 40 °C it stalls; air cures it")
    void acidStart() {
        Course sweet = Scenes.acidStart(0.1);
        Course sour = Scenes.acidStart(0.95);
        Course aired = Scenes.acidStart(0.95, new Event.Turn(4), new Event.Turn(7), new Event.Turn(10));
        assertTrue(sweet.firstAtLeast(55).orElseThrow() <= 4);
        Day day = sour.days().get(4);
        assertTrue(day.coreC() < 50 && day.phCore() < 6, day.toString());
        int own = sour.firstAtLeast(55).orElse(99);
        int cured = aired.firstAtLeast(55).orElse(99);
        assertTrue(own >= 4 + sweet.firstAtLeast(55).getAsInt(), "on its own day " + own);
        assertTrue(aired.days().get(11).phCore() > sour.days().get(11).phCore(), "cured " + cured + ", own " + own);
    }

    @Test
    @DisplayName(
            "Weekly turning in mild weather takes no warm days and leaves less food; unturned, much stays out of reach")
    void turningPays() {
        PileState start = PileState.cube(Fixtures.good(0.9), 15, Envelope.slatted());
        Course left = Fixtures.run(start, Weather.constant(12, 60), 60);
        Course turned = Fixtures.run(start, Weather.constant(12, 60), 60, Scenes.turns(7, 42));
        assertTrue(
                turned.daysAtLeast(40) >= left.daysAtLeast(40),
                turned.daysAtLeast(40) + " days against " + left.daysAtLeast(40));
        assertTrue(
                turned.last().foodLeftShare() < left.last().foodLeftShare() - 0.05,
                turned.last().foodLeftShare() + " left against " + left.last().foodLeftShare());
    }

    @Test
    @DisplayName("26 GETA12, MICH96: more turning loses more carbon and nitrogen")
    void turningLoses() {
        Course once = Scenes.turned(new Event.Turn(14));
        Course often = Scenes.turned(Scenes.turns(4, 48));
        assertTrue(often.ledger().dryLost() > once.ledger().dryLost());
        assertTrue(often.last().nitrogenLostShare() > once.last().nitrogenLostShare());
    }

    @Test
    @DisplayName("29 MASON06: no model met 5 °C on the peak, so no band is narrower")
    void bandsAreHonest() {
        Ensemble e = Ensemble.run(
                PileState.cube(good(1), 15, Envelope.slatted()),
                Weather.constant(10, 30),
                List.of(),
                30,
                Fixtures.STANDARD,
                Spread.none(),
                8);
        Bands core = e.core();
        for (int d = 0; d < 30; d++) {
            if (core.likely()[d] - 10 > 30) {
                assertTrue(core.high()[d] - core.low()[d] >= 9.99, "day " + d);
            }
        }
        assertTrue(core.likely()[14] > 45);
    }
}
