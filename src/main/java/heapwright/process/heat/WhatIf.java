package heapwright.process.heat;

import java.util.ArrayList;
import java.util.List;

/** Compares what could be done: the same samples, each option against leaving the pile alone. */
public final class WhatIf {
    private WhatIf() {}

    /**
     * Something that could be done.
     *
     * @param name a name for it
     * @param events what it means, besides what is done anyway
     */
    public record Option(String name, List<Event> events) {
        public Option {
            events = List.copyOf(events);
        }
    }

    /**
     * What an option brings.
     *
     * @param name its name
     * @param outlook its outlook
     * @param readySooner days by which the pile is ready sooner than if left alone, sample by sample; a pile not ready
     *     within the run counts as ready a rest after its end, so the true gain may be larger
     * @param moreWarmDays more days with the core at 40 °C or above
     * @param warmerCore kelvin by which the core is warmer on average
     * @param moreDecay share of all food decayed more by the end
     */
    public record Outcome(
            String name, Outlook outlook, Range readySooner, Range moreWarmDays, Range warmerCore, Range moreDecay) {}

    /**
     * Outcomes in the order of the options, the one of leaving it alone first under {@code leaveName}.
     *
     * @param samples samples an option, 2–4,096
     */
    public static List<Outcome> compare(
            PileState start,
            Weather weather,
            List<Event> anyway,
            List<Option> options,
            int days,
            Constants constants,
            Spread spread,
            int samples,
            Readiness readiness,
            String leaveName) {
        Ensemble alone = Ensemble.run(start, weather, anyway, days, constants, spread, samples);
        List<Outcome> all = new ArrayList<>();
        all.add(outcome(leaveName, alone, alone, days, readiness));
        for (Option option : options) {
            List<Event> events = new ArrayList<>(anyway);
            events.addAll(option.events());
            Ensemble other = Ensemble.run(start, weather, events, days, constants, spread, samples);
            all.add(outcome(option.name(), alone, other, days, readiness));
        }
        return List.copyOf(all);
    }

    private static Outcome outcome(String name, Ensemble alone, Ensemble other, int days, Readiness readiness) {
        int n = alone.courses().size();
        double[] sooner = new double[n];
        double[] warmDays = new double[n];
        double[] warmer = new double[n];
        double[] decay = new double[n];
        int beyond = days + readiness.restDays();
        for (int i = 0; i < n; i++) {
            Course a = alone.courses().get(i);
            Course b = other.courses().get(i);
            sooner[i] = readiness.day(a).orElse(beyond) - readiness.day(b).orElse(beyond);
            warmDays[i] = b.daysAtLeast(40) - a.daysAtLeast(40);
            warmer[i] = meanCore(b) - meanCore(a);
            decay[i] = a.last().foodLeftShare() - b.last().foodLeftShare();
        }
        return new Outcome(
                name,
                Outlook.of(other, readiness),
                Range.of(sooner),
                Range.of(warmDays),
                Range.of(warmer),
                Range.of(decay));
    }

    private static double meanCore(Course course) {
        return course.days().stream().mapToDouble(Day::coreC).average().orElseThrow();
    }
}
