package heapwright.process.mixture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of the sources; each tolerance is what the printed rounding allows. */
class PublishedMixtureTest {

    private static final Composition GRASS = new Composition(77, 45, 2.4);
    private static final Composition LEAVES = new Composition(35, 50, 0.75);

    @Test
    @DisplayName("E1 CORNM, quoted: 10 g of wet sample dry to 2.3 g are 77 % moist")
    void ovenMoisture() {
        assertEquals(77, Equations.moisturePct(10, 6.3 - 4), 0.5);
    }

    @Test
    @DisplayName("E2 CORNM, quoted: 10 kg of grass to 60 % moisture take 6.8 kg of leaves")
    void leavesForMoisture() {
        assertEquals(6.8, Equations.secondForMoisture(10, 77, 35, 60), 0.05);
    }

    @Test
    @DisplayName("E3 CORNCN, from memory: 10 kg of grass to C:N 30 take 3.5 kg of leaves, and the two goals conflict")
    void leavesForRatio() {
        double leaves = Equations.secondForCarbonToNitrogen(10, GRASS, LEAVES, 30);
        assertEquals(3.5, leaves, 0.05);
        assertEquals(3.474, leaves, 0.001);
        assertEquals(66.1, Equations.mixMoisturePct(new double[] {10, 3.5}, GRASS, LEAVES), 0.05);
        double forMoisture = Equations.secondForMoisture(10, 77, 35, 60);
        assertEquals(36.7, Equations.mixCarbonToNitrogen(new double[] {10, forMoisture}, GRASS, LEAVES), 0.1);
    }

    @Test
    @DisplayName("E4 BC98 and ALB05, published inputs: sawdust for breeder manure; the pair itself is impossible")
    void sawdustForBreederManure() {
        Composition manure = Composition.ofRatio(46, 10, 3.60);
        Composition sawdust = Composition.ofRatio(42, 475, 0.43);
        double kg = Equations.secondForCarbonToNitrogen(1, manure, sawdust, 30);
        assertEquals(0.350, kg, 0.001);
        double mix = Equations.mixMoisturePct(new double[] {1, kg}, manure, sawdust);
        assertEquals(45.0, mix, 0.05);
        assertEquals(0.136, Equations.waterToReach(1 + kg, mix, 50), 0.001);
        assertEquals(0.508, Equations.waterToReach(1 + kg, mix, 60), 0.001);
        assertEquals(204, CarbonCheck.of(475, 0.43).carbonPct(), 0.5);
        Composition possible = Composition.ofRatio(42, 475, 0.105);
        assertEquals(1.43, Equations.secondForCarbonToNitrogen(1, manure, possible, 30), 0.005);
    }

    @Test
    @DisplayName("E5 LEAFLET, published: figures as-is, 50 lb of hay with scraps and coffee have C:N 34.7")
    void asIsFigures() {
        Composition hay = Composition.ofAsIs(10, 40, 1);
        Composition scraps = Composition.ofAsIs(69, 10, 1);
        Composition coffee = Composition.ofAsIs(60, 25, 1);
        double[] pounds = {50, 10, 2};
        assertEquals(34.7, Equations.mixCarbonToNitrogen(pounds, hay, scraps, coffee), 0.05);
        assertEquals(21.5, 50 * hay.carbon() + 10 * scraps.carbon() + 2 * coffee.carbon(), 1e-9);
        assertEquals(0.62, 50 * hay.nitrogen() + 10 * scraps.nitrogen() + 2 * coffee.nitrogen(), 1e-9);
    }

    @ParameterizedTest
    @DisplayName("E6 EAWAG, published, and E10 spreader note, derived: density from a bucket")
    @CsvSource({"1, 10, 20, 0.45, 0", "2.5, 37.5, 0.67, 52.2, 0.1"})
    void bucketDensity(double empty, double full, double volume, double density, double tolerance) {
        assertEquals(density, Equations.bucketDensity(empty, full, volume), tolerance + 1e-12);
    }

    @Test
    @DisplayName("E7 CORNMICRO, published: 4.3 g wet for 2.8 g dry, so 7.7 g for 5 g dry")
    void wetForDry() {
        assertEquals(1.54, 4.3 / 2.8, 0.01);
        assertEquals(7.7, Equations.wetForDry(5, Equations.moisturePct(4.3, 2.8)), 0.05);
    }

    @Test
    @DisplayName("E8 VICMW, published: 101 g to 85 g in the microwave are 16 %")
    void microwave() {
        assertEquals(16, Equations.moisturePct(101, 85), 0.5);
    }

    @Test
    @DisplayName("E9 technical note, published: 50 % of dry mass are 33 % of wet mass")
    void dryBasis() {
        assertEquals(33, Equations.wetBasisPct(50), 0.5);
    }

