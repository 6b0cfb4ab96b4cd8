package heapwright.advice.winter;

import heapwright.process.heat.Bands;
import heapwright.process.heat.Constants;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Retrace;
import heapwright.process.heat.Setup;
import heapwright.process.heat.Spread;
import heapwright.process.heat.Weather;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ForkJoinTask;

/**
 * What the past course of a pile says, by its core temperatures: the way it took, beside what the same pile made healthy
 * would have done in the same weather.
 *
 * @param now the pile and the way it took, corrected by what was measured
 * @param healthy core of the healthy pile day by day, 10th to 90th percentile
 * @param verdict what the temperatures say
 * @param held what held it back, day by day
 * @param factor what held it back most since it stalled
 * @param ifWrong the same, taken that something is wrong
 * @param atOnce where that is a fault beside its size or the weather, neither of which put right alone would have been
 *     enough: what it costs a cubic metre in mild weather
 * @param leaning in what degree each verdict is so
 * @param shortfallC kelvin by which the telling reading stands below the healthy band, 0 or more
 * @param telling of the readings since the pile was last hot, the one furthest below the healthy band, else the last
 */
public record Story(
        PileNow now,
        Bands healthy,
        Verdict verdict,
        HeldBack held,
        Factor factor,
        Factor ifWrong,
        Optional<JointFault> atOnce,
        VerdictDegrees leaning,
        double shortfallC,
        CoreReading telling) {

    private static final int SAMPLES = 16;
    /** A recipe from tables in a weather that is known but for its days. */
    private static final Spread DOUBT = new Spread(0.05, 0.15, 0.25, 0.20, 0.3, 0.35, 4, 0.25, 3, 1.0, 1.5);

    /** Differences are told in whole degrees; less than half of one is none. */
    private static final double LEAST_SHORT_K = 0.5;

    private static final int LATELY = 14;
    /**
     * Reads a pile's past.
     *
     * @param model the pile, with at least one measured core temperature
     */
    public static Story of(PileModel model) {
        // Beside each other: the one goes its way step by step, the other is many ways.
        ForkJoinTask<PileNow> way = ForkJoinTask.adapt(() -> PileNow.of(model)).fork();
        Bands asTold = healthy(model, Retrace.healthy(model.start()));
        PileNow now = way.join();
        Retrace past = now.past();
        PileState sound = past.healthyAs(model.start());
        Bands healthy = sound.stage().loss() < 1 ? healthy(model, sound) : asTold;
        CoreReading last = model.cores().get(model.cores().size() - 1);
        CoreReading telling = telling(model.cores(), healthy);
        double shortfall = Math.max(0, healthy.low()[telling.day()] - telling.celsius());
        Setup told = told(now);
        HeldBack held = held(now, told);
        int from = from(past.stalledOn(), model.warmOnce(), model.age());
        int to = to(last, from, model.age());
        Factor ifWrong = held.fault(from, to, model.events(), model.marks());
        VerdictDegrees leaning = VerdictDegrees.of(model, past, healthy, ifWrong.mendable());
        Verdict verdict = leaning.verdict(model.age());
        Factor alone =
                switch (verdict) {
                    case FINISHED -> Factor.FOOD;
                    case SOMETHING_WRONG -> ifWrong;
                    default -> past.stalledOn().isPresent() ? held.worst(from, to) : Factor.NONE;
                };
        Optional<JointFault> atOnce = JointFault.of(told, past.course(), alone, from, to);
        Factor factor = atOnce.map(JointFault::factor).orElse(alone);
        HeldBack blamed = atOnce.map(c -> held.blaming(c.factor(), from, to)).orElse(held);
        return new Story(now, healthy, verdict, blamed, factor, ifWrong, atOnce, leaning, shortfall, telling);
    }

    private static Setup told(PileNow now) {
        return now.model().setup().with(now.past().asSnug(now.model().start()));
    }

    private static HeldBack held(PileNow now, Setup told) {
        PileModel model = now.model();
        Weather before = Climate.smooth(model.pile(), model.pile().built().minusDays(PileOutlook.EARLIER), told.days());
        Setup earlier = told.with(model.builtIn(before, told.start())).in(before);
        return HeldBack.of(told, now.past().course(), Map.of(Factor.TIME, earlier));
    }

    /**
     * What held it back counts from the day it stalled; of a pile that was never measured warm, nor felt to be, from the
     * beginning, since that it was is the model's word alone; of a pile that is warm, of late.
     */
    static int from(OptionalInt stalledOn, WarmOnce warm, int age) {
        if (stalledOn.isPresent() && warm != WarmOnce.YES) {
            return 0;
        }
        return stalledOn.orElse(Math.max(0, age - LATELY));
    }

    /** And it counts for some days after the last reading; where that was warm, nothing is known of what came after. */
    static int to(CoreReading last, int from, int age) {
        boolean untold = from > last.day() && last.celsius() >= Retrace.STALLED_C;
        return untold ? last.day() : Math.min(age, last.day() + LATELY);
    }

    /** Whether the telling reading stands below the healthy band by what a thermometer shows. */
    public boolean colder() {
        return shortfallC >= LEAST_SHORT_K;
    }

    /** What each thing cost since it stalled up to its last reading, the dearest first; none of a pile that is warm. */
    public List<HeldBack.Cost> costs() {
        int from = from(past().stalledOn(), model().warmOnce(), model().age());
        CoreReading last = model().cores().get(model().cores().size() - 1);
        return past().stalledOn().isPresent() ? held.costs(from, to(last, from, model().age())) : List.of();
    }

    /** The pile file as the model takes it. */
    public PileModel model() {
        return now.model();
    }

    /** The way it took, corrected by what was measured. */
    public Retrace past() {
        return now.past();
    }

    private static Bands healthy(PileModel model, PileState sound) {
        return Ensemble.run(
                        sound,
                        model.climate().weather(),
                        Retrace.harmless(model.events()),
                        model.age() + 1,
                        Constants.standard(),
                        DOUBT,
                        SAMPLES)
                .core();
    }

    /**
     * Of the readings since the pile was last hot, the one furthest below the healthy band; the last one where none is
     * below it. A healthy pile goes cold too in the end, so the last reading alone may hide what went before.
     */
    static CoreReading telling(List<CoreReading> cores, Bands healthy) {
        CoreReading telling = cores.get(cores.size() - 1);
        double most = Math.max(0, healthy.low()[telling.day()] - telling.celsius());
        for (int i = cores.size() - 1; i >= 0 && cores.get(i).celsius() < VerdictDegrees.WARM_C; i--) {
            double here = healthy.low()[cores.get(i).day()] - cores.get(i).celsius();
            if (here > most) {
                most = here;
                telling = cores.get(i);
            }
        }
        return telling;
    }

    /** The first day since when the core has not been at 30 °C again; empty when it is now. */
    public OptionalInt stalledOn() {
        return past().stalledOn();
    }
}
