package heapwright.advice.winter;

import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Range;
import heapwright.process.heat.Retrace;
import heapwright.process.heat.Spread;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What, done otherwise when the pile was built, would have kept it warm up to now.
 *
 * @param choice what
 * @param moreWarmDays more days with the core at 40 °C or above
 * @param warmerC kelvin by which the core would have been warmer on average
 */
public record Hindsight(Choice choice, Range moreWarmDays, Range warmerC) {

    private static final int SAMPLES = 8;

    /** Where so many samples stay below what counts, the median of all does, and the others need not be run. */
    private static final int TELLING = SAMPLES / 2 + 1;

    private static final double LEAST_DAYS = 2;
    private static final double LEAST_K = 2;
    private static final int SHOWN = 3;
    private static final int EARLIER = 28;

    /** The changes that would clearly have helped, the best first; at most three. */
    public static List<Hindsight> of(Story story) {
        PileModel model = story.model();
        if (model.age() < 7) {
            return List.of();
        }
        PileState start = corrected(model);
        Weather weather = model.climate().weather();
        Comparison few = new Comparison(start, weather, model.events(), model.age() + 1, Spread.measured(), TELLING);
        List<Begun> promising = new ArrayList<>();
        for (Choice choice : Choice.values()) {
            Built other = choice == Choice.EARLIER ? null : choice.built(start, model.events());
            if (other != null) {
                begin(promising, few, choice, other, weather);
            }
        }
        Weather before = Climate.smooth(model.pile(), model.pile().built().minusDays(EARLIER), model.age() + 1);
        Built sooner = new Built(model.builtIn(before, start), Retrace.harmless(model.events()));
        begin(promising, few, Choice.EARLIER, sooner, before);
        if (promising.isEmpty()) {
            return List.of();
        }
        Comparison whole = few.of(SAMPLES);
        List<Hindsight> all = new ArrayList<>();
        promising.forEach(p -> add(all, p.choice, whole.gain(p.whole(whole))));
        return all.stream()
                .sorted(Comparator.comparingDouble((Hindsight h) -> -h.moreWarmDays.likely() - h.warmerC.likely() / 10)
                        .thenComparing(Hindsight::choice))
                .limit(SHOWN)
                .toList();
    }

    private static void begin(List<Begun> promising, Comparison few, Choice choice, Built built, Weather weather) {
        Ensemble first = few.instead(built.start, weather, built.events);
        if (few.reaches(LEAST_DAYS, first, Comparison::moreWarmDays)
                && few.reaches(LEAST_K, first, Comparison::warmer)) {
            promising.add(new Begun(choice, built, weather, first));
        }
    }

    /** A choice of which the first samples have been run, and do not rule it out. */
    private record Begun(Choice choice, Built built, Weather weather, Ensemble first) {
        private Ensemble whole(Comparison comparison) {
            return comparison.instead(first, built.start, weather, built.events);
        }
    }

    private static void add(List<Hindsight> all, Choice choice, Gain gain) {
        if (gain.moreWarmDays().likely() >= LEAST_DAYS && gain.warmerC().likely() >= LEAST_K) {
            all.add(new Hindsight(choice, gain.moreWarmDays(), gain.warmerC()));
        }
    }

    /** The pile as built, with the water and acid that it had from the start by what was measured. */
    private static PileState corrected(PileModel model) {
        Matter m = model.start().matter();
        for (StateMark mark : model.marks()) {
            if (mark.day() == 0) {
                double share = mark.moisture().orElse(m.moisture());
                m = new Matter(
                        m.dryKg(),
                        m.dryKg() * share / (1 - share),
                        m.quickShare(),
                        m.slowShare(),
                        m.ligninShare(),
                        m.nitrogenKg(),
                        m.mineralNitrogenKg(),
                        m.volumeM3(),
                        m.pieceCm(),
                        mark.acidIndex().orElse(m.acidIndex()));
            }
        }
        return model.start().with(m);
    }

    /**
     * A pile built otherwise.
     *
     * @param start as built
     * @param events what was done after
     */
    record Built(PileState start, List<Event> events) {}
}
