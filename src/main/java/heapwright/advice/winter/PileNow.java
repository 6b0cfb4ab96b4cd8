package heapwright.advice.winter;

import heapwright.process.heat.Constants;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Retrace;
import heapwright.process.heat.Spread;
import heapwright.process.heat.Stage;
import heapwright.process.heat.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A pile as the model has it on the day of advice. Checkup, why, outlook and what-if all speak of this one, so that size,
 * warmth, fit and what a step wins are the same in each.
 *
 * @param model the pile file as the model takes it
 * @param past the way it took up to now, corrected by what was measured
 */
public record PileNow(PileModel model, Retrace past) {

    /** Samples behind what a step or another way wins. */
    static final int SAMPLES_A_WAY = 8;

    /** No look ahead is longer, days. */
    static final int MOST_LOOK = 420;

    private static final int LEAST_LOOK = 240;

    private static final int FRESH_DAYS = 3;
    private static final int MOST_DAYS = 120;
    private static final int LEAST_DAYS = 60;

    /** Of a pile whose recipe is not told. */
    private static final Spread WIDE = new Spread(0.12, 0.35, 0.6, 0.45, 0.7, 1.1, 8, 0.5, 6, 4.0, 4.5);

    /** A pile of which a person says that it never got warm was not warmer than this on its warmest day, °C (judgement). */
    private static final double NEVER_WARM_C = 28;

    private static final int MOST_FELT = 5;

    /** Follows a pile up to the day of advice. */
    public static PileNow of(PileModel model) {
        List<CoreReading> cores = model.cores();
        Retrace past = past(model, cores);
        boolean never = model.warmOnce() == WarmOnce.NO;
        for (int i = 0; i < MOST_FELT && never && past.course().peakC() > NEVER_WARM_C; i++) {
            cores = felt(cores, past.course());
            past = past(model, cores);
        }
        return new PileNow(model, past);
    }

    private static Retrace past(PileModel model, List<CoreReading> cores) {
        return Retrace.of(model.setup(), cores, Constants.standard());
    }

    /** What was measured, and on the day on which the model has it warmest, unless it was measured then, the hand. */
    private static List<CoreReading> felt(List<CoreReading> cores, Course course) {
        int warmest = course.days().stream()
                .filter(d -> cores.stream().noneMatch(c -> c.day() == d.day()))
                .max(Comparator.comparingDouble(Day::coreC))
                .orElse(course.last())
                .day();
        List<CoreReading> all = new ArrayList<>(cores);
        all.add(new CoreReading(warmest, NEVER_WARM_C));
        return all;
    }

    /** Whether it is only planned or just built, so that it can still be built otherwise; what lies ahead counts from then. */
    public boolean fresh() {
        return model.age() <= FRESH_DAYS && model.cores().isEmpty();
    }

    /** From here what lies ahead starts. */
    public PileState state() {
        return fresh() ? model.start() : past.now();
    }

    /** The day of the model on which what lies ahead starts. */
    int first() {
        return fresh() ? 0 : model.age();
    }

    /** Kelvin by which a reading of late missed the fitted model. */
    public double missK() {
        return state().stage().missK();
    }

    /** Whether the model is one of this pile: else its dates are worth nothing, and none are given. */
    public boolean fits() {
        return Math.abs(missK()) <= Stage.MISFIT_K;
    }

    /** Whether the core was measured on the day of advice. */
    boolean measuredToday() {
        return model.cores().stream().anyMatch(c -> c.day() == model.age());
    }

    /** The date of a day ahead. */
    public LocalDate date(int day) {
        return model.date(first() + day);
    }

    /** Days over which doing something is held against leaving the pile alone. */
    public int window() {
        return Math.max(LEAST_DAYS, Math.min(MOST_DAYS, model.ahead()));
    }

    /** How far it is looked ahead for the day on which it is ready, days. */
    int look() {
        return Math.max(LEAST_LOOK, Math.min(MOST_LOOK, wanted()));
    }

    /** Days up to the end of the look ahead. */
    int wanted() {
        return model.ahead() + model.age() - first();
    }

    /** The weather ahead, as far as anything is looked at, so that whatever is compared has the same. */
    Weather sky() {
        return Climate.smooth(model.pile(), date(0), MOST_LOOK)
                .startingAs(model.climate().weather().from(first()));
    }

    /** The pile left alone for so many days, against which other ways are held. */
    Comparison alone(int days, int samples) {
        Spread spread = model.typical() ? WIDE : Spread.usual();
        return new Comparison(state(), sky(), List.of(), days, spread, samples);
    }
}
