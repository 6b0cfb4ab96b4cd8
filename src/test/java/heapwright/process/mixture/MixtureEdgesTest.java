package heapwright.process.mixture;

import static heapwright.process.mixture.TestMaterials.CHIPS;
import static heapwright.process.mixture.TestMaterials.GRASS;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.STRAW;
import static heapwright.process.mixture.TestMaterials.TWIGS;
import static heapwright.process.mixture.TestMaterials.UREA;
import static heapwright.process.mixture.TestMaterials.f;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Material;
import heapwright.pile.Amount;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of mixtures that can be reckoned by hand, and what is refused. */
class MixtureEdgesTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final MixtureCalculator CALCULATOR = new MixtureCalculator(64);

    private static void close(Band expected, Band band) {
        assertEquals(expected.low(), band.low(), 1e-9, "low");
        assertEquals(expected.likely(), band.likely(), 1e-9, "likely");
        assertEquals(expected.high(), band.high(), 1e-9, "high");
    }

    private static Material with(Material like, Optional<Figure> ash, Optional<Figure> lignin) {
        return new Material(
                like.id(),
                like.name(),
                like.group(),
                List.of(),
                like.carbonToNitrogen(),
                like.carbonPct(),
                like.nitrogenPct(),
                false,
                like.moisturePct(),
                like.densityKgM3(),
                ash,
                lignin,
                like.saltPct(),
                like.traits(),
                List.of(),
                Optional.empty(),
                "");
    }

    @Test
    void bandsAddUpAndAreHeldEndByEnd() {
        Band band = new Band(1, 2, 4);
        assertEquals(new Band(11, 22, 44), band.plus(new Band(10, 20, 40)));
        assertEquals(new Band(1, 2, 3), band.atMost(3));
        assertEquals(new Band(1, 1.5, 1.5), band.atMost(1.5));
        assertEquals(new Band(1.5, 2, 4), band.atLeast(1.5));
        assertEquals(new Band(3, 3, 4), band.atLeast(3));
        assertFalse(band.isExact());
        assertTrue(Band.exact(2).isExact());
    }

    @ParameterizedTest
    @CsvSource({"-0.1,40,1", "100.1,40,1", "50,-1,1", "50,40,-0.1", "50,40,100.1", "NaN,40,1", "50,NaN,1", "50,40,NaN"})
    void aCompositionOutsideItsRangeIsRefused(double moisture, double carbon, double nitrogen) {
        assertThrows(IllegalArgumentException.class, () -> new Composition(moisture, carbon, nitrogen));
    }

    /** Nothing but water, nothing but nitrogen, and the carbon above 100 % that some published pairs imply. */
    @Test
    void theEndsOfACompositionAreAllowed() {
        assertEquals(0, new Composition(100, 0, 0).dry());
        assertEquals(1, new Composition(0, 0, 100).nitrogen());
        assertEquals(1.2, new Composition(0, 120, 0).carbon(), 1e-12);
    }

    @Test
    void whatCannotBeMeasuredIsRefused() {
        for (double moisture : new double[] {-0.1, 100, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> new Observed(OptionalDouble.of(moisture), NONE, NONE));
        }
        for (double size : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new Observed(NONE, OptionalDouble.of(size), NONE));
            assertThrows(IllegalArgumentException.class, () -> new Observed(NONE, NONE, OptionalDouble.of(size)));
        }
        assertEquals(
                0, new Observed(OptionalDouble.of(0), NONE, NONE).moisturePct().orElseThrow());
        assertEquals(
                99.9,
                new Observed(OptionalDouble.of(99.9), NONE, NONE).moisturePct().orElseThrow());
    }

    /** B = 0.83 − 0.028 × lignin below, all outside the lignin above, halfway as likely. */
    @Test
    void ligninHoldsDecayBack() {
        close(
                new Band(0.27, (0.41 + 0.83) / 2, 0.83),
                Degradability.of(with(STRAW, Optional.empty(), Optional.of(f(10, 15, 20)))));
        close(
                new Band(0, (0.13 + 0.75) / 2, 0.80),
                Degradability.of(with(STRAW, Optional.empty(), Optional.of(f(20, 25, 30)))));
    }

    /** Measured values (HAUG93 after CHAND80, from memory): straw 0.55, corn stalks 0.77. */
    @Test
    void withoutLigninTheKindDecides() {
        assertTrue(
                Degradability.of(STRAW).low() <= 0.55 && Degradability.of(STRAW).high() >= 0.77);
        assertTrue(Degradability.of(LEAVES).high() < Degradability.of(STRAW).high(), "leaves hold more lignin");
        assertTrue(Degradability.of(CHIPS).high() < Degradability.of(LEAVES).likely());
        assertTrue(Degradability.of(GRASS).likely() > Degradability.of(STRAW).likely());
    }

    /** The inverse of the triangular distribution, at points that come out even. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 1, 2, 0",
        "0.125, 0, 1, 2, 0.5",
        "0.5, 0, 1, 2, 1",
        "0.875, 0, 1, 2, 1.5",
        "1, 0, 1, 2, 2",
        "0.0625, 10, 11, 14, 10.5",
        "0.25, 10, 11, 14, 11",
        "0.9166666666666667, 10, 11, 14, 13",
        "0.3, 7, 7, 7, 7",
        "0.5, 3, 3, 7, 4.171572875253810",
        "0.5, 3, 7, 7, 5.828427124746190"
    })
    void drawsFollowATriangle(double u, double low, double mode, double high, double value) {
        assertEquals(value, Draw.triangular(u, low, mode, high), 1e-12);
    }

    private static Material plain(String id, double ratio, double density) {
        return TestMaterials.material(
                id,
                Material.Group.MEAL,
                f(ratio, ratio, ratio),
                f(50, 50, 50),
                f(0, 0, 0),
                f(density, density, density));
    }

    /** By volume (20 + 60) / 2 = 40; by weight (100 × 20 + 102 × 60) / 202 = 40.2; by the balance 30.1. */
    @ParameterizedTest
    @CsvSource({"40,BY_VOLUME", "40.05,BY_VOLUME", "40.15,BY_WET_WEIGHT", "40.25,BY_WET_WEIGHT", "39.45,BY_VOLUME"})
    void ofTwoLikelyShortcutsTheNearerIsNamed(double own, Averaging.Shortcut shortcut) {
        Averaging found = Averaging.explain(own, alike()).orElseThrow();
        assertEquals(shortcut, found.shortcut());
        assertEquals(101 / (100 * 0.025 + 102 * 0.5 / 60), found.balanced(), 1e-9);
    }

    private static List<Portion> alike() {
        return List.of(Portion.ofLitres(plain("rich", 20, 100), 1000), Portion.ofLitres(plain("poor", 60, 102), 1000));
    }

    @Test
    void aFigureThatNoShortcutGivesIsLeftAlone() {
        assertEquals(Optional.empty(), Averaging.explain(41.1, alike()));
        assertEquals(Optional.empty(), Averaging.explain(39.1, alike()));
        assertEquals(Optional.empty(), Averaging.explain(30, alike()), "that is the balance");
    }

    /** Large ratios are rounded more coarsely: two in a hundred count as the same. */
    @Test
    void aLargeRatioMayBeOffByTwoInAHundred() {
        List<Portion> portions = List.of(
                Portion.ofLitres(plain("rich", 40, 100), 1000), Portion.ofLitres(plain("poor", 160, 300), 1000));
        assertEquals(
                Averaging.Shortcut.BY_VOLUME,
                Averaging.explain(98.1, portions).orElseThrow().shortcut());
        assertEquals(Optional.empty(), Averaging.explain(97.9, portions));
    }

    /** 115 kg fill a cubic metre by hand, at (80 + 150) / 2; they settle to 115 / 210 at (150 + 270) / 2. */
    @Test
    void oneMaterialLiesAsItSettlesAndAMixFillsItsGaps() {
        Mixture weighed = CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 115)));
        assertEquals(1, weighed.looseM3().likely(), 1e-9);
        assertEquals(115.0 / 210, weighed.settledM3().likely(), 1e-9);
        Mixture measured = CALCULATOR.mix(List.of(Portion.ofLitres(LEAVES, 500), Portion.ofLitres(LEAVES, 500)));
        assertEquals(115, measured.masses().wet().likely(), 1e-9);
        assertEquals(115.0 / 210, measured.settledM3().likely(), 1e-9, "twice the same is no mix");
        Mixture mix = CALCULATOR.mix(List.of(Portion.ofLitres(LEAVES, 1000), Portion.ofKilograms(GRASS, 35.6)));
        assertEquals(0.9 * (115.0 / 210 + 0.1), mix.settledM3().likely(), 1e-9, "a tenth goes into the gaps");
    }

    @Test
    void everyMassOfAMixIsTheSumOfItsParts() {
        Masses one = CALCULATOR.mix(List.of(Portion.ofKilograms(CHIPS, 100))).masses();
        Masses other = CALCULATOR.mix(List.of(Portion.ofKilograms(GRASS, 50))).masses();
        Masses both = CALCULATOR
                .mix(List.of(Portion.ofKilograms(CHIPS, 100), Portion.ofKilograms(GRASS, 50)))
                .masses();
        assertEquals(one.wet().likely() + other.wet().likely(), both.wet().likely(), 1e-9);
        assertEquals(one.dry().likely() + other.dry().likely(), both.dry().likely(), 1e-9);
        assertEquals(one.water().likely() + other.water().likely(), both.water().likely(), 1e-9);
        assertEquals(
                one.carbon().likely() + other.carbon().likely(), both.carbon().likely(), 1e-9);
        assertEquals(
                one.reachableCarbon().likely() + other.reachableCarbon().likely(),
                both.reachableCarbon().likely(),
                1e-9);
        assertEquals(
                one.nitrogen().likely() + other.nitrogen().likely(),
                both.nitrogen().likely(),
                1e-9);
        assertEquals(
                one.volatileSolids().likely() + other.volatileSolids().likely(),
                both.volatileSolids().likely(),
                1e-9);
        assertEquals(one.ash().likely() + other.ash().likely(), both.ash().likely(), 1e-9);
        assertEquals(
                both.dry().likely(), both.ash().likely() + both.volatileSolids().likely(), 1e-9);
        assertEquals(65 * 0.504 * 0.30, one.reachableCarbon().likely(), 1e-9, "of wood only what decays in a season");
        assertEquals(other.carbon(), other.reachableCarbon());
    }

    @Test
    void aKnownAshGoesBeforeTheOneFromCarbon() {
        Material leaves = with(LEAVES, Optional.of(f(20, 20, 20)), Optional.empty());
        Masses masses =
                CALCULATOR.mix(List.of(Portion.ofKilograms(leaves, 100))).masses();
        assertEquals(0.2 * 62, masses.ash().likely(), 1e-9);
        assertEquals(0.8 * 62, masses.volatileSolids().likely(), 1e-9);
    }

    /** Wet mass follows a measured moisture, and volume a measured density, or is itself measured. */
    @Test
    void whatWasMeasuredReplacesTheEstimate() {
        List<Portion> leaves = List.of(Portion.ofKilograms(LEAVES, 100));
        Mixture wet = CALCULATOR.mix(
                leaves, new Observed(OptionalDouble.of(75), OptionalDouble.of(400), OptionalDouble.empty()));
        assertEquals(62 / 0.25, wet.masses().wet().likely(), 1e-9);
        assertEquals(62 / 0.25 / 400, wet.settledM3().likely(), 1e-9);
        Mixture sized = CALCULATOR.mix(leaves, new Observed(NONE, NONE, OptionalDouble.of(0.4)));
        assertEquals(0.4, sized.settledM3().likely(), 1e-9);
        assertEquals(250, sized.densityKgM3().likely(), 1e-9);
        assertEquals(Basis.REPORTED, sized.volumeBasis());
    }

    @Test
    void whatHasNoCarbonBringsItsNitrogen() {
        Mixture mix = CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 100), Portion.ofKilograms(UREA, 1)));
        double carbon = 62 * 0.486;
        assertEquals(carbon / (carbon / 54 + 0.46), mix.carbonToNitrogen().likely(), 1e-9);
    }

    @Test
    void withoutCarbonOrNitrogenTheRatioIsStillAFigure() {
        assertEquals(0, MixtureCalculator.ratio(0, 0));
        assertEquals(0, MixtureCalculator.ratio(0, 1));
        assertEquals(MixtureCalculator.NO_NITROGEN, MixtureCalculator.ratio(1, 0));
        assertEquals(MixtureCalculator.NO_NITROGEN, MixtureCalculator.ratio(1, 1e-9));
        assertEquals(25, MixtureCalculator.ratio(50, 2));
        assertThrows(IllegalArgumentException.class, () -> CALCULATOR.mix(List.of()));
        assertThrows(IllegalArgumentException.class, () -> CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 0))));
    }

    /** Pieces of more than 5 cm hold spaces open (SASK08), unless they were chopped; else the kind tells. */
    @ParameterizedTest
    @CsvSource({
        "straw-general,5,false,false",
        "straw-general,5.1,false,true",
        "straw-general,5.1,true,false",
        "twigs,2,false,false",
        "twigs,,false,true",
        "twigs,,true,true",
        "straw-general,,false,false"
    })
    void coarseIsWhatIsLongAndWhole(String id, Double pieceCm, boolean chopped, boolean coarse) {
        Material material = Map.of(STRAW.id(), STRAW, TWIGS.id(), TWIGS).get(id);
        Portion portion = new Portion(
                material, Amount.ofMass(10, "kg", 10), pieceCm == null ? NONE : OptionalDouble.of(pieceCm), chopped);
        assertEquals(
                coarse, CALCULATOR.mix(List.of(portion)).contributions().get(0).coarse());
    }

    @Test
    void anUnknownMaterialIsNamed() {
        IllegalArgumentException error = assertThrows(
                IllegalArgumentException.class,
                () -> Materials.of(TestMaterials.all()).get("moon-dust"));
        assertTrue(error.getMessage().contains("moon-dust"));
        assertEquals(
                Set.of("urea"),
                Set.of(Materials.of(TestMaterials.all()).get("urea").id()));
    }
}
