package heapwright.advice.winter;

import heapwright.process.heat.Bands;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Day;
import heapwright.process.heat.Readiness;
import heapwright.process.heat.Retrace;
import java.util.List;

/**
 * In what degree each verdict on a pile's past is so, 0 to 1 each. The word for it turns at once; what it says as
 * evidence must not, as no temperature is known to a hair. Each edge grows evenly over its width, with a half at the edge
 * where the word turns; what several edges ask for is so in the least of their degrees.
 *
 * @param working the pile is warm enough
 * @param finished its food is spent
 * @param somethingWrong it is colder than a healthy one, or held back by what can be mended though it is mild
 * @param justWinter it is as cold as a healthy one in the cold
 */
record VerdictDegrees(double working, double finished, double somethingWrong, double justWinter) {

    static final double WARM_C = 40;
    /** The limit excess-working of the tables. */
    static final double WARM_EXCESS_K = 15;
    /** A band is no wall: this much below it counts, K (judgement). */
    private static final double CLEARLY_K = 3;

    private static final int YOUNG_DAYS = 4;
    /** A sound pile takes two to three days to warm (CORNPHYS); before that a cool one says nothing. */
    private static final int WARMING_DAYS = 3;

    private static final int LEAST_DAYS_TO_FINISH = 60;
    private static final double WINTER_C = 10;
    /** So long a warm reading holds in full, and after twice that it says nothing of today (judgement). */
    private static final int HOLDS_DAYS = 14;

    /** Widths of the edges, judgement: those of a core and of the air as in the edges of the rules, K. */
    private static final double CORE_WIDTH = 5;

    private static final double AIR_WIDTH = 2;
    /** The band itself is known to some K. */
    private static final double BAND_WIDTH = 4;
    /** Of the respiration at which food counts as spent, part of that figure. */
    private static final double SPENT_WIDTH = 0.2;

    private static final double HALF = 0.5;

    /**
     * Weighs a past.
     *
     * @param mendable whether what held it back, taken that something is wrong, can be mended
     */
    static VerdictDegrees of(PileModel model, Retrace past, Bands healthy, boolean mendable) {
        List<CoreReading> cores = model.cores();
        CoreReading last = cores.get(cores.size() - 1);
        double outdoor = model.climate().weather().airC(last.day());
        double warm = Math.max(
                degree(last.celsius() - WARM_C, CORE_WIDTH),
                degree(last.celsius() - outdoor - WARM_EXCESS_K, CORE_WIDTH));
        warm = Math.min(warm, fresh(model.age() - last.day()));
        double spent = model.age() >= LEAST_DAYS_TO_FINISH ? spent(past.course().last()) : 0;
        double colder = model.age() < WARMING_DAYS ? 0 : colder(cores, healthy);
        double winter = degree(WINTER_C - outdoor, AIR_WIDTH);
        boolean young = model.age() <= YOUNG_DAYS;
        double amiss = young || !mendable ? 0 : 1 - winter;
        double alive = Math.min(1 - warm, 1 - spent);
        return new VerdictDegrees(
                warm,
                Math.min(1 - warm, spent),
                Math.min(alive, Math.max(colder, amiss)),
                young ? 0 : Math.min(alive, Math.min(1 - colder, winter)));
    }

    /** The verdict in a word. */
    Verdict verdict(int age) {
        if (working >= HALF) {
            return Verdict.WORKING;
        }
        if (finished >= HALF) {
            return Verdict.FINISHED;
        }
        if (somethingWrong >= HALF) {
            return Verdict.SOMETHING_WRONG;
        }
        if (justWinter > HALF) {
            return Verdict.JUST_WINTER;
        }
        return age <= YOUNG_DAYS ? Verdict.TOO_EARLY : Verdict.WORKING;
    }

    /** How far a reading so many days old still says that a pile is warm. */
    private static double fresh(int days) {
        return Math.max(0, Math.min(1, 1 - (days - HOLDS_DAYS) / (double) HOLDS_DAYS));
    }

    private static double spent(Day day) {
        double edge = Readiness.standard().respiration();
        return degree(edge - day.respiration(), SPENT_WIDTH * edge);
    }

    /** By the reading furthest below the band; what was before the pile was last hot counts the less the hotter it was. */
    private static double colder(List<CoreReading> cores, Bands healthy) {
        double colder = 0;
        double since = 1;
        for (int i = cores.size() - 1; i >= 0; i--) {
            CoreReading core = cores.get(i);
            if (i < cores.size() - 1) {
                since = Math.min(since, degree(WARM_C - core.celsius(), CORE_WIDTH));
            }
            double below = healthy.low()[core.day()] - core.celsius();
            colder = Math.max(colder, Math.min(since, degree(below - CLEARLY_K, BAND_WIDTH)));
        }
        return colder;
    }

    private static double degree(double beyond, double width) {
        return Math.max(0, Math.min(1, HALF + beyond / width));
    }
}
