package heapwright.advice.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Sign;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the hand says of the moisture")
class SqueezeTest {

    private static final Reads RECIPE = new Reads(Reading.MOISTURE, 50, 60, 70, Basis.ESTIMATED);
    private static final Reads DRIED = new Reads(Reading.MOISTURE, 65, 68, 71, Basis.MEASURED);
    private static final Reads HEIGHT = new Reads(Reading.HEIGHT, 1, 1, 1, Basis.REPORTED);

    private final Squeeze squeeze = new Squeeze(TestPile.KNOWLEDGE);

    @Test
    @DisplayName("beats an estimate from the recipe and leaves other readings alone")
    void beatsEstimate() {
        Figure drops = moisture(Sign.SQUEEZE_DROPS);
        List<Reads> told = squeeze.applied(List.of(RECIPE, HEIGHT), List.of(new Seen(Sign.SQUEEZE_DROPS, 0)));
        assertEquals(
                List.of(
                        new Reads(Reading.MOISTURE, drops.low(), drops.typical(), drops.high(), Basis.REPORTED),
                        HEIGHT),
                told);
    }

    @Test
    @DisplayName("stands where there is no estimate")
    void standsAlone() {
        assertEquals(
                Basis.REPORTED,
                squeeze.applied(List.of(), List.of(new Seen(Sign.SOGGY, 0)))
                        .get(0)
                        .basis());
    }

    @Test
    @DisplayName("is beaten by a dried sample")
    void beatenByDrying() {
        assertEquals(List.of(DRIED), squeeze.applied(List.of(DRIED), List.of(new Seen(Sign.SQUEEZE_CRUMBLES, 0))));
    }

    @Test
    @DisplayName("is nothing when the hand was not asked or said no")
    void saysNothing() {
        List<Object> no = List.of(new Denied(Sign.SQUEEZE_DROPS, 0), new Seen(Sign.SMELLS_SOUR, 0));
        assertEquals(List.of(RECIPE), squeeze.applied(List.of(RECIPE), no));
    }

    @Test
    @DisplayName("is the overlap of two answers that fit together")
    void overlap() {
        Figure streams = moisture(Sign.SQUEEZE_STREAMS);
        Figure soggy = moisture(Sign.SOGGY);
        Reads told = both(Sign.SQUEEZE_STREAMS, Sign.SOGGY);
        assertEquals(Math.max(streams.low(), soggy.low()), told.low());
        assertEquals(Math.min(streams.high(), soggy.high()), told.high());
    }

    @Test
    @DisplayName("is the whole span of two answers that do not")
    void span() {
        Reads told = both(Sign.SQUEEZE_STREAMS, Sign.SQUEEZE_CRUMBLES);
        assertEquals(moisture(Sign.SQUEEZE_CRUMBLES).low(), told.low());
        assertEquals(moisture(Sign.SQUEEZE_STREAMS).high(), told.high());
    }

    @Test
    @DisplayName("does not depend on which of two answers came first")
    void orderFree() {
        assertEquals(both(Sign.SQUEEZE_STREAMS, Sign.SOGGY), both(Sign.SOGGY, Sign.SQUEEZE_STREAMS));
    }

    private Reads both(Sign one, Sign other) {
        return squeeze.applied(List.of(RECIPE), List.of(new Seen(one, 0), new Seen(other, 0)))
                .get(0);
    }

    private static Figure moisture(Sign sign) {
        return TestPile.KNOWLEDGE.signs().get(sign).moisturePct().orElseThrow();
    }
}
