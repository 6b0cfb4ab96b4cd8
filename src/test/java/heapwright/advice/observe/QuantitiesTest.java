package heapwright.advice.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The quantities of a pile")
class QuantitiesTest {

    private static final String RECIPE = "'recipe': [{'material': 'leaves-mixed', 'amount': 40, 'unit': 'bucket'},"
            + "{'material': 'grass-clippings', 'amount': 20, 'unit': 'bucket'}]";

    @Test
    @DisplayName("are measured rather than worked out from the recipe where something was measured lately")
    void measuredBeatsEstimate() {
        Reads moisture =
                reading(RECIPE + log("2026-11-20", "'moisture': {'value': 68, 'unit': '%'}"), Reading.MOISTURE);
        assertEquals(new Reads(Reading.MOISTURE, 65, 68, 71, Basis.MEASURED), moisture);
    }

    @Test
    @DisplayName("are worked out from the recipe where nothing was measured")
    void estimated() {
        Reads moisture = reading(RECIPE + log("2026-11-20", ""), Reading.MOISTURE);
        assertEquals(Basis.ESTIMATED, moisture.basis());
        assertTrue(moisture.low() < moisture.likely() && moisture.likely() < moisture.high(), moisture.toString());
    }

    @Test
    @DisplayName("forget a moisture older than answers are fresh")
    void oldMoisture() {
        String old = RECIPE + log("2026-10-30", "'moisture': {'value': 68, 'unit': '%'}");
        assertEquals(Basis.ESTIMATED, reading(old, Reading.MOISTURE).basis());
    }

    @Test
    @DisplayName("forget a temperature after a week, but remember the highest for good")
    void temperatures() {
        String log = log("2026-11-13", "'core': {'value': 61, 'unit': 'C'}");
        assertEquals(Optional.empty(), find(log, Reading.CORE_TEMPERATURE));
        assertEquals(61, reading(log, Reading.PEAK_TEMPERATURE).likely());
        assertEquals(
                61,
                reading(log("2026-11-14", "'core': {'value': 61, 'unit': 'C'}"), Reading.CORE_TEMPERATURE)
                        .likely());
    }

    @Test
    @DisplayName("say how far the core is above the air, with the doubt of two thermometers")
    void excess() {
        Reads excess = reading(
                log("2026-11-20", "'core': {'value': 8, 'unit': 'C'}, 'outdoor': {'value': -2, 'unit': 'C'}"),
                Reading.CORE_EXCESS);
        assertEquals(new Reads(Reading.CORE_EXCESS, 8, 10, 12, Basis.MEASURED), excess);
    }

    @Test
    @DisplayName("take the mean of the month where the air was not measured")
    void monthlyMean() {
        String place = "'place': {'monthlyMeanC': [-5, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3]}";
        assertEquals(1, reading(place, Reading.OUTDOOR_TEMPERATURE).likely());
    }

    @Test
    @DisplayName("count days from the day it was built and from the last full turn")
    void days() {
        String log =
                "'log': [{'date': '2026-11-01', 'done': ['turned-fully']}, {'date': '2026-11-11', 'done': ['loosened']}]";
        assertEquals(42, reading(log, Reading.AGE).likely());
        assertEquals(20, reading(log, Reading.DAYS_SINCE_TURN).likely());
        assertEquals(42, reading("'name': 'Heap'", Reading.DAYS_SINCE_TURN).likely());
    }

    @Test
    @DisplayName("know the volume from the floor of the bin and the height of today")
    void volume() {
        String bin = "'container': {'kind': 'slatted-bin', 'length': {'value': 1.2, 'unit': 'm'},"
                + "'width': {'value': 1, 'unit': 'm'}, 'height': {'value': 1.5, 'unit': 'm'}}";
        assertEquals(1.8, reading(bin, Reading.VOLUME).likely(), 1e-9);
        String sunk = bin + log("2026-11-20", "'height': {'value': 0.5, 'unit': 'm'}");
        assertEquals(0.6, reading(sunk, Reading.VOLUME).likely(), 1e-9);
    }

    @Test
    @DisplayName("are at most one of each kind")
    void oneOfEach() {
        List<Reads> all = quantities(TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21'," + RECIPE
                        + log(
                                "2026-11-20",
                                "'moisture': {'value': 68, 'unit': '%'}, 'height': {'value': 1, 'unit': 'm'}")))
                .readings();
        assertEquals(all.size(), all.stream().map(Reads::reading).distinct().count());
    }

    @Test
    @DisplayName("measure against the table's limits, or the person's own")
    void limits() {
        Quantities own = quantities(TestPile.of("'built': '2026-10-10', 'limits': {'moisture-good-high': 58}"));
        assertEquals(58, own.limit(Limit.MOISTURE_GOOD_HIGH));
        assertEquals(
                TestPile.KNOWLEDGE.limits().get(Limit.MOISTURE_GOOD_LOW).value(), own.limit(Limit.MOISTURE_GOOD_LOW));
        assertEquals(Limit.values().length, own.limits().size());
    }

    private static String log(String date, String measured) {
        return ", 'log': [{'date': '" + date + "', 'measured': {" + measured + "}}]";
    }

    private static Reads reading(String fields, Reading which) {
        return find(fields, which).orElseThrow(() -> new AssertionError("no " + which));
    }

    private static Optional<Reads> find(String fields, Reading which) {
        String given = fields.startsWith(",") ? fields.substring(1) : fields;
        Pile pile = TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', " + given);
        return quantities(pile).readings().stream()
                .filter(r -> r.reading() == which)
                .findFirst();
    }

    private static Quantities quantities(Pile pile) {
        Materials materials = Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials());
        return new Quantities(pile, TestPile.KNOWLEDGE, PileMixture.of(pile, materials, new MixtureCalculator()));
    }
}
