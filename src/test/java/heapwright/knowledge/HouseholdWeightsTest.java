package heapwright.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.pile.Amount;
import heapwright.pile.Pile;
import heapwright.process.mixture.Portion;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a household measure of a material weighs, against figures from outside: bales of 40 lb (NOFA); the densities that
 * the Oregon Department of Environmental Quality gives compost operators (2005) and those of the Environmental
 * Protection Agency's volume-to-weight factors (1997, 2016; from memory), in lb a cubic yard.
 */
@DisplayName("A measure of the house weighs")
class HouseholdWeightsTest {

    private static final double KG_PER_LB = 0.45359237;
    private static final double LITRES_PER_YARD = 764.554857984;

    private static double kilograms(String material, double amount, String unit, String extra) {
        Pile pile = TestPile.of("'asOf': '2026-06-10', 'built': '2026-06-10', " + extra + "'recipe': [{'material': '"
                + material + "', 'amount': " + amount + ", 'unit': '" + unit + "'}]");
        Amount told = pile.recipe().get(0).amount();
        return new Portion(TestPile.KNOWLEDGE.materials().get(material), told, java.util.OptionalDouble.empty(), false)
                .kgWet()
                .likely();
    }

    @ParameterizedTest(name = "a bale of {0}")
    @DisplayName("as much as it is pressed to: a small bale 40 lb, loose it would be 7 kg")
    @CsvSource({"straw-general", "straw-wheat", "hay-grass"})
    void bale(String material) {
        assertEquals(40 * KG_PER_LB, kilograms(material, 1, "bale", ""), 0.5);
        assertEquals(3 * 18, kilograms(material, 3, "bales", ""), 1e-9);
    }

    @Test
    @DisplayName("more or less where the person has another bale")
    void ownBale() {
        assertEquals(
                36, kilograms("straw-general", 1, "bale", "'measures': {'bale': {'value': 294, 'unit': 'L'}}, "), 1e-9);
    }

    @ParameterizedTest(name = "a {1} of {0}: {2} to {3} lb a cubic yard")
    @DisplayName("what fills it loosely weighs")
    @CsvSource({
        "leaves-mixed, paper-yard-bag, 100, 500",
        "leaves-mixed, wheelbarrow, 100, 500",
        "grass-clippings, wheelbarrow, 300, 800",
        "chips-hardwood, wheelbarrow, 243, 473",
        "kitchen-scraps, five-gallon-bucket, 396, 1513",
        "coffee-grounds, bucket, 396, 1513",
        "compost-finished, wheelbarrow, 700, 1500",
        "straw-general, armful, 58, 227"
    })
    void loose(String material, String measure, double lowLbYd3, double highLbYd3) {
        double litres = TestPile.KNOWLEDGE.measures().get(measure).litres();
        double lbYd3 = kilograms(material, 1, measure, "") / litres * LITRES_PER_YARD / KG_PER_LB;
        assertTrue(lbYd3 >= lowLbYd3 && lbYd3 <= highLbYd3, material + " at " + lbYd3 + " lb/yd³");
    }
}
