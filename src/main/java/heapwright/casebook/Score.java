package heapwright.casebook;

import heapwright.casebook.Scored.Stated;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How right the advice is over many cases.
 *
 * @param cases how many
 * @param right in how many the cause is among the first, every step is where it is read, and none does harm
 * @param agree in how many everything holds that the case asks
 * @param first of the cases that name a cause, in how many it stands first
 * @param firstTwo of those, in how many the causes are the first findings
 * @param steps of the cases that name steps, in how many all are among the first four
 * @param harmful in how many a step is offered that the source warns of
 * @param brier mean squared error of the likelihoods stated, 0 (always sure and right) to 1; NaN where none was stated
 * @param bands stated likelihoods in fifths, with what came true
 */
public record Score(
        int cases,
        int right,
        int agree,
        Share first,
        Share firstTwo,
        Share steps,
        int harmful,
        double brier,
        List<Band> bands) {

    private static final int BANDS = 5;

    public Score {
        bands = List.copyOf(bands);
    }

    /** So many of so many. */
    public record Share(int hits, int of) {}

    /**
     * The likelihoods stated between two bounds.
     *
     * @param from lower bound, 0 to 1
     * @param to upper bound
     * @param stated how many
     * @param mean their mean; NaN where there is none
     * @param so the part of them that is so by the source; NaN where there is none
     */
    public record Band(double from, double to, int stated, double mean, double so) {}

    /** The score of some cases. */
    public static Score of(Collection<Scored> scored) {
        List<Stated> stated = scored.stream().flatMap(s -> s.stated().stream()).toList();
        return new Score(
                scored.size(),
                (int) scored.stream().filter(Scored::right).count(),
                (int) scored.stream().filter(Scored::agrees).count(),
                share(scored, Scored::first),
                share(scored, Scored::firstTwo),
                share(scored, Scored::steps),
                (int) scored.stream().filter(Scored::harmful).count(),
                stated.stream().mapToDouble(Stated::squaredError).average().orElse(Double.NaN),
                bands(stated));
    }

    private static Share share(Collection<Scored> scored, Function<Scored, Optional<Boolean>> asked) {
        List<Boolean> answers =
                scored.stream().map(asked).flatMap(Optional::stream).toList();
        return new Share((int) answers.stream().filter(b -> b).count(), answers.size());
    }

    private static List<Band> bands(List<Stated> stated) {
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < BANDS; i++) {
            int band = i;
            List<Stated> in = stated.stream()
                    .filter(s -> Math.min(BANDS - 1, (int) (s.likelihood() * BANDS)) == band)
                    .toList();
            bands.add(new Band(
                    (double) i / BANDS,
                    (double) (i + 1) / BANDS,
                    in.size(),
                    in.stream().mapToDouble(Stated::likelihood).average().orElse(Double.NaN),
                    in.stream().mapToDouble(s -> s.so() ? 1 : 0).average().orElse(Double.NaN)));
        }
        return bands;
    }
}
