package heapwright.advice.winter;

import heapwright.knowledge.Id;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Weather;
import java.util.List;

/** Another way for the winter ahead. Sizes of the changes are judgement. */
public enum Plan implements Id {
    BIGGER,
    INSULATED,
    FINER,
    WETTER,
    NITROGEN,
    BUILT_EARLIER,
    TURNED_NOW,
    TURNED_IN_TWO_WEEKS,
    TURNED_IN_SPRING;

    /** How thick straw or leaves are put round a pile that is insulated, cm. */
    public static final double INSULATION_CM = 20;

    private static final double MORE_WATER = 0.05;
    private static final double WETTEST = 0.62;
    private static final int TWO_WEEKS = 14;
    private static final double MILD_C = 8;
    private static final double RATIO = 25;
    private static final double WATER_C = 20;

    /**
     * A way to do it.
     *
     * @param start the pile it starts from
     * @param events what is done
     * @param day the day of it
     */
    record Way(PileState start, List<Event> events, int day) {}

    /** For a pile that can still be built otherwise. */
    List<Way> building(PileState s, Weather sky) {
        Matter m = s.matter();
        return switch (this) {
            case BIGGER -> way(LargerPile.pile(s, 2));
            case INSULATED -> way(s.with(Surroundings.insulated(s.envelope())));
            case FINER -> m.pieceCm() > 3 ? way(s.with(m.withPieces(m.pieceCm() / 2))) : List.of();
            case WETTER -> m.moisture() + MORE_WATER <= WETTEST ? List.of(new Way(s, List.of(water(m)), 0)) : List.of();
            case NITROGEN -> fed(s);
            case BUILT_EARLIER, TURNED_NOW -> List.of();
            case TURNED_IN_TWO_WEEKS -> turned(s, TWO_WEEKS);
            case TURNED_IN_SPRING -> turned(s, spring(sky));
        };
    }

    /** For a pile that stands. */
    List<Way> standing(PileState s, Weather sky) {
        Matter m = s.matter();
        return switch (this) {
            case BIGGER ->
                List.of(new Way(
                        s,
                        List.of(new Event.Add(
                                0,
                                Matter.of(m.volumeM3() / 2, 400, 0.57, 0.22, 0.38, 0.25, 28, 4),
                                Warmth.unknown().celsius(sky.airC(0)),
                                false)),
                        0));
            case FINER ->
                m.pieceCm() > 3
                        ? List.of(new Way(s.with(m.withPieces(m.pieceCm() / 2)), List.of(new Event.Turn(0)), 0))
                        : List.of();
            case TURNED_NOW -> turned(s, 0);
            case TURNED_IN_TWO_WEEKS -> List.of();
            case INSULATED, WETTER, NITROGEN, BUILT_EARLIER, TURNED_IN_SPRING -> building(s, sky);
        };
    }

    private static List<Way> way(PileState start) {
        return List.of(new Way(start, List.of(), 0));
    }

    private static List<Way> turned(PileState s, int day) {
        return day < 0 ? List.of() : List.of(new Way(s, List.of(new Event.Turn(day)), day));
    }

    private static Event water(Matter m) {
        double share = m.moisture() + MORE_WATER;
        return new Event.Water(0, m.dryKg() * share / (1 - share) - m.waterKg(), WATER_C);
    }

    private static List<Way> fed(PileState s) {
        Matter m = s.matter();
        double organic = m.dryKg() * (m.quickShare() + m.slowShare() + m.ligninShare());
        double lacking = organic / 2 / RATIO - m.nitrogenKg();
        return lacking <= 0
                ? List.of()
                : List.of(new Way(s, List.of(new Event.Feed(0, lacking, Math.max(1, 20 * lacking), WATER_C)), 0));
    }

    /** First mild day after a cold one, or −1. */
    private static int spring(Weather sky) {
        boolean cold = false;
        for (int day = 0; day < sky.days(); day++) {
            cold |= sky.airC(day) < MILD_C - 3;
            if (cold && day >= TWO_WEEKS && sky.airC(day) >= MILD_C) {
                return day;
            }
        }
        return -1;
    }
}
