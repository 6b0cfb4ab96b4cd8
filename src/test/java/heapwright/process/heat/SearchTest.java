package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The search for a rate and a loss, of runs that are a line: what is found and, since each run costs time, what is tried. A
 * rate wrong by a factor counts like a miss of 4 K times its logarithm: 0.65 K for 0.85, 1.43 for 0.7, 2.77 for 0.5, 4.82 for
 * 0.3 and 6.86 for 0.18; 0.73 K for 1.2, 1.62 for 1.5, 2.77 for 2 and 4.39 for 3.
 */
class SearchTest {

    private final List<Double> rates = new ArrayList<>();
    private final List<Double> losses = new ArrayList<>();

    private Search search(DoubleUnaryOperator missOfRate) {
        return new Search((rate, loss) -> {
            rates.add(rate);
            losses.add(loss);
            return missOfRate.applyAsDouble(rate);
        });
    }

    private static Search.Match match(double rate, double missK) {
        return new Search.Match(rate, 1, missK);
    }

    private static double pull(double rate) {
        return 4 * Math.log(rate);
    }

    @Test
    void whatHitsIsTriedOnceAndNoOtherRate() {
        assertEquals(match(1, 0), search(rate -> 0).rate(1, true));
        assertEquals(match(1, 0), search(rate -> 0).rate(1, false));
        assertEquals(List.of(1.0, 1.0), rates);
    }

    /** 0.65 K at 0.85 and 0.73 K at 1.2 are what the pull alone would cost there. */
    @ParameterizedTest
    @CsvSource({"0.85, true", "0.85, false", "1.2, true"})
    void noOtherIsTriedWhereTheMissIsNoMoreThanThePull(double first, boolean steady) {
        double miss = -pull(first);
        assertEquals(match(1, miss), search(rate -> miss).rate(1, steady));
        assertEquals(List.of(1.0), rates);
    }

    /** A core 3 K too warm that falls by 10 K a unit of rate: 0.85 leaves 1.5 K and costs 1.5² + 0.65², 0.7 leaves none and costs 1.43². */
    @Test
    void fromTheRecipeOutwardsUntilTheOtherSideIsReached() {
        Search.Match found =
                search(rate -> rate == 0.7 ? 0 : 3 + 10 * (rate - 1)).rate(1, true);
        assertEquals(match(0.7, 0), found);
        assertEquals(List.of(1.0, 0.02, 0.85, 0.7), rates);
    }

    /** 9 K too cold: 1.5 leaves 4 K and costs 16 + 1.62², 2 is 1 K too warm and costs 1 + 2.77². */
    @Test
    void fasterWhereItIsTooCold() {
        Search.Match found = search(rate -> -9 + 10 * (rate - 1)).rate(1, true);
        assertEquals(match(2, 1), found);
        assertEquals(List.of(1.0, 3.0, 1.2, 1.5, 2.0), rates);
    }

    @ParameterizedTest
    @CsvSource({"20, 0.02, 0.85", "-20, 3, 1.2"})
    void noneIsTriedBeyondTheReading(double miss, double outermost, double first) {
        Search.Match found = search(rate -> rate == 1 ? miss : -0.95 * miss).rate(1, true);
        assertEquals(match(first, -0.95 * miss), found);
        assertEquals(List.of(1.0, outermost, first), rates, "what goes on only misses by more");
    }

    /** Off by 6 K whatever the rate, and by 5.99 at the outermost: none between gains what its pull costs. */
    @Test
    void noneIsTriedWhereEvenTheOutermostGainsLess() {
        assertEquals(match(1, 6), search(rate -> rate == 0.02 ? 5.99 : 6).rate(1, true));
        assertEquals(List.of(1.0, 0.02), rates);
        rates.clear();
        assertEquals(match(1, -6), search(rate -> rate == 3 ? -5.99 : -6).rate(1, true));
        assertEquals(List.of(1.0, 3.0), rates);
    }

    /** What the outermost misses by, no rate before it can fall below: that and the pull are what one costs at the least. */
    @Test
    void nonePullsFartherThanTheBestSoFarWouldAllow() {
        assertEquals(1, search(rate -> rate == 0.02 ? 2.9 : 3).rate(1, true).rate());
        assertEquals(List.of(1.0, 0.02, 0.85), rates, "0.7 would cost 2.9² + 1.43² at the least, more than 3²");
        rates.clear();
        assertEquals(
                0.7,
                search(rate -> rate == 0.7 ? 1 : rate == 0.02 ? 0.5 : 3)
                        .rate(1, true)
                        .rate());
        assertEquals(List.of(1.0, 0.02, 0.85, 0.7), rates, "0.5 would cost 2.77² alone, 0.7 costs 1 + 1.43²");
    }

