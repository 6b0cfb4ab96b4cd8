package heapwright.process.dose;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Pile;
import heapwright.process.climate.LocalYear;
import java.time.Month;
import java.util.OptionalDouble;

/**
 * What can be had on a day without having it at hand: grass is not mown in winter, and leaves lie about in autumn and
 * winter only. The months are common practice in gardens with a winter.
 *
 * @param month the month of advice as north of the equator
 * @param grassGrows whether grass grows on the day
 */
public record Supply(Month month, boolean grassGrows) {

    /** Grass grows from a daily mean of about this, °C (the usual base of the growing season; from memory). */
    private static final double GRASS_GROWS = 5;

    private static final int HALF_A_YEAR = 6;

    /** What can be had on the day of advice. */
    public static Supply of(Pile pile) {
        Month month = pile.asOf().getMonth();
        Month north = pile.place().latitude().orElse(1) < 0 ? month.plus(HALF_A_YEAR) : month;
        OptionalDouble mean = LocalYear.of(pile.place()).on(pile.asOf());
        return new Supply(
                north,
                mean.isPresent()
                        ? mean.getAsDouble() >= GRASS_GROWS
                        : north.compareTo(Month.MARCH) > 0 && north.compareTo(Month.DECEMBER) < 0);
    }

    /** Whether it can be had; what is neither mown nor raked can be had in any month. */
    public boolean gives(Material material) {
        if (material.traits().contains(Trait.GRASS)) {
            return grassGrows;
        }
        boolean fallen = material.traits().contains(Trait.LEAVES) && material.group() == Material.Group.CARBON_RICH;
        return !fallen || month.compareTo(Month.SEPTEMBER) >= 0 || month.compareTo(Month.MARCH) <= 0;
    }
}
