package heapwright.report;

import heapwright.knowledge.MeasureInfo;
import heapwright.pile.Pile;
import heapwright.process.dose.Household;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tells litres in the measures of the house, with the person's own sizes where they gave them. */
public final class Measures {

    /** What is measured, which decides whether by barrow, bucket or spoon. */
    public enum Kind {
        BULK(List.of("wheelbarrow", "bucket", "handful"), List.of("wheelbarrow", "five-gallon-bucket", "handful")),
        BUCKETS(List.of("bucket", "handful"), List.of("five-gallon-bucket", "handful")),
        LAYER(List.of("bucket", "spadeful", "handful"), List.of("five-gallon-bucket", "spadeful", "handful")),
        WATER(List.of("bucket", "jug", "cup"), List.of("five-gallon-bucket", "us-cup")),
        POWDER(List.of("cup", "tablespoon", "teaspoon"), List.of("us-cup", "tablespoon", "teaspoon"));

        private final List<String> metric;
        private final List<String> us;

        Kind(List<String> metric, List<String> us) {
            this.metric = metric;
            this.us = us;
        }
    }

    private static final List<String> QUARTERS = List.of("", "¼", "½", "¾");

    private final Words words;
    private final Pile pile;

    public Measures(Words words, Pile pile) {
        this.words = words;
        this.pile = pile;
    }

    /** So many litres as "6 buckets". */
    public String tell(double litres, Kind kind, Household.Rounding rounding) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        for (String id : words.figures().units() == Units.US ? kind.us : kind.metric) {
            MeasureInfo info = words.knowledge().measures().get(id);
            if (info != null) {
                sizes.put(id, pile.measures().getOrDefault(id, info.litres()));
            }
        }
        Household.Measured told = new Household(sizes).ofLitres(litres, rounding);
        MeasureInfo measure = words.knowledge().measures().get(told.measure());
        String name = told.count() <= 1 ? measure.name().one() : measure.name().many();
        return count(told.count()) + " " + name;
    }

    /** Quarters as they are written on a measuring jug: "¼", "1½". */
    private static String count(double count) {
        long whole = (long) Math.floor(count);
        long quarters = Math.round((count - whole) * QUARTERS.size());
        return (whole > 0 ? whole + "" : "") + QUARTERS.get((int) quarters);
    }
}
