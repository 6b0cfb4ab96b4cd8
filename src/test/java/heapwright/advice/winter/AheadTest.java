package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What lies ahead")
class AheadTest {

    private static final Forecaster FORECASTER = new Forecaster(TestPile.KNOWLEDGE);

    private static Ahead fresh(String year, String insulation) {
        return FORECASTER
                .ahead(TestPile.of("'built': '2026-10-10', 'asOf': '2026-10-10', 'place': {'monthlyMeanC': " + year
                        + "}, 'container': {" + WinterPiles.bin("none", insulation) + "}, 'recipe': ["
                        + WinterPiles.GOOD + "], 'aim': {'readyBy': '2027-05-01'}"))
                .orElseThrow();
    }

    private static double meanCore(Ahead ahead) {
        return Arrays.stream(ahead.core().likely()).average().orElseThrow();
    }

    @Test
    @DisplayName("reaches to the next spring, with bands in order")
    void bands() {
        Ahead ahead = fresh("[-9,-9,-3,4,11,15,18,16,10,4,-2,-7]", "none");
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
        double cold = meanCore(fresh("[-9,-9,-3,4,11,15,18,16,10,4,-2,-7]", "none"));
        double mild = meanCore(fresh("[-1,-1,5,12,19,23,26,24,18,12,6,1]", "none"));
        double straw = meanCore(fresh("[-9,-9,-3,4,11,15,18,16,10,4,-2,-7]", "straw"));
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
        Ahead one = fresh("[-9,-9,-3,4,11,15,18,16,10,4,-2,-7]", "none");
        Ahead other = fresh("[-9,-9,-3,4,11,15,18,16,10,4,-2,-7]", "none");
        assertEquals(List.of(one.figures(), one.plans()), List.of(other.figures(), other.plans()));
        assertTrue(Arrays.equals(one.core().high(), other.core().high()));
    }
}
