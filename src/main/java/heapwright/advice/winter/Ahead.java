package heapwright.advice.winter;

import heapwright.process.heat.Bands;
import heapwright.process.heat.Constants;
import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Range;
import heapwright.process.heat.Readiness;
import heapwright.process.heat.Retrace;
import heapwright.process.heat.Spread;
import heapwright.process.heat.Stage;
import heapwright.process.heat.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies ahead of a pile, from the day of advice. A planning aid: reviewed models of this kind missed measured peaks
 * by more than 5 °C (MASON06).
 *
 * @param model the pile
 * @param fresh whether it is only planned or just built, so that it can still be built otherwise
 * @param missK kelvin by which a reading of late missed the fitted model; see {@link #fits}
 * @param core core by day to the end of the look ahead, 10th to 90th percentile; day 0 is {@link #firstDay}
 * @param mid mean over the pile, the same
 * @param skin outermost layer, the same
 * @param outdoor outdoors, the same
 * @param likely the course at the likely figures, to the end of the look ahead
 * @param figures its figures at the end of the look ahead; the day ready counts from {@link #firstDay} and may lie later
 * @param lookedDays days looked ahead for the day ready
 * @param wish the answer to the day on which it is wanted, if there is one and the model fits
 * @param plans other ways, each against this pile as it is; none where the model does not fit
 */
public record Ahead(
        PileModel model,
        boolean fresh,
        double missK,
        Bands core,
        Bands mid,
        Bands skin,
        Bands outdoor,
        Course likely,
        Outlook figures,
        int lookedDays,
        Optional<Wish> wish,
        List<PlanOutcome> plans) {

    private static final int SAMPLES = 32;
    private static final int SAMPLES_A_PLAN = 10;
    private static final int FRESH_DAYS = 3;
    private static final int LEAST_LOOK = 240;
    private static final int MOST_LOOK = 420;
    private static final int EARLIER = 28;
    /** From a reading of today on, the band grows to its full width within so many days (judgement). */
    private static final int UNSURE_AFTER_DAYS = 7;

    /** Of a pile whose recipe is not told. */
    private static final Spread WIDE = new Spread(0.12, 0.35, 0.6, 0.45, 0.7, 0.8, 6, 0.4, 5, 4.0, 4.5);

    public Ahead {
        plans = List.copyOf(plans);
    }

    /** Looks ahead. */
    public static Ahead of(PileModel model) {
        boolean fresh = model.age() <= FRESH_DAYS && model.cores().isEmpty();
        int first = first(model, fresh);
        PileState now = fresh ? model.start() : now(model);
        Weather weather = model.climate().weather().from(first);
        int wanted = model.ahead() + model.age() - first;
        int look = Math.max(LEAST_LOOK, Math.min(MOST_LOOK, wanted));
        Weather longer = Climate.smooth(model.pile(), model.date(first), look);
        Weather sky = weather.days() >= look ? weather : longer.startingAs(weather);
        Spread spread = model.typical() ? WIDE : Spread.usual();
        Comparison base = new Comparison(now, sky, List.of(), look, spread, SAMPLES);
        Ensemble window = cut(base.alone(), wanted);
        Outlook far = Outlook.of(base.alone(), Readiness.standard());
        Outlook near = Outlook.of(window, Readiness.standard());
        Outlook figures = new Outlook(
                near.freezesThrough(),
                near.peakC(),
                near.daysAbove40(),
                near.daysAbove55(),
                far.readyDay(),
                far.readyChance(),
                near.massLeft(),
                near.volumeLeft(),
                near.nitrogenLost());
        Course likely = heapwright.process.heat.HeatModel.run(now, sky, List.of(), wanted, Constants.standard());
        return new Ahead(
                model,
                fresh,
                now.stage().missK(),
                measuredToday(model) ? window.core().growing(UNSURE_AFTER_DAYS) : window.core(),
                window.bands(Day::midC),
                window.bands(Day::skinC),
                window.bands(Day::outdoorC),
                likely,
                figures,
                look,
                now.stage().fits() ? Wish.of(model, model.date(first), base.alone(), look) : Optional.empty(),
                !now.stage().fits() ? List.of() : plans(model, now, sky, base.of(SAMPLES_A_PLAN), fresh, wanted));
    }

    /** Whether the model is one of this pile: else its dates are worth nothing, and none are given. */
    public boolean fits() {
        return Math.abs(missK) <= Stage.MISFIT_K;
    }

    private static boolean measuredToday(PileModel model) {
        return model.cores().stream().anyMatch(c -> c.day() == model.age());
    }

    private static int first(PileModel model, boolean fresh) {
        return fresh ? 0 : model.age();
    }

    /** The date of day 0: the day of advice, or that on which a fresh pile was built. */
    public LocalDate firstDay() {
        return model.date(first(model, fresh));
    }

    private static PileState now(PileModel model) {
        return Retrace.reached(
                model.start(),
                model.climate().weather(),
                model.events(),
                model.cores(),
                model.marks(),
                model.age() + 1,
                Constants.standard());
    }

    private static List<PlanOutcome> plans(
            PileModel model, PileState now, Weather sky, Comparison base, boolean fresh, int wanted) {
        List<PlanOutcome> all = new ArrayList<>();
        for (Plan plan : Plan.values()) {
            List<Plan.Way> ways = fresh ? plan.building(now, sky) : plan.standing(now, sky);
            for (Plan.Way way : ways) {
                all.add(outcome(plan, way.day(), base, base.with(way.start(), way.events()), wanted, 0));
            }
        }
        if (fresh) {
            Weather before = Climate.smooth(model.pile(), model.pile().built().minusDays(EARLIER), base.days());
            all.add(outcome(
                    Plan.BUILT_EARLIER,
                    EARLIER,
                    base,
                    base.instead(model.builtIn(before, now), before, List.of()),
                    wanted,
                    EARLIER));
        }
        return all;
    }

    private static PlanOutcome outcome(Plan plan, int day, Comparison base, Ensemble other, int wanted, int shift) {
        Readiness readiness = Readiness.standard();
        int beyond = base.days() + readiness.restDays();
        Range sooner = base.pairs(
                other,
                (a, b) -> (double) readiness.day(a).orElse(beyond)
                        - (readiness.day(b).orElse(beyond) - shift));
        Ensemble here = cut(base.alone(), wanted);
        Ensemble there = cut(other, wanted);
        Range warmDays = paired(here, there, c -> c.daysAtLeast(40));
        Range warmer = paired(
                here,
                there,
                c -> c.days().stream().mapToDouble(Day::coreC).average().orElse(0));
        double freezes = there.share(c -> c.firstFrozenThrough().isPresent());
        return new PlanOutcome(plan, day, sooner, warmDays, warmer, freezes);
    }

    private static Range paired(Ensemble a, Ensemble b, java.util.function.ToDoubleFunction<Course> figure) {
        double[] all = new double[a.courses().size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = figure.applyAsDouble(b.courses().get(i))
                    - figure.applyAsDouble(a.courses().get(i));
        }
        return Range.of(all);
    }

    private static Ensemble cut(Ensemble ensemble, int days) {
        return new Ensemble(ensemble.courses().stream()
                .map(c -> new Course(c.days().subList(0, Math.min(days, c.days().size())), c.ledger()))
                .toList());
    }

    /**
     * What another way brings.
     *
     * @param plan which
     * @param day day on which it is done, counted from {@link #firstDay}; days earlier for an earlier build
     * @param readySooner days by which the pile is ready sooner; a pile not ready within the time looked at counts as
     *     ready at its end, so the true gain may be larger
     * @param moreWarmDays more days with the core at 40 °C or above to the end of the look ahead
     * @param warmerC kelvin by which the core is warmer on average to the end of the look ahead
     * @param freezesThrough chance that it freezes through so, 0–1
     */
    public record PlanOutcome(
            Plan plan, int day, Range readySooner, Range moreWarmDays, Range warmerC, double freezesThrough) {}
}
