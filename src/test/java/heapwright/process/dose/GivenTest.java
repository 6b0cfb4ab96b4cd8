package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Doses count over the season: what went in comes off the limit of the next. The limits are those of the tables. */
@DisplayName("What was given this season")
class GivenTest {

    private static final Materials MATERIALS = Materials.of(TestPile.KNOWLEDGE.materials());

    @Test
    @DisplayName("comes off the four doses of nitrogen, whatever fertiliser it was")
    void nitrogen() {
        assertEquals(4, dose(Dose.UREA, straw("")).parts());
        DoseAmount afterOne = dose(Dose.UREA, straw(added("2027-04-10", "urea", 400, "g")));
        assertEquals(3, afterOne.parts());
        assertEquals(3 * 0.4, afterOne.kg().likely(), 1e-6, "1 m³ takes 400 g at once");
        DoseAmount afterSulphate = dose(Dose.UREA, straw(added("2027-04-10", "ammonium-sulphate", 876, "g")));
        assertEquals(
                3 * 0.4, afterSulphate.kg().likely(), 0.01, "876 g of sulphate hold as much nitrogen as 400 g of urea");
        DoseAmount rest = dose(Dose.UREA, straw(added("2027-04-10", "urea", 600, "g")));
        assertEquals(Optional.of(Cap.SEASON), rest.cap());
        assertEquals(1.0, rest.kg().likely(), 1e-6);
        assertEquals(3, rest.parts(), "none of them more than 400 g");
    }

    @Test
    @DisplayName("leaves nothing once the limit is reached, or nearly, and says why")
    void reached() {
        assertEquals(
                Optional.of(Cap.SEASON),
                dose(Dose.UREA, straw(added("2027-04-10", "urea", 1500, "g"))).cap());
        for (Dose dose : List.of(Dose.UREA, Dose.AMMONIUM_SULPHATE, Dose.MEAL)) {
            DoseAmount none = dose(dose, straw(added("2027-04-10", "urea", 1750, "g")));
            assertFalse(none.isNeeded(), dose.id());
            assertEquals(Optional.of(Cap.SEASON), none.cap(), dose.id());
        }
    }

    @Test
    @DisplayName("brings the water that a fertiliser was dissolved in, and none for a meal")
    void water() {
        Map<Limit, Double> values = new EnumMap<>(Limit.class);
        TestPile.KNOWLEDGE.limits().forEach((limit, info) -> values.put(limit, info.value()));
        Limits limits = new Limits(values);
        Pile fed = straw(added("2027-04-10", "urea", 400, "g") + ", " + added("2027-04-24", "urea", 400, "g"));
        assertEquals(
                800 / limits.solutionGramsPerLitre(), Given.of(fed, MATERIALS).fertiliserWaterLitres(limits), 1e-9);
        Pile meal = straw(added("2027-04-10", "blood-meal", 400, "g"));
        assertEquals(0, Given.of(meal, MATERIALS).fertiliserWaterLitres(limits));
    }

    @Test
    @DisplayName("is of the last year only, and up to the day of advice")
    void season() {
        Pile old = TestPile.of("'asOf': '2027-05-20', 'built': '2025-10-10', 'log': ["
                + added("2026-05-19", "urea", 1, "kg") + "," + added("2026-05-20", "urea", 1, "kg") + "]");
        assertEquals(460, Given.of(old, MATERIALS).fertiliserNitrogenG(), 5);
    }

    @Test
    @DisplayName("counts ash and lime against the dusting")
    void alkali() {
        assertEquals(1, dose(Dose.ASH, straw("")).litres().likely(), 1e-9);
        DoseAmount half = dose(Dose.ASH, straw(added("2027-04-10", "wood-ash", 0.5, "L")));
        assertEquals(0.5, half.litres().likely(), 1e-9);
        assertEquals(Optional.of(Cap.SEASON), half.cap());
        assertEquals(
                Optional.of(Cap.SEASON),
                dose(Dose.ASH, straw(added("2027-04-10", "lime-ground", 1, "L")))
                        .cap());
    }

    @Test
    @DisplayName(
            "comes off the greens of a heap of unknown recipe from the day they were taken on, as the need is assumed")
    void greens() {
        Pile fed =
                TestPile.of("'asOf': '2027-05-20', 'built': '2026-10-10', 'container': {'volume': {'value': 1, 'unit': "
                        + "'m3'}}, 'log': [" + added("2027-05-10", "grass-clippings", 50, "L") + "]");
        double whole = dose(Dose.GREENS, fed, Optional.empty()).kg().likely();
        assertEquals(whole, dose(Dose.GREENS, fed, day("2027-05-11")).kg().likely(), "given before it was advised");
        DoseAmount less = dose(Dose.GREENS, fed, day("2027-05-10"));
        assertTrue(less.kg().likely() < whole);
        assertEquals(Optional.of(Cap.SEASON), less.cap());
    }

    private static Optional<LocalDate> day(String day) {
        return Optional.of(LocalDate.parse(day));
    }

    private static String added(String date, String material, double amount, String unit) {
        return "{'date': '" + date + "', 'added': [{'material': '" + material + "', 'amount': " + amount + ", 'unit': '"
                + unit + "'}]}";
    }

    private static Pile straw(String log) {
        return TestPile.of("'asOf': '2027-05-20', 'built': '2026-10-10', 'container': {'volume': {'value': 1, 'unit': "
                + "'m3'}}, 'recipe': [{'material': 'straw-wheat', 'amount': 3, 'unit': 'm3', 'date': '2026-10-10'}], "
                + "'log': [" + log + "]");
    }

    private static DoseAmount dose(Dose dose, Pile pile) {
        return dose(dose, pile, Optional.empty());
    }

    private static DoseAmount dose(Dose dose, Pile pile, Optional<LocalDate> takenOn) {
        Map<Limit, Double> limits = new EnumMap<>(Limit.class);
        TestPile.KNOWLEDGE.limits().forEach((limit, info) -> limits.put(limit, info.value()));
        PileStock stock = Stocktaking.of(pile, MATERIALS, new MixtureCalculator());
        DoseContext context = DoseContext.of(
                pile,
                stock,
                Shape.of(Container.unknown(), stock.volumeM3().likely()),
                new Limits(limits),
                MATERIALS,
                false);
        return DoseCalculator.calculate(dose, context.given(context.given().since(takenOn)));
    }
}
