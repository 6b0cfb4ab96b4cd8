package heapwright.advice.engine;

import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Side;
import heapwright.advice.fact.Placed;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The edges at which the rules weigh a quantity, and how soft each is. Evidence does not jump where a figure passes a
 * limit: it grows evenly from nothing to its full weight over the width of the edge, with half of it at the limit itself.
 * The limits of danger are not among them; those are gates and stay hard.
 */
public final class Edges {

    /** From this degree on a state is taken to hold by the rules that know only yes and no. */
    static final double HALF = 0.5;

    /** Degrees that differ by less are equal; a figure that is at its limit is not beyond it. */
    private static final double EQUAL_WITHIN = 1e-9;

    /**
     * The edges of one quantity. All widths are judgement, from the doubt of the usual way to measure it.
     *
     * @param width width in the unit of the reading; 0 where it is counted in whole days and an edge is sharp
     * @param share more width, part of the limit's figure
     * @param limits the limits it is weighed at
     */
    private record Soft(double width, double share, List<Limit> limits) {}

    private static final Map<Reading, Soft> ALL = new EnumMap<>(Map.ofEntries(
            // Drying in a microwave oven is within 1 to 3 points either way (VICMW).
            Map.entry(
                    Reading.MOISTURE,
                    new Soft(
                            4,
                            0,
                            List.of(
                                    Limit.MOISTURE_STOPPED,
                                    Limit.MOISTURE_SLOW,
                                    Limit.MOISTURE_GOOD_LOW,
                                    Limit.MOISTURE_GOOD_HIGH,
                                    Limit.MOISTURE_OK_HIGH,
                                    Limit.MOISTURE_SATURATED))),
            // Tables of C:N differ by far more than a tenth for one and the same material.
            Map.entry(
                    Reading.CARBON_TO_NITROGEN,
                    new Soft(
                            0,
                            0.1,
                            List.of(
                                    Limit.CN_AMMONIA,
                                    Limit.CN_GOOD_LOW,
                                    Limit.CN_GOOD_HIGH,
                                    Limit.CN_SLOW,
                                    Limit.CN_STARVED,
                                    Limit.CN_FINISHED))),
            // The three published forms differ by up to eight points on one pile.
            Map.entry(
                    Reading.FREE_AIR_SPACE, new Soft(4, 0, List.of(Limit.FAS_BAD, Limit.FAS_POOR, Limit.FAS_DRAUGHTY))),
            // A bucket on bathroom scales is within a twentieth either way.
            Map.entry(Reading.WET_DENSITY, new Soft(0, 0.1, List.of(Limit.DENSITY_DENSE, Limit.DENSITY_GOOD_HIGH))),
            Map.entry(Reading.WOODY_SHARE, new Soft(0, 0.1, List.of(Limit.WOODY_SHARE_HIGH))),
            Map.entry(Reading.ASH_LOAD, new Soft(0, 0.2, List.of(Limit.ASH_MASS_MAX))),
            // A strip or a soil kit is within 0.2 either way.
            Map.entry(Reading.PH, new Soft(0.4, 0, List.of(Limit.PH_ACID, Limit.PH_AMMONIA))),
            // A thermometer is within 1 K either way, and a core differs by more from one hand's breadth to the next.
            Map.entry(
                    Reading.CORE_TEMPERATURE,
                    new Soft(
                            4,
                            0,
                            List.of(
                                    Limit.FREEZING,
                                    Limit.CORE_COLD,
                                    Limit.CORE_ACTIVE,
                                    Limit.CORE_SANITISING,
                                    Limit.CORE_OVERHEATED))),
            Map.entry(
                    Reading.PEAK_TEMPERATURE,
                    new Soft(4, 0, List.of(Limit.CORE_ACTIVE, Limit.CORE_SANITISING, Limit.CORE_OVERHEATED))),
            Map.entry(Reading.CORE_EXCESS, new Soft(4, 0, List.of(Limit.EXCESS_COLD))),
            Map.entry(
                    Reading.OUTDOOR_TEMPERATURE,
                    new Soft(2, 0, List.of(Limit.FREEZING, Limit.TURNING_FROST, Limit.MEAN_COLD_SEASON))),
            // Each side of a heap is measured to some three parts in a hundred.
            Map.entry(Reading.VOLUME, new Soft(0, 0.1, List.of(Limit.VOLUME_SMALL, Limit.VOLUME_WINTER))),
            Map.entry(Reading.HEIGHT, new Soft(0, 0.1, List.of(Limit.HEIGHT_MIN, Limit.HEIGHT_MAX))),
            Map.entry(
                    Reading.AGE,
                    new Soft(
                            0,
                            0,
                            List.of(
                                    Limit.AGE_YOUNG,
                                    Limit.AGE_HEATING,
                                    Limit.AGE_OLD,
                                    Limit.AGE_FINISHED,
                                    Limit.TURN_LONG_AGO))),
            Map.entry(
                    Reading.DAYS_SINCE_TURN, new Soft(0, 0, List.of(Limit.TURN_RECENT, Limit.TURN_LONG_AGO)))));

    private Edges() {}

    /** Whether rules may weigh a quantity at a limit. */
    public static boolean known(Reading reading, Limit limit) {
        return ALL.containsKey(reading) && ALL.get(reading).limits().contains(limit);
    }

    /** Where the quantities among some facts stand to the limits among them; only what is so in some degree. */
    static List<Placed> of(Collection<?> facts) {
        Map<Limit, LimitIs> limits = new EnumMap<>(Limit.class);
        for (Object fact : facts) {
            if (fact instanceof LimitIs limit) {
                limits.put(limit.limit(), limit);
            }
        }
        List<Placed> all = new ArrayList<>();
        for (Object fact : facts) {
            if (fact instanceof Reads reads && ALL.containsKey(reads.reading())) {
                Soft soft = ALL.get(reads.reading());
                for (Limit limit : soft.limits()) {
                    LimitIs edge = limits.get(limit);
                    if (edge != null) {
                        stand(reads, edge, soft, all);
                    }
                }
            }
        }
        return all;
    }

    private static void stand(Reads reads, LimitIs edge, Soft soft, List<Placed> all) {
        double width = soft.width() + soft.share() * Math.abs(edge.value());
        for (Side side : Side.values()) {
            double degree = degree(side.within(reads, edge.value()), width);
            if (degree > 0) {
                all.add(new Placed(reads, side, edge, degree));
            }
        }
    }

    /** The degree in which a figure is so far within a side of an edge of this width. */
    static double degree(double within, double width) {
        if (width <= 0) {
            return within > EQUAL_WITHIN ? 1 : 0;
        }
        return Math.max(0, Math.min(1, HALF + within / width));
    }

    /** Whether a degree is more than half. */
    static boolean rather(double degree) {
        return degree > HALF + EQUAL_WITHIN;
    }
}
