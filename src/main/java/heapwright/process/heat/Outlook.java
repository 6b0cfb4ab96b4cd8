package heapwright.process.heat;

import java.util.Arrays;

/**
 * What lies ahead, in a few figures with their ranges.
 *
 * @param freezesThrough chance that half the core's water freezes, 0–1
 * @param peakC highest core temperature, °C
 * @param daysAbove40 days with the core at 40 °C or more
 * @param daysAbove55 days with the core at 55 °C or more
 * @param readyDay day on which it is ready; a day past the run's end means not within it
 * @param readyChance chance that it is ready within the run, 0–1
 * @param massLeft wet mass at the end, as a share of that after day 0
 * @param volumeLeft volume at the end, as a share of that after day 0
 * @param nitrogenLost nitrogen lost, as a share of all that went in
 */
public record Outlook(
        double freezesThrough,
        Range peakC,
        Range daysAbove40,
        Range daysAbove55,
        Range readyDay,
        double readyChance,
        Range massLeft,
        Range volumeLeft,
        Range nitrogenLost) {

    /** From here a core counts as warm, °C: where the work is fastest begins (CORNPHYS, published). */
    public static final double WARM_C = 40;

    /** The outlook of an ensemble. */
    public static Outlook of(Ensemble ensemble, Readiness readiness) {
        int days = ensemble.courses().get(0).days().size();
        double[] ready = ensemble.courses().stream()
                .mapToDouble(c -> readiness.day(c).orElse(Integer.MAX_VALUE))
                .toArray();
        double beyond = days + readiness.restDays();
        long within = Arrays.stream(ready).filter(d -> d < days).count();
        Range peak = ensemble.temperature(Course::peakC);
        Bands core = ensemble.core();
        double high = Arrays.stream(core.high()).max().orElseThrow();
        return new Outlook(
                ensemble.share(c -> c.firstFrozenThrough().isPresent()),
                new Range(peak.low(), peak.likely(), Math.max(peak.high(), high)),
                ensemble.range(c -> c.daysAtLeast(WARM_C)),
                ensemble.range(c -> c.daysAtLeast(55)),
                Range.of(Arrays.stream(ready).map(d -> Math.min(d, beyond)).toArray()),
                within / (double) ready.length,
                ensemble.range(c -> c.last().massKg() / c.days().get(0).massKg()),
                ensemble.range(c -> c.last().volumeM3() / c.days().get(0).volumeM3()),
                ensemble.range(c -> c.last().nitrogenLostShare()));
    }
}
