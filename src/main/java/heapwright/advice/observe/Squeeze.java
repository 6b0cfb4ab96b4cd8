package heapwright.advice.observe;

import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the hand says of the moisture. A squeeze test beats an estimate from the recipe and is beaten by drying a sample.
 * The rules read the squeeze itself as a sign, so the figure it stands for goes to the doses and the report only: one
 * observation is not evidence twice.
 */
public final class Squeeze {

    private final Knowledge knowledge;

    public Squeeze(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** The readings with the moisture that the hand says in place of an estimate. */
    public List<Reads> applied(List<Reads> readings, List<Object> signs) {
        boolean dried = readings.stream().anyMatch(r -> r.reading() == Reading.MOISTURE && r.measured());
        Optional<Reads> felt = signs.stream()
                .filter(Seen.class::isInstance)
                .map(Seen.class::cast)
                .filter(s -> !s.outlived())
                .map(s -> knowledge.signs().get(s.sign()).moisturePct())
                .flatMap(Optional::stream)
                .reduce(Squeeze::both)
                .map(f -> new Reads(Reading.MOISTURE, f.low(), f.typical(), f.high(), Basis.REPORTED));
        if (dried || felt.isEmpty()) {
            return readings;
        }
        List<Reads> all = new ArrayList<>(List.of(felt.get()));
        readings.stream().filter(r -> r.reading() != Reading.MOISTURE).forEach(all::add);
        return all;
    }

    /** Two answers of the hand: where they overlap, the overlap; where not, the whole span. */
    private static Figure both(Figure a, Figure b) {
        double low = Math.max(a.low(), b.low());
        double high = Math.min(a.high(), b.high());
        if (low > high) {
            low = Math.min(a.low(), b.low());
            high = Math.max(a.high(), b.high());
        }
        double typical = Math.min(high, Math.max(low, (a.typical() + b.typical()) / 2));
        return new Figure(low, typical, high, a.source(), a.known());
    }

    /** Whether a reading is what the hand said. */
    public static boolean from(Reads reading) {
        return reading.reading() == Reading.MOISTURE && reading.basis() == Basis.REPORTED;
    }
}