    /** Where a faster rate may end colder, both sides are tried, and beyond one that misses on the other side. */
    @Test
    void bothSidesWhereFasterMayBeColder() {
        Search.Match found = search(rate -> rate == 2 ? 0.5 : rate < 1 ? -3 : 5).rate(1, false);
        assertEquals(match(2, 0.5), found);
        assertEquals(List.of(1.0, 0.02, 0.85, 0.7, 0.5, 3.0, 1.2, 1.5, 2.0), rates);
    }

    @Test
    void aRateWhosePullAloneIsTheBestCostIsNotTried() {
        double miss = -pull(0.7);
        assertEquals(match(1, miss), search(rate -> rate < 1 ? 9 : miss).rate(1, false));
        assertEquals(List.of(1.0, 0.02, 0.85, 3.0, 1.2), rates, "0.7 costs as much at the least");
    }

    @Test
    void theOutermostIsNotRunTwice() {
        assertEquals(match(3, -8), search(rate -> rate == 3 ? -8 : -20).rate(1, true));
        assertEquals(List.of(1.0, 3.0, 1.2, 1.5, 2.0), rates);
    }

    @Test
    void theRateIsSoughtWithTheLossThatWasLearned() {
        search(rate -> 3 - rate).rate(0.7, false);
        assertEquals(List.of(0.7), losses.stream().distinct().toList());
    }

    /** Within 8 K the loss stays as it was, and so it does where the run is too warm and the pile is known to be warm. */
    @Test
    void theLossIsLookedAtBeyondEightKelvin() {
        for (double near : new double[] {8, -8, 0}) {
            assertEquals(match(1, near), search(rate -> 0).loss(match(1, near), true));
        }
        assertEquals(match(1, 30), search(rate -> 0).loss(match(1, 30), false));
        assertEquals(List.of(), rates);
        assertEquals(1.3, search(rate -> 0).loss(match(1, 8.001), true).loss());
        assertEquals(0.8, search(rate -> 0).loss(match(1, -8.001), true).loss());
        assertEquals(0.8, search(rate -> 0).loss(match(1, -8.001), false).loss(), "snug it may be though warm");
    }

    /** At most 2.5 times and at least 0.3 times what size and covers say, each with the rate that was found and three more. */
    @Test
    void eachLossIsTriedWithFourRates() {
        search(rate -> 50).loss(new Search.Match(0.5, 2, 20), true);
        assertEquals(List.of(0.5, 0.6, 1.0, 1.6, 0.5, 0.6, 1.0, 1.6, 0.5, 0.6, 1.0, 1.6), rates);
        assertEquals(List.of(2.5), losses.stream().distinct().toList(), "2.6, 3.4 and 5 are too much");
        losses.clear();
        search(rate -> 50).loss(new Search.Match(0.5, 0.4, -20), true);
        assertEquals(0.4 * 0.8, losses.get(0), 1e-12);
        assertEquals(0.3, losses.get(11));
    }

    /**
     * A loss of 1.7 leaves 1 K and one of 2.5 none, and a loss wrong by a factor counts as a rate does: 1² + 2.12² against
     * 3.67². With 1.3 and a rate of 0.6 it hits as well, for 1.05² + 2.04², which is less than either.
     */
    @Test
    void theBestLossIsThatOfTheLeastMissAndPull() {
        Map<Double, Double> missed = Map.of(1.3, 9.0, 1.7, 1.0, 2.5, 0.0);
        Search search = new Search((rate, loss) -> rate == 1 ? missed.get(loss) : 99);
        assertEquals(new Search.Match(1, 1.7, 1), search.loss(match(1, 10), true));
        Search slower = new Search((rate, loss) -> rate == 0.6 ? 0 : rate == 1 ? missed.get(loss) : 99);
        assertEquals(new Search.Match(0.6, 1.3, 0), slower.loss(match(1, 10), true));
        Search dear = new Search((rate, loss) -> rate == 1 ? 6 : 9.9);
        assertEquals(new Search.Match(1, 1.3, 6), dear.loss(match(1, 10), true));
        Search vain = new Search((rate, loss) -> 9.99);
        assertEquals(match(1, 10), vain.loss(match(1, 10), true), "what is won is less than the pull");
    }

    /** What was learned has its pull as well: going back towards 1 is cheaper than it looks. */
    @Test
    void theLossThatWasLearnedIsPulledTo() {
        Search search = new Search((rate, loss) -> rate == 1 ? 10.1 : 99);
        Search.Match learned = new Search.Match(1, 0.4, 10);
        assertEquals(0.4 * 2.5, search.loss(learned, true).loss(), 1e-12, "10.1² against 10² + 3.67²");
    }
}
