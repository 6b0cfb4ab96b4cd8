package heapwright.advice.audit;

import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.advice.observe.Quantities;
import heapwright.knowledge.Reading;
import heapwright.pile.Pile;
import heapwright.process.climate.LocalYear;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Mixture;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the audit rules read of a recipe that is yet to be built. Its size is what the recipe makes, not what the bin
 * could hold, and the cold that counts is the cold to come.
 */
final class RecipeReadings {

    /** A pile must hold its heat through the months that follow; judgement. */
    private static final int MONTHS_AHEAD = 3;

    private static final int MONTHS = 12;

    private RecipeReadings() {}

    static List<Reads> of(Pile pile, Quantities quantities, Mixture mixture) {
        Map<Reading, Reads> all = new EnumMap<>(Reading.class);
        quantities.readings().forEach(r -> all.put(r.reading(), r));
        boolean measured =
                pile.log().stream().anyMatch(e -> e.measured().heightM().isPresent());
        if (!measured) {
            Band volume = Built.volumeM3(mixture);
            double height = Built.shape(pile.container(), volume.likely()).heightM();
            all.put(Reading.VOLUME, reads(Reading.VOLUME, volume));
            all.put(Reading.HEIGHT, reads(Reading.HEIGHT, volume.times(height / volume.likely())));
        }
        coldest(pile).ifPresent(r -> all.put(r.reading(), r));
        return new ArrayList<>(all.values());
    }

    private static Optional<Reads> coldest(Pile pile) {
        LocalYear year = LocalYear.of(pile.place());
        if (year.known() == LocalYear.Known.ASSUMED) {
            return Optional.empty();
        }
        Basis basis = year.known() == LocalYear.Known.MONTHS ? Basis.REPORTED : Basis.ESTIMATED;
        int from = pile.built().getMonthValue() - 1;
        return java.util.stream.IntStream.rangeClosed(from, from + MONTHS_AHEAD)
                .mapToObj(month -> year.meanC().get(month % MONTHS))
                .min(Comparator.naturalOrder())
                .map(v -> new Reads(Reading.COLDEST_MONTH_AHEAD, v, v, v, basis));
    }

    private static Reads reads(Reading reading, Band band) {
        return new Reads(reading, band.low(), band.likely(), band.high(), Basis.ESTIMATED);
    }
}
