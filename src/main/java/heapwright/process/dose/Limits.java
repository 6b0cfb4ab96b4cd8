package heapwright.process.dose;

import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import java.util.EnumMap;
import java.util.Map;

/**
 * The limits that count for one pile, each in the unit of the table: moisture and shares in percent, UREA_MAX and
 * NITROGEN_MAX in grams per cubic metre at once (of urea, of nitrogen), ASH_MAX and WATER_MAX_AT_ONCE in litres per
 * cubic metre, SOLUTION_MAX in percent (1 % is 10 g in a litre), NITROGEN_DOSE_INTERVAL in days, volumes in cubic metres.
 *
 * @param values value by limit
 */
public record Limits(Map<Limit, Double> values) {

    public Limits {
        values = values.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(values));
    }

    /** @throws IllegalArgumentException when the table does not give it */
    public double of(Limit limit) {
        Double value = values.get(limit);
        if (value == null) {
            throw new IllegalArgumentException(
                    "The limit \"" + limit.id() + "\" has no value. Maybe limits.json lacks it.");
        }
        return value;
    }

    /** A limit in percent as a fraction. */
    public double share(Limit limit) {
        return of(limit) / 100;
    }

    /** The strongest solution of a fertiliser, grams in a litre of water. */
    public double solutionGramsPerLitre() {
        return share(Limit.SOLUTION_MAX) * 1000;
    }

    /** The least water that some of a fertiliser is dissolved in, litres; none for what is a liquid or rots itself. */
    public double dissolvingLitres(Material material, double kilograms) {
        return material.carbonToNitrogen().typical() > 0 ? 0 : kilograms * 1000 / solutionGramsPerLitre();
    }

    /** Middle of the good range of moisture, percent. */
    public double aimMoisturePct() {
        return (of(Limit.MOISTURE_GOOD_LOW) + of(Limit.MOISTURE_GOOD_HIGH)) / 2;
    }

    /** Middle of the good range of C:N. */
    public double aimCarbonToNitrogen() {
        return (of(Limit.CN_GOOD_LOW) + of(Limit.CN_GOOD_HIGH)) / 2;
    }
}
