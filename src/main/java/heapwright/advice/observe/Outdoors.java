package heapwright.advice.observe;

import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.knowledge.Reading;
import heapwright.pile.Pile;
import heapwright.process.climate.LocalYear;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** The air round a pile on the day of advice. */
final class Outdoors {

    /** So far a station's mean of a month may be off a usual year, K ({@code LocalYearTest}). */
    private static final double USUAL_DOUBT = 5;

    /** A coat that is put on now pays within this time, months (judgement). */
    private static final int SOON_MONTHS = 2;

    private Outdoors() {}

    /** What was read lately, else the mean of the month that is told for the place. */
    static OptionalDouble known(Pile pile, OptionalDouble read) {
        var months = pile.place().monthlyMeanC();
        return read.isPresent() || months.isEmpty()
                ? read
                : OptionalDouble.of(months.get(pile.asOf().getMonthValue() - 1));
    }

    /** Where neither is known: the mean of the date in a usual year at the latitude. */
    static Optional<Reads> usual(Pile pile) {
        OptionalDouble mean = LocalYear.of(pile.place()).on(pile.asOf());
        return mean.isEmpty()
                ? Optional.empty()
                : Optional.of(new Reads(
                        Reading.USUAL_OUTDOOR_TEMPERATURE,
                        mean.getAsDouble() - USUAL_DOUBT,
                        mean.getAsDouble(),
                        mean.getAsDouble() + USUAL_DOUBT,
                        Basis.ESTIMATED));
    }

    /** The coldest mean from today to two months on, by the file's months, else by a usual year, else by an assumed one. */
    static Reads coldestSoon(Pile pile) {
        return coldest(Reading.COLDEST_SOON, pile, 0);
    }

    /**
     * The coldest mean from a month to two months on. In spring the cold of today is left out, since it passes before a
     * coat has paid; in autumn it is milder than what comes and changes nothing.
     */
    static Reads coldestNext(Pile pile) {
        return coldest(Reading.COLDEST_NEXT, pile, 1);
    }

    private static Reads coldest(Reading reading, Pile pile, int fromMonths) {
        LocalYear year = LocalYear.of(pile.place());
        double coldest = IntStream.rangeClosed(fromMonths, SOON_MONTHS)
                .mapToDouble(months -> year.mean(pile.asOf().plusMonths(months)))
                .min()
                .orElseThrow();
        return new Reads(reading, coldest - USUAL_DOUBT, coldest, coldest + USUAL_DOUBT, Basis.ESTIMATED);
    }
}
