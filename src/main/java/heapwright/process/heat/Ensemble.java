package heapwright.process.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Many courses of one pile, over what is not known about material, weather and constants. Samples come from a Sobol
 * sequence, weather unrest from fixed seeds: the same input gives the same bands.
 *
 * @param courses one a sample
 */
public record Ensemble(List<Course> courses) {
    private static final int DIMENSIONS = 10;
    /** Reviewed models missed the peak by more than this, K (MASON06): no band on a warm pile is narrower each way. */
    private static final double MODEL_ERROR_K = 5;
    /** Excess over outdoors at which that error counts in full, K (judgement). */
    private static final double FULL_EXCESS_K = 30;

    public Ensemble {
        courses = List.copyOf(courses);
    }

    /**
     * Runs the samples, on all cores.
     *
     * @param samples number of samples, 2–4,096; 64 give steady bands
     */
    public static Ensemble run(
            PileState start,
            Weather weather,
            List<Event> events,
            int days,
            Constants constants,
            Spread spread,
            int samples) {
        Checks.within("samples", samples, 2, 4096);
        return run(start, weather, events, days, constants, spread, 0, samples);
    }

    /**
     * Some of the samples, as a run of {@code end} or more has them; see {@link #and}.
     *
     * @param first the first sample, from 0
     * @param end the one after the last, up to 4,096
     */
    public static Ensemble run(
            PileState start,
            Weather weather,
            List<Event> events,
            int days,
            Constants constants,
            Spread spread,
            int first,
            int end) {
        Checks.within("end", end, first + 1, 4096);
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(DIMENSIONS);
        sobol.skipTo(1 + first);
        double[][] points = new double[end - first][];
        for (int i = 0; i < points.length; i++) {
            points[i] = sobol.nextVector();
        }
        return new Ensemble(IntStream.range(first, end)
                .parallel()
                .mapToObj(i -> sample(start, weather, events, days, constants, spread, points[i - first], i))
                .toList());
    }

    /** These samples and the ones that follow them. */
    public Ensemble and(Ensemble further) {
        List<Course> all = new ArrayList<>(courses);
        all.addAll(further.courses);
        return new Ensemble(all);
    }

    /** The first samples, which are those that a smaller run has. */
    public Ensemble first(int samples) {
        return new Ensemble(courses.subList(0, samples));
    }

    /** The same over its first days only. */
    public Ensemble cut(int days) {
        return new Ensemble(courses.stream()
                .map(c -> new Course(c.days().subList(0, Math.min(days, c.days().size())), c.ledger()))
                .toList());
    }

    private static Course sample(
            PileState start,
            Weather weather,
            List<Event> events,
            int days,
            Constants c,
            Spread s,
            double[] u,
            int number) {
        Matter m = start.matter();
        double moisture = clamp(m.moisture() + s.moisture() * even(u[0]), 0.05, 0.92);
        double wet = (m.dryKg() + m.waterKg()) * (1 + s.density() * even(u[1]));
        double degradable = m.quickShare() + m.slowShare();
        double quick = Math.min(degradable, m.quickShare() * (1 + s.quick() * even(u[2])));
        double nitrogen = 1 + s.nitrogen() * even(u[3]);
        double scale = wet * (1 - moisture) / m.dryKg();
        Matter sampled = new Matter(
                wet * (1 - moisture),
                wet * moisture,
                quick,
                degradable - quick,
                m.ligninShare(),
                m.nitrogenKg() * nitrogen * scale,
                m.mineralNitrogenKg() * nitrogen * scale,
                m.volumeM3(),
                m.pieceCm() * Math.exp(s.pieces() * even(u[4])),
                m.acidIndex());
        double rates = Math.exp(s.rates() * even(u[5]));
        Constants sampledConstants = c.with(
                        c.kinetics().varied(rates, rates, c.kinetics().shiftC() + s.curveC() * even(u[6])))
                .with(c.transport()
                        .varied(1 + s.conductivity() * even(u[7]), Math.exp(Math.log(s.permeability()) * even(u[8]))));
        Weather sampledWeather = weather.warmerBy(s.airC() * even(u[9]));
        if (s.unrestC() > 0) {
            sampledWeather = sampledWeather.restless(0x5EEDL + number, s.unrestC());
        }
        return HeatModel.run(start.with(sampled), sampledWeather, events, days, sampledConstants);
    }

    private static double even(double unit) {
        return 2 * unit - 1;
    }

    private static double clamp(double x, double low, double high) {
        return Math.max(low, Math.min(high, x));
    }

    /** Bands of any daily figure, straight from the samples. */
    public Bands bands(ToDoubleFunction<Day> figure) {
        int days = courses.get(0).days().size();
        double[] low = new double[days];
        double[] likely = new double[days];
        double[] high = new double[days];
        double[] column = new double[courses.size()];
        for (int d = 0; d < days; d++) {
            for (int i = 0; i < column.length; i++) {
                column[i] = figure.applyAsDouble(courses.get(i).days().get(d));
            }
            Arrays.sort(column);
            low[d] = Bands.percentile(column, 0.1);
            likely[d] = Bands.middle(column);
            high[d] = Bands.percentile(column, 0.9);
        }
        return new Bands(low, likely, high);
    }

    /**
     * Bands of the core temperature, widened where the samples agree more than models of this kind deserve: at least
     * 5 K each way on a core 30 K above outdoors, less in proportion on a cooler one.
     */
    public Bands core() {
        Bands b = bands(Day::coreC);
        Bands outdoor = bands(Day::outdoorC);
        for (int d = 0; d < b.likely().length; d++) {
            double excess = Math.abs(b.likely()[d] - outdoor.likely()[d]);
            double least = MODEL_ERROR_K * Math.min(1, excess / FULL_EXCESS_K);
            b.low()[d] = Math.min(b.low()[d], b.likely()[d] - least);
            b.high()[d] = Math.max(b.high()[d], b.likely()[d] + least);
        }
        return b;
    }

    /** Range of one temperature a course, its likely value as in {@link Bands}; °C. */
    public Range temperature(ToDoubleFunction<Course> figure) {
        double[] sorted = courses.stream().mapToDouble(figure).sorted().toArray();
        return new Range(Bands.percentile(sorted, 0.1), Bands.middle(sorted), Bands.percentile(sorted, 0.9));
    }

    /** Range of one figure a course. */
    public Range range(ToDoubleFunction<Course> figure) {
        return Range.of(courses.stream().mapToDouble(figure).toArray());
    }

    /** Share of the samples for which something holds, 0–1. */
    public double share(java.util.function.Predicate<Course> holds) {
        return courses.stream().filter(holds).count() / (double) courses.size();
    }
}
