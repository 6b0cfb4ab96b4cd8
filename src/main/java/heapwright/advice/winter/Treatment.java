package heapwright.advice.winter;

import heapwright.knowledge.Material;
import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.mixture.Portion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What steps mean in the model, alone or taken together on one day. */
final class Treatment {

    /** Lukewarm. */
    private static final double WATER_C = 25;

    private final PileState now;
    private final double outdoorC;

    /**
     * Steps on a pile.
     *
     * @param now the pile
     * @param outdoorC outdoors on the day they are done, °C
     */
    Treatment(PileState now, double outdoorC) {
        this.now = now;
        this.outdoorC = outdoorC;
    }

    /**
     * A pile treated.
     *
     * @param start the pile the run starts from
     * @param events what is done to it
     */
    record Treated(PileState start, List<Event> events) {}

    /** Whether the model can try a step with these amounts. */
    boolean canTry(Remedy remedy, List<DoseAmount> doses) {
        return !events(remedy, doses, now.envelope()).isEmpty();
    }

    /** The pile with steps done today, in their order; those that the model cannot try are passed over. */
    Treated of(Map<Remedy, List<DoseAmount>> steps) {
        List<Event> events = new ArrayList<>();
        Envelope round = now.envelope();
        for (Map.Entry<Remedy, List<DoseAmount>> step : steps.entrySet()) {
            List<Event> more = events(step.getKey(), step.getValue(), round);
            for (Event event : more) {
                if (event instanceof Event.Cover cover) {
                    round = cover.envelope();
                }
            }
            events.addAll(more);
        }
        PileState start = steps.containsKey(Remedy.CHOP_COARSE)
                ? now.with(now.matter().withPieces(Math.max(0.5, now.matter().pieceCm() / 3)))
                : now;
        return new Treated(start, steps.size() > 1 ? inOneGo(events) : events);
    }

    /** Whether several of the steps open the pile, which one opening then does. */
    boolean opensTwice(Map<Remedy, List<DoseAmount>> steps) {
        return steps.entrySet().stream()
                        .filter(s -> events(s.getKey(), s.getValue(), now.envelope()).stream()
                                .anyMatch(Treatment::opens))
                        .count()
                > 1;
    }

    /**
     * Steps of one day as one piece of work: the pile is opened once, what is added lies in it before it is turned, and a
     * turning does what loosening would do.
     */
    private static List<Event> inOneGo(List<Event> events) {
        boolean turned =
                events.stream().anyMatch(e -> e instanceof Event.Turn || e instanceof Event.Add a && a.mixed());
        List<Event> once = new ArrayList<>();
        for (Event event : events) {
            if (event instanceof Event.Add add) {
                once.add(new Event.Add(add.day(), add.matter(), add.temperatureC(), false));
            } else if (!(event instanceof Event.Turn) && !(event instanceof Event.Loosen)) {
                once.add(event);
            }
        }
        if (turned) {
            once.add(new Event.Turn(0));
        } else if (events.stream().anyMatch(Event.Loosen.class::isInstance)) {
            once.add(new Event.Loosen(0));
        }
        return once;
    }

    private static boolean opens(Event event) {
        return event instanceof Event.Turn || event instanceof Event.Loosen || event instanceof Event.Add;
    }

    private List<Event> events(Remedy remedy, List<DoseAmount> doses, Envelope round) {
        List<DoseAmount> needed = doses.stream().filter(DoseAmount::isNeeded).toList();
        return switch (remedy) {
            case ADD_WATER, WATER_THE_CORE, SOAK_WOODY -> water(needed);
            case TURN_FULLY, MIX_THOROUGHLY, BREAK_UP_MATS, SPREAD_OUT_ACID_FOOD, CHOP_COARSE ->
                List.of(new Event.Turn(0));
            case LOOSEN_SIDES_AND_TOP, MAKE_AIR_HOLES -> List.of(new Event.Loosen(0));
            case MIX_IN_DRY_CARBON, BIND_WITH_CARBON, ADD_COARSE_BULKING, ADD_GREENS, ADD_MANURE, ADD_MEAL ->
                added(needed);
            case ADD_UREA, ADD_AMMONIUM_SULPHATE -> fed(needed);
            case INSULATE -> cover(Surroundings.insulated(round));
            case SHELTER_FROM_WIND -> cover(Surroundings.sheltered(round));
            case UNSEAL -> cover(Surroundings.unsealed(round));
            // A cover against rain is not tried: monthly means hold no rain, so the model would see only its cost.
            default -> List.of();
        };
    }

    private static List<Event> cover(Envelope envelope) {
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
                Matter matter = RecipeMatter.of(List.of(portion));
                events.add(new Event.Add(
                        0, matter, Warmth.of(List.of(portion), false).celsius(outdoorC), true));
            }
        }
        return events;
    }

    private static List<Event> fed(List<DoseAmount> doses) {
        List<Event> events = new ArrayList<>();
        for (DoseAmount dose : doses) {
            double nitrogen = dose.material().map(Treatment::nitrogenShare).orElse(0.0);
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
}
