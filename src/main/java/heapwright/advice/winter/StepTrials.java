package heapwright.advice.winter;

import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import heapwright.process.heat.Bands;
import heapwright.process.heat.Day;
import heapwright.process.heat.Ensemble;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tries steps in the model on the pile as it is now. One is for one advice and one thread. */
public final class StepTrials implements Effects {

    private final PileNow now;
    private final Treatment treatment;

    private final Map<Remedy, Optional<Gain>> tried = new EnumMap<>(Remedy.class);
    /** Several steps may be the same to the model, as all that turn the pile are. */
    private final Map<Treatment.Treated, Gain> same = new HashMap<>();

    /** By the days looked at: run when the first step is tried. */
    private final Map<Integer, Comparison> alone = new HashMap<>();

    /** Steps on a pile. */
    public StepTrials(PileNow now) {
        this.now = now;
        this.treatment = new Treatment(now.state(), now.sky().airC(0));
    }

    @Override
    public Optional<Gain> of(Remedy remedy, List<DoseAmount> doses) {
        return tried.computeIfAbsent(
                remedy, r -> canTry(r, doses) ? Optional.of(gain(Map.of(r, doses))) : Optional.empty());
    }

    private Comparison comparison() {
        return alone.computeIfAbsent(now.window(), days -> now.alone(days, PileNow.SAMPLES_A_WAY));
    }

    private Gain gain(Map<Remedy, List<DoseAmount>> steps) {
        return same.computeIfAbsent(
                treatment.of(steps), t -> comparison().gain(comparison().with(t.start(), t.events())));
    }

    private Ensemble treated(Map<Remedy, List<DoseAmount>> steps) {
        Treatment.Treated treated = treatment.of(steps);
        return comparison().with(treated.start(), treated.events());
    }

    /** Whether the model is one of this pile: else it can try nothing on it. */
    public boolean fits() {
        return now.fits();
    }

    /** Whether the model can try a step with these amounts. */
    public boolean canTry(Remedy remedy, List<DoseAmount> doses) {
        return fits() && treatment.canTry(remedy, doses);
    }

    /**
     * The course ahead with steps done today, beside the course without; the samples are those behind the gains, so one
     * step says here what it says there.
     *
     * @param steps the steps that the model can try, in the order in which they are done; may be none
     */
    public Trial together(Map<Remedy, List<DoseAmount>> steps) {
        Ensemble left = comparison().alone();
        Optional<Trial.With> with = Optional.empty();
        if (!steps.isEmpty()) {
            Ensemble other = treated(steps);
            with = Optional.of(new Trial.With(other.core(), comparison().gain(other), treatment.opensTwice(steps)));
        }
        Bands outdoor = left.bands(Day::outdoorC);
        return new Trial(now.model(), now.fits(), now.missK(), left.core(), outdoor, with);
    }
}
