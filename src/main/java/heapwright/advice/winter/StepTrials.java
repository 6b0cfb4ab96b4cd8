package heapwright.advice.winter;

import heapwright.knowledge.Material;
import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Spread;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.Portion;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tries steps in the model on the pile as it is now. One is for one advice and one thread. */
public final class StepTrials implements Effects {

    private static final int SAMPLES = 8;
    private static final int MOST_DAYS = 120;
    private static final int LEAST_DAYS = 60;
    /** Lukewarm. */
    private static final double WATER_C = 25;

    private final PileModel model;
    private final PileState now;
    private final Map<Remedy, Optional<Gain>> tried = new EnumMap<>(Remedy.class);
    private final Comparison comparison;

    /** Steps on the pile of a story. */
    public StepTrials(Story story) {
        this.model = story.model();
        this.now = story.past().now();
        int days = Math.max(LEAST_DAYS, Math.min(MOST_DAYS, model.ahead()));
        this.comparison = new Comparison(now, model.weatherAhead(), List.of(), days, Spread.usual(), SAMPLES);
    }

    @Override
    public Optional<Gain> of(Remedy remedy, List<DoseAmount> doses) {
        return tried.computeIfAbsent(remedy, r -> trial(r, doses));
    }

    private Optional<Gain> trial(Remedy remedy, List<DoseAmount> doses) {
        List<Event> events = events(remedy, doses);
        if (events.isEmpty()) {
            return Optional.empty();
        }
        PileState start = remedy == Remedy.CHOP_COARSE
                ? now.with(now.matter().withPieces(Math.max(0.5, now.matter().pieceCm() / 3)))
                : now;
        return Optional.of(comparison.gain(comparison.with(start, events)));
    }

    private List<Event> events(Remedy remedy, List<DoseAmount> doses) {
        List<DoseAmount> needed = doses.stream().filter(DoseAmount::isNeeded).toList();
        return switch (remedy) {
            case ADD_WATER, WATER_THE_CORE, SOAK_WOODY -> water(needed);
            case TURN_FULLY, MIX_THOROUGHLY, BREAK_UP_MATS, SPREAD_OUT_ACID_FOOD, CHOP_COARSE ->
                List.of(new Event.Turn(0));
            case LOOSEN_SIDES_AND_TOP, MAKE_AIR_HOLES -> List.of(new Event.Loosen(0));
            case MIX_IN_DRY_CARBON, BIND_WITH_CARBON, ADD_COARSE_BULKING, ADD_GREENS, ADD_MANURE, ADD_MEAL ->
                added(needed);
            case ADD_UREA, ADD_AMMONIUM_SULPHATE -> fed(needed);
            case INSULATE -> cover(Surroundings.insulated(now.envelope()));
            case SHELTER_FROM_WIND -> cover(Surroundings.sheltered(now.envelope()));
            case UNSEAL -> cover(Surroundings.unsealed(now.envelope()));
            // A cover against rain is not tried: monthly means hold no rain, so the model would see only its cost.
            default -> List.of();
        };
    }

    private static List<Event> cover(heapwright.process.heat.Envelope envelope) {
        return List.of(new Event.Cover(0, envelope));
    }

    private static List<Event> water(List<DoseAmount> doses) {
        List<Event> events = new ArrayList<>();
        for (DoseAmount dose : doses) {
            for (int part = 0; part < dose.parts(); part++) {
                events.add(new Event.Water(
                        part * dose.intervalDays(), dose.litresEach().likely(), WATER_C));
            }
        }
        return events;
    }

    private List<Event> added(List<DoseAmount> doses) {
        List<Event> events = new ArrayList<>();
        for (DoseAmount dose : doses) {
            if (dose.material().isPresent() && dose.kg().likely() > 0.01) {
                Portion portion =
                        Portion.ofKilograms(dose.material().get(), dose.kg().likely());
                Matter matter = Stuff.of(List.of(portion), Observed.nothing(), OptionalDouble.empty());
                events.add(new Event.Add(0, matter, outdoors(), true));
            }
        }
        return events;
    }

    private static List<Event> fed(List<DoseAmount> doses) {
        List<Event> events = new ArrayList<>();
        for (DoseAmount dose : doses) {
            double nitrogen = dose.material().map(StepTrials::nitrogenShare).orElse(0.0);
            for (int part = 0; part < dose.parts(); part++) {
                events.add(new Event.Feed(
                        part * dose.intervalDays(),
                        dose.kgEach().likely() * nitrogen,
                        Math.max(1, dose.carrierLitres().likely()),
                        WATER_C));
            }
        }
        return events;
    }

    private static double nitrogenShare(Material material) {
        return (1 - material.moisturePct().typical() / 100) * material.typicalNitrogenPct() / 100;
    }

    private double outdoors() {
        return Math.max(-10, Math.min(25, model.weatherAhead().airC(0)));
    }
}
