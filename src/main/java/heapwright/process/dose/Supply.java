package heapwright.process.dose;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Pile;
import java.time.Month;
import java.util.OptionalDouble;

/**
 * What can be had in a month without having it at hand: grass is not mown in winter, and leaves lie about in autumn and
 * winter only. The months are common practice in gardens with a winter.
 *
 * @param month the month of advice as north of the equator
 * @param mild whether grass grows all year: nearer to the equator than 45 degrees
 */
public record Supply(Month month, boolean mild) {

    private static final double MILD_BELOW_DEGREES = 45;

    private static final int HALF_A_YEAR = 6;

    /** What can be had on the day of advice. */
    public static Supply of(Pile pile) {
        OptionalDouble latitude = pile.place().latitude();
        Month month = pile.asOf().getMonth();
        return new Supply(
                latitude.orElse(1) < 0 ? month.plus(HALF_A_YEAR) : month,
                latitude.isPresent() && Math.abs(latitude.getAsDouble()) < MILD_BELOW_DEGREES);
    }

    boolean gives(Material material) {
        if (material.traits().contains(Trait.GRASS)) {
            return mild || month.compareTo(Month.MARCH) > 0 && month.compareTo(Month.DECEMBER) < 0;
        }
        boolean fallen = material.traits().contains(Trait.LEAVES) && material.group() == Material.Group.CARBON_RICH;
        return !fallen || month.compareTo(Month.SEPTEMBER) >= 0 || month.compareTo(Month.MARCH) <= 0;
    }
}
