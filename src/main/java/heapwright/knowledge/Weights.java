package heapwright.knowledge;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;

/**
 * What the words of strength weigh, in decibans: ten decibans multiply the odds by ten (I. J. Good, Probability and the
 * Weighing of Evidence, 1950; from memory). Read from {@code weights.json}, where they were put by a fit to cases written
 * from sources.
 *
 * @param decibans the weight of each strength, above 0 and rising from slight to decisive
 * @param again the part of its weight, 0 to 1, that a piece keeps when a stronger one of the same witness is there; its
 *     square for the third, and so on
 */
public record Weights(Map<Strength, Double> decibans, double again) {

    /** @throws IllegalArgumentException when a strength is missing, they do not rise, or the part is no part */
    public Weights {
        decibans = new EnumMap<>(decibans);
        double last = 0;
        for (Strength strength : Strength.values()) {
            Double weight = decibans.get(strength);
            if (weight == null || !(weight > last) || weight.isInfinite()) {
                throw new IllegalArgumentException(strength.id() + " weighs " + weight + ", allowed are figures above "
                        + last + ", since the strengths rise");
            }
            last = weight;
        }
        if (!(again >= 0 && again < 1)) {
            throw new IllegalArgumentException("again is " + again + ", allowed is 0 up to below 1");
        }
    }

    @Override
    public Map<Strength, Double> decibans() {
        return new EnumMap<>(decibans);
    }

    /** The weight of a strength in decibans. */
    public double of(Strength strength) {
        return decibans.get(strength);
    }

    /** What pieces of one witness for one side weigh together, in decibans: never less for one more of them. */
    public double together(Collection<Double> pieces) {
        double sum = 0;
        double share = 1;
        for (double piece : pieces.stream()
                .sorted(Comparator.reverseOrder())
                .mapToDouble(d -> d)
                .toArray()) {
            sum += share * piece;
            share *= again;
        }
        return sum;
    }
}
