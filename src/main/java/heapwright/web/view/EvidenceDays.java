package heapwright.web.view;

import heapwright.advice.Finding;
import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Did;
import heapwright.advice.fact.Once;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Reading;
import heapwright.pile.Entry;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** The days of a pile's course that a finding rests on. */
final class EvidenceDays {

    private EvidenceDays() {}

    /** The days on which what speaks for it was noticed, done, put in or measured; the earliest first. */
    static Collection<LocalDate> of(Finding finding, Pile pile) {
        TreeSet<LocalDate> days = new TreeSet<>();
        for (EvidencePiece piece : finding.weighed().supports()) {
            if (piece.counted()) {
                piece.because().forEach(fact -> day(fact, pile).ifPresent(days::add));
            }
        }
        return days;
    }

    private static Optional<LocalDate> day(Object fact, Pile pile) {
        if (fact instanceof Seen seen) {
            return Optional.of(pile.asOf().minusDays(seen.daysAgo()));
        }
        if (fact instanceof Once once) {
            return Optional.of(pile.asOf().minusDays(once.daysAgo()));
        }
        if (fact instanceof Denied denied) {
            return Optional.of(pile.asOf().minusDays(denied.daysAgo()));
        }
        if (fact instanceof Did did) {
            return Optional.of(pile.asOf().minusDays(did.daysAgo()));
        }
        if (fact instanceof WentIn went) {
            return Optional.of(pile.asOf().minusDays(went.daysAgo()));
        }
        return fact instanceof Reads reads && reads.measured() ? measured(reads.reading(), pile) : Optional.empty();
    }

    private static Optional<LocalDate> measured(Reading reading, Pile pile) {
        return switch (reading) {
            case CORE_TEMPERATURE, CORE_EXCESS -> last(pile, Measured::coreC);
            case OUTDOOR_TEMPERATURE -> last(pile, Measured::outdoorC);
            case MOISTURE -> last(pile, Measured::moisturePct);
            case WET_DENSITY -> last(pile, Measured::bulkDensityKgM3);
            case PH -> last(pile, Measured::ph);
            case PEAK_TEMPERATURE ->
                entries(pile, Measured::coreC)
                        .max(Comparator.comparingDouble(
                                e -> e.measured().coreC().getAsDouble()))
                        .map(Entry::date);
            default -> Optional.empty();
        };
    }

    private static Optional<LocalDate> last(Pile pile, Function<Measured, OptionalDouble> what) {
        List<Entry> with = entries(pile, what).toList();
        return with.isEmpty()
                ? Optional.empty()
                : Optional.of(with.get(with.size() - 1).date());
    }

    private static Stream<Entry> entries(Pile pile, Function<Measured, OptionalDouble> what) {
        return pile.log().stream()
                .filter(e -> !e.date().isAfter(pile.asOf()))
                .filter(e -> what.apply(e.measured()).isPresent());
    }
}
