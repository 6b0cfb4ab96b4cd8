package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.pile.Amount;
import heapwright.process.heat.Matter;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.PileSize;
import heapwright.process.mixture.Portion;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("To the model a recipe")
class RecipeMatterTest {

    private static Portion kg(String id, double kilograms) {
        return Portion.ofKilograms(TestPile.KNOWLEDGE.materials().get(id), kilograms);
    }

    private static Portion pieces(String id, OptionalDouble cm, boolean chopped) {
        return new Portion(TestPile.KNOWLEDGE.materials().get(id), Amount.ofMass(100, "kg", 100), cm, chopped);
    }

    private static Matter of(Portion... portions) {
        return RecipeMatter.of(List.of(portions));
    }

    @Test
    @DisplayName("keeps its masses")
    void masses() {
        var mix = new MixtureCalculator(2).mix(List.of(kg("leaves-mixed", 100), kg("grass-clippings", 50)));
        Matter matter = of(kg("leaves-mixed", 100), kg("grass-clippings", 50));
        assertEquals(mix.masses().dry().likely(), matter.dryKg(), 1e-9);
        assertEquals(mix.masses().water().likely(), matter.waterKg(), 1e-9);
        double organic =
                mix.masses().volatileSolids().likely() / mix.masses().dry().likely();
        assertEquals(organic, matter.quickShare() + matter.slowShare() + matter.ligninShare(), 1e-9);
        assertEquals(
                mix.carbonToNitrogen().likely(),
                matter.dryKg() * organic * 0.5 / matter.nitrogenKg(),
                1e-6,
                "without wood the model's C:N is that of the recipe");
        assertEquals(0, matter.mineralNitrogenKg());
    }

    @Test
    @DisplayName("has the nitrogen of fertiliser ready at once")
    void fertiliser() {
        Matter matter = of(kg("leaves-mixed", 100), kg("urea", 1));
        assertEquals(
                TestPile.KNOWLEDGE.materials().get("urea").typicalNitrogenPct() / 100,
                matter.mineralNitrogenKg(),
                1e-9);
        assertTrue(matter.nitrogenKg() > of(kg("leaves-mixed", 100)).nitrogenKg());
    }

    private static double fills(double kilograms, double m3, boolean filled) {
        return RecipeMatter.of(List.of(kg("leaves-mixed", kilograms)), Optional.of(new PileSize.Built(m3, filled)))
                .volumeM3();
    }

    @Test
    @DisplayName("fills the size told, and is never denser than soaked peelings")
    void told() {
        List<Portion> leaves = List.of(kg("leaves-mixed", 100));
        double settled = new MixtureCalculator(2).mix(leaves).settledM3().likely();
        assertEquals(1.08 * settled, RecipeMatter.of(leaves).volumeM3(), 1e-9, "untold");
        assertEquals(2 * settled, fills(100, 2 * settled, true), 1e-9);
        assertEquals(0.5 * settled, fills(100, 0.5 * settled, true), 1e-9);
        assertEquals(100.0 / 950, fills(100, 0.01, true), 1e-9);
    }

    @Test
    @DisplayName("fills a bin where as much was put in as it holds, and else lies in it as it settles")
    void room() {
        List<Portion> leaves = List.of(kg("leaves-mixed", 100));
        double settled = new MixtureCalculator(2).mix(leaves).settledM3().likely();
        double loose = PileMixture.looseM3(leaves);
        assertEquals(loose, fills(100, loose, false), 1e-9, "to the brim");
        assertEquals(1.08 * settled, fills(100, loose / 0.69, false), 1e-9, "two thirds full");
        assertEquals(1.08 * settled, fills(100, 99, false), 1e-9);
        assertEquals(0.3, fills(100, 0.3, false), 1e-9, "no more than its room");
        for (double room = 0.3; room < 2 * loose; room *= 1.01) {
            assertTrue(Math.abs(fills(100, room * 1.01, false) - fills(100, room, false)) < 0.05 * room, "no jump");
        }
    }