    @Test
    @DisplayName("E11 RYNK92, from memory: sawdust for layer manure, for regression only")
    void sawdustForLayerManure() {
        Composition manure = Composition.ofRatio(69, 6, 8.0);
        Composition sawdust = Composition.ofRatio(39, 442, 0.24);
        double for25 = Equations.secondForCarbonToNitrogen(1, manure, sawdust, 25);
        double for30 = Equations.secondForCarbonToNitrogen(1, manure, sawdust, 30);
        assertEquals(0.772, for25, 0.001);
        assertEquals(0.987, for30, 0.001);
        assertEquals(55.9, Equations.mixMoisturePct(new double[] {1, for25}, manure, sawdust), 0.05);
        assertEquals(54.1, Equations.mixMoisturePct(new double[] {1, for30}, manure, sawdust), 0.05);
        Composition possible = Composition.ofRatio(39, 442, 0.113);
        double more = Equations.secondForCarbonToNitrogen(1, manure, possible, 30);
        assertEquals(2.10, more, 0.02);
        assertEquals(48.7, Equations.mixMoisturePct(new double[] {1, more}, manure, possible), 0.05);
    }

    @Test
    @DisplayName("E12 derived: grass, leaves and chips cannot meet 60 % and C:N 30 together")
    void threeMaterials() {
        Composition chips = new Composition(40, 54, 0.09);
        double[] kg = Equations.twoForBoth(10, GRASS, LEAVES, chips, 60, 30);
        assertArrayEquals(new double[] {9.69, -3.61}, kg, 0.01);
        assertThrows(IllegalArgumentException.class, () -> Equations.twoForBoth(10, GRASS, LEAVES, LEAVES, 60, 30));
    }

    @ParameterizedTest
    @DisplayName("E13 TCHO93, from memory: degradable fraction from lignin")
    @CsvSource({"21.9, 0.22", "12.9, 0.47", "4.1, 0.72", "0.4, 0.82", "90, 0", "0, 0.83"})
    void lignin(double ligninPct, double fraction) {
        assertEquals(fraction, Equations.degradableFraction(ligninPct), 0.005);
    }

    @ParameterizedTest
    @DisplayName("E14 CORNLIG, from memory: total and available C:N")
    @CsvSource({
        "39.3, 0.34, 18.4, 115.8, 54.4", "51.1, 0.58, 34.4, 88.7, 58.8",
        "43.3, 4.51, 41.8, 9.6, 9.3", "49.7, 0.97, 43.8, 51.2, 44.2"
    })
    void availableCarbon(double carbon, double nitrogen, double available, double total, double corrected) {
        assertEquals(total, MixtureCalculator.ratio(carbon, nitrogen), 1.0);
        assertEquals(corrected, MixtureCalculator.ratio(available, nitrogen), 1.0);
    }

    @Test
    @DisplayName("E15 derived from CORNC: ash 10 % leaves 50 % carbon")
    void carbonFromAsh() {
        assertEquals(50.0, Equations.carbonFromAshPct(10), 0.1);
        assertEquals(10, Equations.ashFromCarbonPct(50), 0.1);
    }

    @ParameterizedTest
    @DisplayName("E16 ARS, published: nitrogen is 40 % carbon over C:N")
    @CsvSource({
        "15, 2.7, 0.05",
        "20, 2.0, 0.05",
        "80, 0.5, 0.05",
        "150, 0.3, 0.05",
        "100, 0.4, 0.05",
        "500, 0.08, 0.005"
    })
    void nitrogenFromRatio(double ratio, double nitrogen, double tolerance) {
        assertEquals(nitrogen, 40 / ratio, tolerance);
        assertEquals(40, CarbonCheck.of(ratio, 40 / ratio).carbonPct(), 1e-9);
    }

    @Test
    @DisplayName("Equation 11 NEH651 and NEH637, from memory: the handbook form gives the same as the mass balance")
    void handbookForm() {
        assertEquals(Equations.secondForMoisture(10, 77, 35, 60), Equations.handbookForMoisture(10, 77, 35, 60), 1e-9);
        double nitrogen = 10 * GRASS.nitrogen();
        assertEquals(
                Equations.secondForCarbonToNitrogen(10, GRASS, LEAVES, 30),
                Equations.handbookForCarbonToNitrogen(nitrogen, 45 / 2.4, LEAVES, 50 / 0.75, 30),
                1e-9);
    }

    @Test
    @DisplayName("Air space, derived: 600 kg/m³ at 40 % dry and 85 % organic gives 0.498, 0.46 and 0.422")
    void airSpace() {
        assertEquals(0.498, FreeAirSpace.richard(600, 0.40, 0.85), 0.001);
        assertEquals(0.46, FreeAirSpace.agnew(600), 0.001);
        assertEquals(0.422, FreeAirSpace.haug(600, 0.40, 0.85), 0.001);
        Band band = FreeAirSpace.band(600, 0.40, 0.85);
        assertEquals(0.46, band.likely(), 0.001);
        assertTrue(band.low() < 0.423 && band.high() > 0.497);
    }
}
