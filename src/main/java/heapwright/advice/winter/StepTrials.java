package heapwright.advice.winter;

import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import heapwright.process.heat.Bands;
import heapwright.process.heat.Day;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Spread;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tries steps in the model on the pile as it is now. One is for one advice and one thread. */
public final class StepTrials implements Effects {

    private static final int SAMPLES = 8;
    private static final int MOST_DAYS = 120;
    private static final int LEAST_DAYS = 60;

    private final PileModel model;
    private final Treatment treatment;
    /** A model that does not fit the pile has no days to tell of it. */
    private final boolean fits;

    private final Map<Remedy, Optional<Gain>> tried = new EnumMap<>(Remedy.class);
    private final Comparison comparison;

    /** Steps on the pile of a story. */
    public StepTrials(Story story) {
        this.model = story.model();
        PileState now = story.past().now();
        this.fits = now.stage().fits();
        this.treatment = new Treatment(now, model.weatherAhead().airC(0));
        int days = Math.max(LEAST_DAYS, Math.min(MOST_DAYS, model.ahead()));
        this.comparison = new Comparison(now, model.weatherAhead(), List.of(), days, Spread.usual(), SAMPLES);
    }

    @Override
    public Optional<Gain> of(Remedy remedy, List<DoseAmount> doses) {
        return tried.computeIfAbsent(
                remedy, r -> fits && canTry(r, doses) ? Optional.of(gain(Map.of(r, doses))) : Optional.empty());
    }

    private Gain gain(Map<Remedy, List<DoseAmount>> steps) {
        return comparison.gain(treated(steps));
    }

    private Ensemble treated(Map<Remedy, List<DoseAmount>> steps) {
        Treatment.Treated treated = treatment.of(steps);
        return comparison.with(treated.start(), treated.events());
    }

    /** Whether the model can try a step with these amounts. */
    public boolean canTry(Remedy remedy, List<DoseAmount> doses) {
        return treatment.canTry(remedy, doses);
    }

    /**
     * The course ahead with steps done today, beside the course without; the samples are those behind the gains, so one
     * step says here what it says there.
     *
     * @param steps the steps that the model can try, in the order in which they are done; may be none
     */
    public Trial together(Map<Remedy, List<DoseAmount>> steps) {
        Ensemble alone = comparison.alone();
        Optional<Trial.With> with = Optional.empty();
        if (!steps.isEmpty()) {
            Ensemble other = treated(steps);
            with = Optional.of(new Trial.With(other.core(), comparison.gain(other), treatment.opensTwice(steps)));
        }
        Bands outdoor = alone.bands(Day::outdoorC);
        return new Trial(model, alone.core(), outdoor, with);
    }
}
