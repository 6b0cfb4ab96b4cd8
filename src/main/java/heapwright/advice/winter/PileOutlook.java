package heapwright.advice.winter;

import heapwright.process.heat.Bands;
import heapwright.process.heat.Day;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Readiness;
import heapwright.process.heat.Setup;
import heapwright.process.heat.Weather;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies ahead of a pile, from the day of advice. A planning aid: reviewed models of this kind missed measured peaks
 * by more than 5 °C (MASON06).
 *
 * @param now the pile as it is
 * @param core core by day to the end of the look ahead, 10th to 90th percentile; day 0 is {@link #firstDay}
 * @param mid mean over the pile, the same
 * @param skin outermost layer, the same
 * @param outdoor outdoors, the same
 * @param figures its figures at the end of the look ahead; the day ready counts from {@link #firstDay} and may lie later
 * @param ready when it will be ready, by a longer look
 * @param plans other ways, each against this pile as it is; none where the model does not fit
 */
public record PileOutlook(
        PileNow now,
        Bands core,
        Bands mid,
        Bands skin,
        Bands outdoor,
        Outlook figures,
        ReadyAhead ready,
        List<PlanOutcome> plans) {

    static final int SAMPLES = 32;
    static final int EARLIER = 28;
    /** From a reading of today on, the band grows to its full width within so many days (judgement). */
    private static final int UNSURE_AFTER_DAYS = 7;

    public PileOutlook {
        plans = List.copyOf(plans);
    }

    /** Looks ahead of a pile file. */
    public static PileOutlook of(PileModel model) {
        return of(PileNow.of(model));
    }

    /** Looks ahead. */
    public static PileOutlook of(PileNow now) {
        return of(now, SAMPLES, List.of(Plan.values()));
    }

    /** Looks ahead by so many samples, 8 or more where other ways are looked at, and at these ways alone. */
    static PileOutlook of(PileNow now, int samples, List<Plan> ways) {
        int wanted = now.wanted();
        int look = now.look();
        Comparison base = now.alone(look, samples);
        Ensemble window = base.alone().cut(wanted);
        ReadyAhead ready = ReadyAhead.of(now, base.alone(), look);
        Outlook near = Outlook.of(window, Readiness.standard());
        Outlook figures = new Outlook(
                near.freezesThrough(),
                near.peakC(),
                near.daysAbove40(),
                near.daysAbove55(),
                ready.day(),
                ready.chance(),
                near.massLeft(),
                near.volumeLeft(),
                near.nitrogenLost());
        return new PileOutlook(
                now,
                now.measuredToday() ? window.core().growing(UNSURE_AFTER_DAYS) : window.core(),
                window.bands(Day::midC),
                window.bands(Day::skinC),
                window.bands(Day::outdoorC),
                figures,
                ready,
                now.fits() && !ways.isEmpty() ? plans(now, base.of(PileNow.SAMPLES_A_WAY), ways) : List.of());
    }

    /** What will hold it back, day by day; reckoned when it is asked for. */
    public HeldBack held() {
        return HeldBack.of(new Setup(now.state(), now.sky(), List.of(), List.of(), now.wanted()));
    }

    /** Days looked ahead for the day ready. */
    public int lookedDays() {
        return ready.lookedDays();
    }

    /** The answer to the day on which it is wanted, if there is one and the model fits. */
    public Optional<WantedDate> wish() {
        return ready.wish();
    }

    /** The pile file as the model takes it. */
    public PileModel model() {
        return now.model();
    }

    /** Whether it is only planned or just built, so that it can still be built otherwise. */
    public boolean fresh() {
        return now.fresh();
    }

    /** Whether the model is one of this pile: else its dates are worth nothing, and none are given. */
    public boolean fits() {
        return now.fits();
    }

    /** The date of day 0: the day of advice, or that on which a fresh pile was built. */
    public LocalDate firstDay() {
        return now.date(0);
    }

    private static List<PlanOutcome> plans(PileNow now, Comparison whole, List<Plan> ways) {
        PileState start = now.state();
        Weather sky = now.sky();
        Comparison usual = whole.cut(now.window());
        List<PlanOutcome> all = new ArrayList<>();
        for (Plan plan : ways) {
            for (Plan.Way way : now.fresh() ? plan.building(start, sky) : plan.standing(start, sky)) {
                // What is done later than the time looked at for a step would win nothing by its end.
                Comparison base = way.day() < usual.days() ? usual : whole;
                all.add(new PlanOutcome(plan, way.day(), base.gain(base.with(way.start(), way.events()))));
            }
        }
        if (now.fresh() && ways.contains(Plan.BUILT_EARLIER)) {
            PileModel model = now.model();
            Weather before = Climate.smooth(model.pile(), model.pile().built().minusDays(EARLIER), whole.days());
            Ensemble earlier = usual.instead(model.builtIn(before, start), before, List.of());
            all.add(new PlanOutcome(Plan.BUILT_EARLIER, EARLIER, usual.gain(earlier, EARLIER)));
        }
        return all;
    }

    /**
     * What another way brings.
     *
     * @param plan which
     * @param day day on which it is done, counted from {@link #firstDay}; days earlier for an earlier build
     * @param gain what it wins, reckoned as that of a step is
     */
    public record PlanOutcome(Plan plan, int day, Gain gain) {}
}
