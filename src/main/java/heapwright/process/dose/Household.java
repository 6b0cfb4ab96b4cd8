package heapwright.process.dose;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Turns litres into the measures of the house: spoons for little, buckets for more, barrows for much. Halves are counted
 * up to three, quarters where halves are too coarse and more than ten of the next smaller measure would be, whole ones
 * after that, fives above twenty, two digits above two hundred.
 */
public final class Household {

    /** How an amount is rounded to a measure. */
    public enum Rounding {
        /** To the nearest: for bulky materials and water. */
        NEAREST,
        /** Never above: where an upper limit holds. */
        DOWN
    }

    /**
     * So many of a measure.
     *
     * @param measure id of the measure
     * @param count how many, 0.25 or more
     * @param litres what that is in litres
     * @param scant true when the amount asked for is less than the least that can be measured
     */
    public record Measured(String measure, double count, double litres, boolean scant) {}

    /** The rounding may move the amount by this share before a smaller measure is taken instead. */
    private static final double GOOD_ENOUGH = 0.2;

    /** So far it may for part of a measure that else nobody would care to count out. */
    private static final double GOOD_ENOUGH_FOR_A_PART = 0.34;

    /** More of a small measure than anybody counts out. */
    private static final double MANY = 10;

    private static final double QUARTER = 0.25;
    private static final double HALVES_UP_TO = 3;

    private final List<Map.Entry<String, Double>> largestFirst;

    /**
     * @param litresById the measures that may be used for one kind of stuff, id to litres, each above zero
     * @throws IllegalArgumentException when there is none
     */
    public Household(Map<String, Double> litresById) {
        if (litresById.isEmpty() || litresById.values().stream().anyMatch(litres -> !(litres > 0))) {
            throw new IllegalArgumentException(
                    "Household measures need at least one, each above zero litres: " + litresById);
        }
        Comparator<Map.Entry<String, Double>> order =
                Map.Entry.<String, Double>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey());
        this.largestFirst = litresById.entrySet().stream()
                .map(entry -> Map.entry(entry.getKey(), entry.getValue()))
                .sorted(order)
                .toList();
    }

    /** A mass in household measures. */
    public Measured ofKilograms(double kilograms, double densityKgM3, Rounding rounding) {
        return ofLitres(kilograms * 1000 / densityKgM3, rounding);
    }

    /**
     * A volume in household measures: the largest measure that tells it well enough.
     *
     * @throws IllegalArgumentException when the volume is not above zero and finite
     */
    public Measured ofLitres(double litres, Rounding rounding) {
        if (!(litres > 0) || !Double.isFinite(litres)) {
            throw new IllegalArgumentException(
                    "A household amount must be above zero litres, but it is " + litres + ".");
        }
        for (Map.Entry<String, Double> measure : largestFirst) {
            double count = round(litres, measure, rounding);
            if (!tells(litres, measure, count) && quartersServe(litres, measure)) {
                count = inSteps(litres / measure.getValue(), QUARTER, rounding);
            }
            if (tells(litres, measure, count)) {
                return new Measured(measure.getKey(), count, count * measure.getValue(), false);
            }
        }
        return closest(litres, rounding);
    }

    private boolean tells(double litres, Map.Entry<String, Double> measure, double count) {
        return count > 0 && Math.abs(count * measure.getValue() - litres) <= goodEnough(litres, measure) * litres;
    }

    private double goodEnough(double litres, Map.Entry<String, Double> measure) {
        return parted(litres, measure) ? GOOD_ENOUGH_FOR_A_PART : GOOD_ENOUGH;
    }

    /** Whether it is part of a measure, of the next smaller of which there would be more than anybody counts out. */
    private boolean parted(double litres, Map.Entry<String, Double> measure) {
        return litres < measure.getValue() && manyOfTheNext(litres, measure);
    }

    private boolean quartersServe(double litres, Map.Entry<String, Double> measure) {
        return litres < HALVES_UP_TO * measure.getValue() && manyOfTheNext(litres, measure);
    }

    private boolean manyOfTheNext(double litres, Map.Entry<String, Double> measure) {
        int next = largestFirst.indexOf(measure) + 1;
        return next < largestFirst.size()
                && litres > MANY * largestFirst.get(next).getValue();
    }

    /** No measure tells it well: the nearest one that tells it at all, else half of the smallest. */
    private Measured closest(double litres, Rounding rounding) {
        return largestFirst.stream()
                .map(measure -> {
                    double count = round(litres, measure, rounding);
                    return new Measured(measure.getKey(), count, count * measure.getValue(), false);
                })
                .filter(measured -> measured.count() > 0)
                .min(Comparator.comparingDouble(measured -> Math.abs(measured.litres() - litres)))
                .orElseGet(() -> {
                    Map.Entry<String, Double> least = largestFirst.get(largestFirst.size() - 1);
                    return new Measured(least.getKey(), 0.5, least.getValue() / 2, true);
                });
    }

    private double round(double litres, Map.Entry<String, Double> measure, Rounding rounding) {
        double count = litres / measure.getValue();
        double step = parted(litres, measure)
                ? QUARTER
                : count < HALVES_UP_TO
                        ? 0.5
                        : count <= 20 ? 1 : count <= 200 ? 5 : Math.pow(10, Math.floor(Math.log10(count)) - 1);
        return inSteps(count, step, rounding);
    }

    private static double inSteps(double count, double step, Rounding rounding) {
        double steps = count / step;
        return step * (rounding == Rounding.DOWN ? Math.floor(steps + 1e-9) : Math.round(steps));
    }
}
