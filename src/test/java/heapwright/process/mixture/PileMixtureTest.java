package heapwright.process.mixture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.Aim;
import heapwright.pile.Amount;
import heapwright.pile.Container;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Keeper;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.process.dose.PileStock;
import heapwright.process.dose.Stocktaking;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PileMixtureTest {

    private static final LocalDate BUILT = LocalDate.of(2026, 10, 31);
    private static final LocalDate NOW = LocalDate.of(2026, 11, 21);
    private static final Materials MATERIALS = Materials.of(TestMaterials.all());
    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void additionsCountUpToTheDayOfAdvice() {
        Pile pile = pile(
                Container.unknown(),
                List.of(ingredient("leaves-mixed", 300, BUILT), ingredient("twigs", 50, NOW.plusDays(1))),
                List.of(
                        entry(NOW, Measured.nothing(), ingredient("kitchen-scraps", 20, NOW)),
                        entry(NOW.plusDays(5), Measured.nothing(), ingredient("urea", 5, NOW.plusDays(5)))));
        assertEquals(
                List.of("leaves-mixed", "kitchen-scraps"),
                PileMixture.portions(pile, MATERIALS).stream()
                        .map(portion -> portion.material().id())
                        .toList());
    }

    @Test
    void theLatestMeasurementCounts() {
        Pile pile = pile(
                new Container(
                        Container.Kind.SLATTED_BIN,
                        OptionalDouble.of(2),
                        OptionalDouble.of(1.5),
                        OptionalDouble.of(1),
                        NONE,
                        Container.Cover.NONE,
                        Container.Base.SOIL,
                        Container.Insulation.NONE,
                        false),
                List.of(),
                List.of(entry(BUILT, measured(70, 0.9)), entry(NOW, measured(62, 0.7))));
        Observed observed = PileMixture.observed(pile, MATERIALS);
        assertEquals(62, observed.moisturePct().orElseThrow());
        assertEquals(2.1, observed.volumeM3().orElseThrow(), 1e-12);
        assertTrue(PileMixture.of(pile, MATERIALS, new MixtureCalculator()).isEmpty());
        PileStock stock = Stocktaking.of(pile, MATERIALS, new MixtureCalculator());
        assertEquals(2.1, stock.volumeM3().likely(), 1e-12);
        assertEquals(Basis.ASSUMED, stock.recipeBasis());
        assertEquals(Basis.MEASURED, stock.moistureBasis());
    }

    @Test
    void aPileOfWhichNothingIsKnownIsTakenAsTheUsualOneWithAWideBand() {
        PileStock stock =
                Stocktaking.of(pile(Container.unknown(), List.of(), List.of()), MATERIALS, new MixtureCalculator());
        assertEquals(1, stock.volumeM3().likely());
        assertTrue(stock.wetKg().high() > 4 * stock.wetKg().low());
        assertEquals(Basis.ASSUMED, stock.volumeBasis());
    }

    @Test
    void aRecipeBeatsTheUsualPile() {
        PileStock stock = Stocktaking.of(
                pile(Container.unknown(), List.of(ingredient("leaves-mixed", 1000, BUILT)), List.of()),
                MATERIALS,
                new MixtureCalculator());
        assertEquals(115, stock.wetKg().likely(), 1e-9);
        assertEquals(54, stock.carbonToNitrogen().likely(), 1e-9);
        assertEquals(Basis.ESTIMATED, stock.recipeBasis());
    }

    private static Pile pile(Container container, List<Ingredient> recipe, List<Entry> log) {
        return new Pile(
                "test",
                BUILT,
                false,
                false,
                NOW,
                Place.unknown(),
                container,
                recipe,
                log,
                List.of(),
                List.of(),
                Keeper.unknown(),
                Aim.unknown(),
                List.of(),
                Map.of(),
                List.of(),
                Map.of());
    }

    private static Ingredient ingredient(String material, double litres, LocalDate date) {
        return new Ingredient(material, Amount.ofVolume(litres, "L", litres), NONE, false, date);
    }

    private static Entry entry(LocalDate date, Measured measured, Ingredient... added) {
        return new Entry(date, List.of(), List.of(), measured, List.of(), List.of(added), "");
    }

    private static Measured measured(double moisture, double height) {
        return new Measured(NONE, NONE, NONE, NONE, OptionalDouble.of(moisture), NONE, NONE, OptionalDouble.of(height));
    }
}
