package heapwright.process.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/** The same pile, made healthy, or given one fault. The figures of a clear fault are judgement. */
final class Variants {
    private static final double GOOD_MOISTURE = 0.57;
    private static final double LEAST_MOISTURE = 0.50;
    private static final double MOST_MOISTURE = 0.62;
    private static final double GOOD_RATIO = 30;
    private static final double MOST_DENSITY = 600;
    private static final double GOOD_PIECE_CM = 5;
    private static final double GOOD_ACID = 0.1;

    private Variants() {}

    /** As told, but damp, airy, with nitrogen enough, not sour and not coarse. */
    static Matter healthy(Matter m) {
        double moisture = m.moisture() < LEAST_MOISTURE || m.moisture() > MOST_MOISTURE ? GOOD_MOISTURE : m.moisture();
        double most = MOST_DENSITY * m.volumeM3() * (1 - moisture);
        double dry = Math.min(m.dryKg(), most);
        return with(
                m,
                dry,
                moisture,
                Math.min(GOOD_RATIO, ratio(m)),
                Math.min(GOOD_PIECE_CM, m.pieceCm()),
                Math.min(GOOD_ACID, m.acidIndex()));
    }

    private static double ratio(Matter m) {
        double organic = m.dryKg() * (m.quickShare() + m.slowShare() + m.ligninShare());
        return organic * Matter.CARBON_SHARE / Math.max(1e-9, m.nitrogenKg());
    }

    private static Matter with(Matter m, double dry, double moisture, double ratio, double pieceCm, double acid) {
        double organic = dry * (m.quickShare() + m.slowShare() + m.ligninShare());
        double nitrogen = organic * Matter.CARBON_SHARE / Math.max(1e-6, ratio);
        return new Matter(
                dry,
                dry * moisture / (1 - moisture),
                m.quickShare(),
                m.slowShare(),
                m.ligninShare(),
                nitrogen,
                Math.min(nitrogen, m.mineralNitrogenKg()),
                m.volumeM3(),
                pieceCm,
                acid);
    }

    /** What is done to a healthy pile too: material and covers, but no mishaps. */
    static List<Event> harmless(List<Event> events) {
        return events.stream()
                .filter(e -> e instanceof Event.Add || e instanceof Event.Cover)
                .toList();
    }

    /** Every fault and the pile as told, best fit first. */
    static List<Suspect> suspects(
            PileState start, Weather weather, List<Event> events, List<CoreReading> readings, Constants c) {
        Matter m = start.matter();
        Matter good = healthy(m);
        List<Suspect> all = new ArrayList<>();
        for (LimitingFactor factor : LimitingFactor.values()) {
            DoubleFunction<Matter> form = form(factor, m, good);
            if (form != null) {
                ToDoubleFunction<Double> miss = u -> miss(form.apply(u), start, weather, events, readings, c);
                all.add(new Suspect(factor, factor == LimitingFactor.NONE ? miss.applyAsDouble(0.0) : least(miss)));
            }
        }
        all.sort(Comparator.comparingDouble(Suspect::missK).thenComparing(Suspect::factor));
        return List.copyOf(all);
    }

    /** Least miss over the degrees of a fault, by a coarse grid made finer round its best. */
    private static double least(ToDoubleFunction<Double> miss) {
        double best = 0;
        double least = Double.MAX_VALUE;
        for (double u = 0; u <= 1; u += 0.125) {
            double here = miss.applyAsDouble(u);
            if (here < least) {
                least = here;
                best = u;
            }
        }
        for (double step = 0.0625; step > 0.01; step /= 2) {
            double centre = best;
            for (double u : new double[] {centre - step, centre + step}) {
                double here = miss.applyAsDouble(Math.max(0, Math.min(1, u)));
                if (here < least) {
                    least = here;
                    best = u;
                }
            }
        }
        return least;
    }

    /**
     * Each fault that a recipe can have, by its degree from slight (0) to grave (1); null for what is no fault of a
     * recipe. A soaked pile is the denser the wetter: 664 kg/m³ at 66 %, 867 at 73 %.
     */
    private static DoubleFunction<Matter> form(LimitingFactor factor, Matter told, Matter good) {
        return switch (factor) {
            case NONE -> u -> told;
            case WATER -> u -> watered(good, 0.45 - 0.17 * u);
            case AIR -> u -> soaked(good, 664 + 203 * u, 0.66 + 0.07 * u);
            case NITROGEN -> u -> starved(good, 40 * Math.pow(4, u));
            case ACID -> u -> good.withAcid(0.4 + 0.6 * u);
            case PIECE_SIZE -> u -> good.withPieces(7 * Math.pow(6, u));
            default -> null;
        };
    }

    private static Matter watered(Matter m, double moisture) {
        return with(m, m.dryKg(), moisture, ratio(m), m.pieceCm(), m.acidIndex());
    }

    private static Matter soaked(Matter m, double density, double moisture) {
        double dry = density * m.volumeM3() * (1 - moisture);
        return with(m, dry, moisture, ratio(m), m.pieceCm(), Math.max(0.3, m.acidIndex()));
    }

    private static Matter starved(Matter m, double ratio) {
        return with(m, m.dryKg(), m.moisture(), ratio, m.pieceCm(), m.acidIndex());
    }

    private static double miss(
            Matter matter,
            PileState start,
            Weather weather,
            List<Event> events,
            List<CoreReading> readings,
            Constants c) {
        int days = readings.stream().mapToInt(CoreReading::day).max().orElse(0) + 1;
        Course course = HeatModel.run(start.with(matter), weather, events, days, c);
        double sum = 0;
        for (CoreReading reading : readings) {
            double miss = course.days().get(reading.day()).coreC() - reading.celsius();
            sum += miss * miss;
        }
        return Math.sqrt(sum / readings.size());
    }
}
