package heapwright.advice.engine;

import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Placed;
import heapwright.advice.fact.Reads;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Side;
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
     * Edges of one quantity that are equally soft. All widths are judgement, from the doubt of the usual way to measure it.
     *
     * @param reading the quantity
     * @param width width in the unit of the reading; 0 where it is counted in whole days and an edge is sharp
     * @param share more width, part of the limit's figure
     * @param limits the limits it is weighed at
     */
    private record Soft(Reading reading, double width, double share, List<Limit> limits) {}

    private static final List<Soft> ALL = List.of(
            // Drying in a microwave oven is within 1 to 3 points either way (VICMW).
            new Soft(
                    Reading.MOISTURE,
                    4,
                    0,
                    List.of(
                            Limit.MOISTURE_SLOW,
                            Limit.MOISTURE_GOOD_LOW,
                            Limit.MOISTURE_GOOD_HIGH,
                            Limit.MOISTURE_OK_HIGH,
                            Limit.MOISTURE_SATURATED)),
            // Tables of C:N differ by far more than a tenth for one and the same material.
            new Soft(
                    Reading.CARBON_TO_NITROGEN,
                    0,
                    0.1,
                    List.of(Limit.CN_AMMONIA, Limit.CN_GOOD_LOW, Limit.CN_GOOD_HIGH, Limit.CN_SLOW, Limit.CN_STARVED)),
            // The three published forms differ by up to eight points on one pile.
            new Soft(Reading.FREE_AIR_SPACE, 4, 0, List.of(Limit.FAS_BAD, Limit.FAS_DRAUGHTY)),
            // A bucket on bathroom scales is within a twentieth either way.
            new Soft(Reading.WET_DENSITY, 0, 0.1, List.of(Limit.DENSITY_DENSE, Limit.DENSITY_GOOD_HIGH)),
            new Soft(Reading.WOODY_SHARE, 0, 0.1, List.of(Limit.WOODY_SHARE_HIGH)),
            new Soft(Reading.COARSE_SHARE, 0, 0.2, List.of(Limit.COARSE_SHARE_LOW)),
            new Soft(Reading.ASH_LOAD, 0, 0.2, List.of(Limit.ASH_MASS_MAX)),
            new Soft(Reading.SALT_LOAD, 0, 0.2, List.of(Limit.SALT_LOAD_MAX)),
            // A strip or a soil kit is within 0.2 either way.
            new Soft(Reading.PH, 0.4, 0, List.of(Limit.PH_ACID, Limit.PH_AMMONIA)),
            // A thermometer is within 1 K either way, and a core differs by more from one hand's breadth to the next.
            new Soft(
                    Reading.CORE_TEMPERATURE,
                    5,
                    0,
                    List.of(Limit.CORE_COLD, Limit.CORE_ACTIVE, Limit.CORE_SANITISING, Limit.CORE_OVERHEATED)),
            // Ice holds a core at one temperature, so the thermometer is most of the doubt.
            new Soft(Reading.CORE_TEMPERATURE, 4, 0, List.of(Limit.FREEZING)),
            new Soft(
                    Reading.PEAK_TEMPERATURE,
                    5,
                    0,
                    List.of(Limit.CORE_ACTIVE, Limit.CORE_SANITISING, Limit.CORE_OVERHEATED)),
            new Soft(Reading.CORE_EXCESS, 5, 0, List.of(Limit.EXCESS_COLD, Limit.EXCESS_WORKING)),
            new Soft(
                    Reading.OUTDOOR_TEMPERATURE,
                    2,
                    0,
                    List.of(Limit.FREEZING, Limit.TURNING_FROST, Limit.MEAN_COLD_SEASON)),
            new Soft(Reading.USUAL_OUTDOOR_TEMPERATURE, 4, 0, List.of(Limit.MEAN_COLD_SEASON)),
            new Soft(Reading.COLDEST_SOON, 4, 0, List.of(Limit.MEAN_COLD_SEASON)),
            new Soft(Reading.COLDEST_NEXT, 4, 0, List.of(Limit.MEAN_COLD_SEASON)),
            // Each side of a heap is measured to some three parts in a hundred.
            new Soft(Reading.VOLUME, 0, 0.1, List.of(Limit.VOLUME_SMALL)),
            new Soft(Reading.HEIGHT, 0, 0.1, List.of(Limit.HEIGHT_MIN, Limit.HEIGHT_MAX, Limit.HAND_HEIGHT)),
            new Soft(Reading.AGE, 0, 0, List.of(Limit.AGE_YOUNG, Limit.AGE_HEATING, Limit.AGE_OLD, Limit.AGE_FINISHED)),
            new Soft(Reading.DAYS_SINCE_TURN, 0, 0, List.of(Limit.TURN_RECENT, Limit.TURN_LONG_AGO)),
            new Soft(Reading.OPENINGS, 0, 0, List.of(Limit.OPENINGS_MANY)),
            new Soft(Reading.OPENINGS_OF_A_FORTNIGHT, 0, 0, List.of(Limit.OPENINGS_OF_A_FORTNIGHT_MANY)));

    private Edges() {}

    /** Whether rules may weigh a quantity at a limit. */
    public static boolean known(Reading reading, Limit limit) {
        return ALL.stream().anyMatch(s -> s.reading() == reading && s.limits().contains(limit));
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
            if (fact instanceof Reads reads) {
                ALL.stream()
                        .filter(soft -> soft.reading() == reads.reading())
                        .forEach(soft -> soft.limits().stream()
                                .filter(limits::containsKey)
                                .forEach(limit -> stand(reads, limits.get(limit), soft, all)));
            }
        }
        return all;
    }

    private static void stand(Reads reads, LimitIs edge, Soft soft, List<Placed> all) {
        double width = soft.width() + soft.share() * Math.abs(edge.value());
        for (Side side : Side.values()) {
            double degree = degree(reads.within(side, edge.value()), width);
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