    @Test
    @DisplayName("settles to the same from however loose it was seen to lie")
    void settles() {
        List<Portion> leaves = List.of(kg("leaves-mixed", 100));
        Matter free = RecipeMatter.of(leaves);
        assertEquals(0.12, RecipeMatter.stage(leaves, free).loose(), 1e-9);
        double end = free.volumeM3() / 1.12;
        double told = 1.5 * free.volumeM3();
        Matter high = RecipeMatter.of(leaves, Optional.of(new PileSize.Built(told, true)));
        assertEquals(end, told / (1 + RecipeMatter.stage(leaves, high).loose()), 1e-9);
        Matter low = RecipeMatter.of(leaves, Optional.of(new PileSize.Built(0.5 * end, true)));
        assertEquals(0, RecipeMatter.stage(leaves, low).loose(), "trodden down");
    }

    @Test
    @DisplayName("decays quickest as grass, then leaves, then straw, and last as wood")
    void pools() {
        double grass = of(kg("grass-clippings", 100)).quickShare();
        double leaves = of(kg("leaves-mixed", 100)).quickShare();
        double straw = of(kg("straw-general", 100)).quickShare();
        double wood = of(kg("chips-hardwood", 100)).quickShare();
        assertTrue(grass > leaves && leaves > straw && straw > wood && wood > 0, grass + " " + leaves + " " + straw);
        assertTrue(of(kg("chips-hardwood", 100)).ligninShare()
                > of(kg("straw-general", 100)).ligninShare());
    }

    /** A stem decays as a lump of half its length, wood as long as it is; 5 cm is taken where nothing is told. */
    @Test
    @DisplayName("has the size of its pieces, stated, chopped or usual")
    void size() {
        assertEquals(
                10, of(pieces("straw-general", OptionalDouble.of(20), false)).pieceCm(), 1e-9);
        assertEquals(
                20, of(pieces("chips-hardwood", OptionalDouble.of(20), false)).pieceCm(), 1e-9);
        assertEquals(
                6, of(pieces("chips-hardwood", OptionalDouble.empty(), false)).pieceCm(), 1e-9);
        assertEquals(
                3, of(pieces("chips-hardwood", OptionalDouble.empty(), true)).pieceCm(), 1e-9);
        assertEquals(
                10, of(pieces("corn-stalks", OptionalDouble.empty(), false)).pieceCm(), 1e-9);
        assertEquals(
                2.5, of(pieces("corn-stalks", OptionalDouble.empty(), true)).pieceCm(), 1e-9);
        assertEquals(
                2.5, of(pieces("leaves-mixed", OptionalDouble.empty(), false)).pieceCm(), 1e-9);
        assertEquals(
                0.2, of(pieces("leaves-mixed", OptionalDouble.of(0.01), false)).pieceCm(), 1e-9);
    }

    /** Two sizes together decay at the mean of their rates, which the smaller rules. */
    @Test
    @DisplayName("of two sizes decays at the mean of their rates")
    void sizes() {
        Matter both = of(
                pieces("chips-hardwood", OptionalDouble.of(1), false),
                pieces("chips-hardwood", OptionalDouble.of(15), false));
        double rate = (1 / (1 + 1 / 5.0) + 1 / (1 + 15 / 5.0)) / 2;
        assertEquals(5 * (1 / rate - 1), both.pieceCm(), 1e-9);
    }

    @Test
    @DisplayName("is sourer with kitchen scraps and less with ash")
    void acid() {
        double leaves = of(kg("leaves-mixed", 100)).acidIndex();
        assertEquals(0.2, leaves, 1e-9);
        assertEquals(0.2 + 0.25, of(kg("kitchen-scraps", 100)).acidIndex(), 1e-9);
        assertTrue(of(kg("kitchen-scraps", 100), kg("wood-ash", 1)).acidIndex() < 0.45);
        assertEquals(0, of(kg("leaves-mixed", 100), kg("wood-ash", 50)).acidIndex());
    }
}
