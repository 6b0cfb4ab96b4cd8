package heapwright.advice.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Known;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.Side;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Strength;
import heapwright.knowledge.Trait;
import heapwright.knowledge.Witness;
import heapwright.pile.Action;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A fact")
class FactsTest {

    /** The steps stand in docs/method/advice.md. */
    @ParameterizedTest
    @CsvSource({
        "0, UNLIKELY, false",
        "0.299, UNLIKELY, false",
        "0.3, POSSIBLE, false",
        "0.599, POSSIBLE, false",
        "0.6, LIKELY, true",
        "0.849, LIKELY, true",
        "0.85, VERY_LIKELY, true",
        "1, VERY_LIKELY, true"
    })
    @DisplayName("of a cause has the word of its likelihood")
    void grade(double likelihood, Grade word, boolean likely) {
        assertEquals(word, Grade.of(likelihood));
        assertEquals(word, Grade.of(word.from()));
        assertEquals(likely, new Concluded(Cause.TOO_DRY, likelihood).likely());
        assertEquals(likely, new Suspected(Cause.TOO_DRY, likelihood).likely());
    }

    @Test
    @DisplayName("of a cause is as sure as another or surer by the order of the words")
    void atLeast() {
        assertTrue(Grade.LIKELY.atLeast(Grade.LIKELY));
        assertTrue(Grade.VERY_LIKELY.atLeast(Grade.POSSIBLE));
        assertFalse(Grade.POSSIBLE.atLeast(Grade.LIKELY));
    }

    private static Reads core(double low, double likely, double high, Reads.Basis basis) {
        return new Reads(Reading.CORE_TEMPERATURE, low, likely, high, basis);
    }

    @Test
    @DisplayName("of a reading is above or below an edge surely by its span, likely by its middle, and on it neither")
    void edges() {
        Reads reads = core(40, 50, 60, Reads.Basis.REPORTED);
        assertTrue(reads.surelyAbove(39.9) && !reads.surelyAbove(40) && !reads.surelyAbove(41));
        assertTrue(reads.surelyBelow(60.1) && !reads.surelyBelow(60) && !reads.surelyBelow(59));
        assertTrue(reads.likelyAbove(49.9) && !reads.likelyAbove(50) && !reads.likelyAbove(51));
        assertTrue(reads.likelyBelow(50.1) && !reads.likelyBelow(50) && !reads.likelyBelow(49));
    }

    @Test
    @DisplayName("of a reading in °F stands on the same edge as in °C: 131 °F is 55 °C")
    void fahrenheit() {
        double celsius = (131 - 32) / 1.8;
        for (double off : new double[] {-1e-9, 0, 1e-9}) {
            Reads reads = core(celsius + off, celsius + off, celsius + off, Reads.Basis.MEASURED);
            assertFalse(
                    reads.surelyAbove(55) || reads.surelyBelow(55) || reads.likelyAbove(55) || reads.likelyBelow(55));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "SURELY_ABOVE, 35, 5",
        "NOT_SURELY_ABOVE, 45, 5",
        "LIKELY_ABOVE, 45, 5",
        "SURELY_BELOW, 65, 5",
        "LIKELY_BELOW, 45, -5",
        "SURELY_ABOVE, 45, -5"
    })
    @DisplayName("of a reading tells how far it is on a side of an edge")
    void within(Side side, double edge, double within) {
        assertEquals(within, core(40, 50, 60, Reads.Basis.REPORTED).within(side, edge));
    }

    @ParameterizedTest
    @EnumSource(Reads.Basis.class)
    @DisplayName("of a reading is measured where it was, and so is where it is placed")
    void placed(Reads.Basis basis) {
        Reads reads = core(40, 50, 60, basis);
        Placed placed = new Placed(reads, Side.LIKELY_ABOVE, new LimitIs(Limit.CORE_ACTIVE, 40), 1);
        assertEquals(basis == Reads.Basis.MEASURED, reads.measured());
        assertEquals(basis == Reads.Basis.MEASURED, placed.measured());
        assertEquals(Reading.CORE_TEMPERATURE, placed.reading());
        assertEquals(Limit.CORE_ACTIVE, placed.limit());
        assertEquals(new Stand(Reading.CORE_TEMPERATURE, Side.LIKELY_ABOVE, Limit.CORE_ACTIVE), placed.stand());
    }

