package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Placed;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Side;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The edge of a limit")
class EdgesTest {

    private static final double TINY = 1e-12;

    @Test
    @DisplayName("lets evidence grow evenly over its width, with half of it at the limit")
    void degrees() {
        assertEquals(0, Edges.degree(-2, 4), TINY);
        assertEquals(0.25, Edges.degree(-1, 4), TINY);
        assertEquals(0.5, Edges.degree(0, 4), TINY);
        assertEquals(0.75, Edges.degree(1, 4), TINY);
        assertEquals(1, Edges.degree(2, 4), TINY);
        assertEquals(1, Edges.degree(50, 4), TINY);
        assertEquals(0, Edges.degree(-50, 4), TINY);
    }

    @Test
    @DisplayName("is sharp where days are counted, and a figure at it is not beyond it")
    void sharp() {
        assertEquals(0, Edges.degree(0, 0));
        assertEquals(0, Edges.degree(1e-12, 0));
        assertEquals(1, Edges.degree(1, 0));
        assertFalse(Edges.rather(0.5));
        assertFalse(Edges.rather(0.5 + 1e-12));
        assertTrue(Edges.rather(0.51));
    }

    @Test
    @DisplayName("is asked at the end of the range for sure and at the best figure for likely")
    void sides() {
        // Moisture 64 to 70 %, likely 67 %, at a limit of 65 % with an edge four points wide.
        Map<Side, Double> told = Edges.of(List.of(
                        new Reads(Reading.MOISTURE, 64, 67, 70, Basis.MEASURED),
                        new LimitIs(Limit.MOISTURE_OK_HIGH, 65)))
                .stream()
                .collect(Collectors.toMap(Placed::side, Placed::degree));
        assertEquals(Map.of(Side.SURELY_ABOVE, 0.25, Side.NOT_SURELY_ABOVE, 0.75, Side.LIKELY_ABOVE, 1.0), told);
    }

    @Test
    @DisplayName("is a share of the limit where tables differ by a share: 4 wide at a C:N of 40")
    void share() {
        Map<Side, Double> told = Edges.of(List.of(
                        new Reads(Reading.CARBON_TO_NITROGEN, 41, 41, 41, Basis.ESTIMATED),
                        new LimitIs(Limit.CN_SLOW, 40)))
                .stream()
                .filter(p -> p.side() == Side.SURELY_ABOVE)
                .collect(Collectors.toMap(Placed::side, Placed::degree));
        assertEquals(0.75, told.get(Side.SURELY_ABOVE), TINY);
    }

    @Test
    @DisplayName("is asked only of the quantity that the limit is for")
    void ownQuantity() {
        assertEquals(
                List.of(Reading.MOISTURE),
                Edges.of(List.of(
                                new Reads(Reading.MOISTURE, 80, 80, 80, Basis.MEASURED),
                                new Reads(Reading.PH, 80, 80, 80, Basis.MEASURED),
                                new LimitIs(Limit.MOISTURE_OK_HIGH, 65)))
                        .stream()
                        .map(Placed::reading)
                        .distinct()
                        .toList());
    }

    @Test
    @DisplayName("follows the person's own figure")
    void own() {
        Reads reads = new Reads(Reading.MOISTURE, 64, 67, 70, Basis.MEASURED);
        assertEquals(
                List.of(Side.SURELY_ABOVE, Side.LIKELY_ABOVE),
                Edges.of(List.of(new LimitIs(Limit.MOISTURE_OK_HIGH, 60), reads)).stream()
                        .map(Placed::side)
                        .toList());
    }

    @Test
    @DisplayName("is no soft one where it is a gate of danger")
    void gates() {
        assertTrue(Edges.known(Reading.CORE_TEMPERATURE, Limit.CORE_OVERHEATED));
        assertFalse(Edges.known(Reading.CORE_TEMPERATURE, Limit.CORE_FIRE_WATCH));
        assertFalse(Edges.known(Reading.CORE_TEMPERATURE, Limit.CORE_FIRE_ACT));
    }
}
