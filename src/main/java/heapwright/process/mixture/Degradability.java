package heapwright.process.mixture;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;

/**
 * The part of a material's carbon that a pile can use within a season, as a fraction.
 *
 * <p>Where lignin is known, the low end is the lignin equation and the high end is all carbon outside the lignin, but
 * not above the equation's own 0.83: measured values (newsprint 0.28, wheat straw 0.55; CHAND80 through HAUG93, from
 * memory) lie between. Where lignin is not known, the kind of material decides: bands round the measured values of
 * corn stalks 0.77, manures 0.56 to 0.76 and straw 0.55 (same source); wood, leaves, starters and amendments are
 * judgement.
 */
public final class Degradability {

    private static final Band GREEN = new Band(0.60, 0.75, 0.83);
    private static final Band STRAW_AND_STALKS = new Band(0.45, 0.60, 0.77);
    private static final Band LEAVES = new Band(0.40, 0.60, 0.72);
    private static final Band MANURE = new Band(0.55, 0.65, 0.76);
    private static final Band WOOD = new Band(0.10, 0.30, 0.50);
    private static final Band STARTER = new Band(0.10, 0.20, 0.30);
    private static final Band SLOW_OR_UNKNOWN = new Band(0.00, 0.20, 0.50);

    private Degradability() {}

    /** Degradable fraction of carbon, 0 to 0.83. */
    public static Band of(Material material) {
        return material.ligninPctVs().map(Degradability::fromLignin).orElseGet(() -> fromKind(material));
    }

    /**
     * The part of a material's carbon, and of the nitrogen in it, that counts in the C:N of a season: all of it, but of
     * wood only what microbes can take up in that time, since its cellulose is closed to them inside the lignin. Ground
     * wood (newsprint) was measured at 0.28, which the lignin equation meets, while straw lies well above it (CHAND80
     * through HAUG93, from memory): so for wood the equation is likely, and the high end is that of wood in general.
     * Cause, audit, mend and dose all read it here.
     */
    public static Band reached(Material material) {
        return isWoody(material)
                ? material.ligninPctVs().map(Degradability::ofWood).orElse(WOOD)
                : Band.exact(1);
    }

    /** Whether the carbon is wood, of which a pile reaches only a part in time to need nitrogen for it. */
    public static boolean isWoody(Material material) {
        return material.group() == Material.Group.WOODY || material.traits().contains(Trait.WOODY);
    }

    private static Band fromLignin(Figure lignin) {
        double low = Equations.degradableFraction(lignin.high());
        double high = Math.min(Equations.degradableFraction(0), 1 - lignin.low() / 100);
        double likely = (Equations.degradableFraction(lignin.typical())
                        + Math.min(Equations.degradableFraction(0), 1 - lignin.typical() / 100))
                / 2;
        return Band.around(low, likely, high);
    }

    private static Band ofWood(Figure lignin) {
        return Band.around(
                Equations.degradableFraction(lignin.high()),
                Equations.degradableFraction(lignin.typical()),
                Math.max(WOOD.high(), Equations.degradableFraction(lignin.low())));
    }

    private static Band fromKind(Material material) {
        if (isWoody(material)) {
            return WOOD;
        }
        return switch (material.group()) {
            case NITROGEN_RICH, MEAL -> GREEN;
            case CARBON_RICH -> material.traits().contains(Trait.LEAVES) ? LEAVES : STRAW_AND_STALKS;
            case MANURE -> MANURE;
            case WOODY -> WOOD;
            case STARTER -> STARTER;
            case MINERAL, AMENDMENT, PROBLEM -> SLOW_OR_UNKNOWN;
        };
    }
}