    @Test
    @DisplayName("of a sign counts in full until something was done about it")
    void seen() {
        assertEquals(1, new Seen(Sign.SMELLS_SOUR, 3).degree());
        assertFalse(new Seen(Sign.SMELLS_SOUR, 3).outlived());
        assertEquals(0.1, new Seen(Sign.SMELLS_SOUR, 3, true).degree());
    }

    /** Seven days before what was done four days ago is eleven days ago. */
    @ParameterizedTest
    @CsvSource({"3, false", "4, false", "5, true", "11, true", "12, false"})
    @DisplayName("of work or stuff comes shortly before what came later, and not with it")
    void shortlyBefore(int daysAgo, boolean before) {
        assertEquals(before, new Did(Action.WATERED, daysAgo).shortlyBefore(4, 7));
        assertEquals(before, new WentIn(Trait.GRASS, daysAgo, 0.2).shortlyBefore(4, 7));
    }

    @Test
    @DisplayName("of stuff tells whether it went in lately, whether its amount is known, and its share in percent")
    void wentIn() {
        assertFalse(new WentIn(Trait.GRASS, 0, 0.2).lately(7));
        assertTrue(new WentIn(Trait.GRASS, 7, 0.2).lately(7));
        assertFalse(new WentIn(Trait.GRASS, 8, 0.2).lately(7));
        assertTrue(new WentIn(Trait.GRASS, 1, 0).recorded());
        assertFalse(new WentIn(Trait.GRASS, 1, Double.NaN).recorded());
        assertEquals(20, new WentIn(Trait.GRASS, 1, 0.2).sharePct(), 1e-12);
    }

    private static Planned does(int which) {
        boolean[] d = new boolean[9];
        if (which >= 0) {
            d[which] = true;
        }
        return new Planned(
                Remedy.TURN_FULLY, new RemedyInfo.Does(d[0], d[1], d[2], d[3], d[4], d[5], d[6], d[7], d[8]), false);
    }

    /** In the order of what a remedy does: opens, digs in, turns, wets, feeds, and then what it adds. */
    @Test
    @DisplayName("of a step says what that does, and nothing else")
    void planned() {
        List<Predicate<Planned>> asked = List.of(
                Planned::opens,
                Planned::digsIn,
                p -> p.does().turns(),
                Planned::wets,
                Planned::feeds,
                Planned::addsNitrogen,
                Planned::addsAlkali,
                Planned::addsDryStuff);
        for (int one = -1; one < asked.size(); one++) {
            for (int other = 0; other < asked.size(); other++) {
                assertEquals(one == other, asked.get(other).test(does(one)), one + " asked as " + other);
            }
            assertEquals(one >= 0 && one < 5, does(one).disturbs(), "disturbs: " + one);
        }
    }

    @Test
    @DisplayName("of evidence has the cause and the witness of its row, and its direction")
    void speaks() {
        Speaks supports = new Speaks(row(Evidence.Speaks.FOR));
        Speaks against = new Speaks(row(Evidence.Speaks.AGAINST));
        assertEquals(Cause.TOO_DRY, supports.cause());
        assertEquals(Witness.LOOK, supports.witness());
        assertTrue(supports.supports());
        assertEquals(1, supports.direction());
        assertFalse(against.supports());
        assertEquals(-1, against.direction());
    }

    private static Evidence row(Evidence.Speaks speaks) {
        return new Evidence(
                "WEIGH-1",
                Cause.TOO_DRY,
                speaks,
                Strength.FAIR,
                Witness.LOOK,
                null,
                "It is.",
                "COMMON",
                Known.JUDGEMENT);
    }
}
