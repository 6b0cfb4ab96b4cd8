package heapwright.advice.audit;

import heapwright.knowledge.Caution;
import java.time.LocalDate;
import java.util.List;

/**
 * How to build a pile, layer by layer.
 *
 * @param lengthM length of the footprint
 * @param widthM width of the footprint
 * @param heightM height when built
 * @param settledM height after the first weeks, before much of it has decayed
 * @param fit how it fills its container
 * @param base coarse stuff for the base; empty when the recipe has none
 * @param rounds how often the layers repeat
 * @param layers the layers of one round, from below
 * @param waterPerRound litres of water sprinkled on each round, to reach the aim
 * @param feeds fertiliser, given in doses and not as a layer
 * @param soak materials so dry that they are soaked first
 * @param cuts materials with pieces to be cut shorter first
 * @param looks the days to look at it first
 * @param turn the day to loosen or turn it first
 * @param cold whether a month below the edge of the cold season lies ahead
 * @param cautions what to beware of while building, the gravest first
 */
public record BuildPlan(
        double lengthM,
        double widthM,
        double heightM,
        double settledM,
        Fit fit,
        List<Layer> base,
        int rounds,
        List<Layer> layers,
        double waterPerRound,
        List<Feed> feeds,
        List<String> soak,
        List<Cut> cuts,
        List<LocalDate> looks,
        LocalDate turn,
        boolean cold,
        List<Caution> cautions) {
    public BuildPlan {
        base = List.copyOf(base);
        layers = List.copyOf(layers);
        feeds = List.copyOf(feeds);
        soak = List.copyOf(soak);
        cuts = List.copyOf(cuts);
        looks = List.copyOf(looks);
        cautions = List.copyOf(cautions);
    }

    /** How a pile fills its container. */
    public enum Fit {
        /** About full, or of no stated height. */
        FILLS,
        /** It leaves much of the container empty. */
        PART,
        /** More than the container holds. */
        OVER
    }

    /** What a layer is for; the order is the order from below. */
    public enum Role {
        BROWN,
        GREEN,
        SPRINKLE
    }

    /**
     * One material in one layer.
     *
     * @param material its id
     * @param role what it is for
     * @param litres how much goes into one layer, as filled by hand
     * @param kg the same by mass
     * @param thicknessCm how thick it lies when it has just been laid
     * @param times in how many rounds it goes in; little stuff goes into fewer than all
     */
    public record Layer(String material, Role role, double litres, double kg, double thicknessCm, int times) {}

    /**
     * Fertiliser in doses.
     *
     * @param material its id
     * @param kg all of it, kg
     * @param parts number of doses
     * @param litresEach volume of one dose, litres
     * @param kgEach mass of one dose, kg
     * @param waterLitres least water to dissolve one dose in, litres; zero for what does not dissolve
     * @param days the days to give it; the first is the day of building
     */
    public record Feed(
            String material,
            double kg,
            int parts,
            double litresEach,
            double kgEach,
            double waterLitres,
            List<LocalDate> days) {
        public Feed {
            days = List.copyOf(days);
        }
    }

    /**
     * Stuff to be cut.
     *
     * @param material its id
     * @param woody whether it takes secateurs or a shredder rather than a spade
     * @param fromCm shortest useful length, cm
     * @param toCm longest useful length, cm
     */
    public record Cut(String material, boolean woody, double fromCm, double toCm) {}
}
