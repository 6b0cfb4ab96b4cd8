package heapwright.advice.audit;

import heapwright.knowledge.Caution;
import heapwright.process.mixture.Band;
import java.util.List;

/**
 * How to build a pile, layer by layer.
 *
 * @param lengthM length of the footprint
 * @param widthM width of the footprint
 * @param heightM height when built, as it lies
 * @param base coarse stuff for the base; empty when the recipe has none
 * @param rounds how often the layers repeat
 * @param layers the layers of one round, from below
 * @param waterPerRound litres of water sprinkled on each round, to reach the aim
 * @param soak materials so dry that they are soaked first
 * @param cut materials with pieces to be cut shorter first
 * @param cautions what to beware of while building, the gravest first
 */
public record BuildPlan(
        double lengthM,
        double widthM,
        double heightM,
        List<Layer> base,
        int rounds,
        List<Layer> layers,
        Band waterPerRound,
        List<String> soak,
        List<String> cut,
        List<Caution> cautions) {
    public BuildPlan {
        base = List.copyOf(base);
        layers = List.copyOf(layers);
        soak = List.copyOf(soak);
        cut = List.copyOf(cut);
        cautions = List.copyOf(cautions);
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
     * @param thicknessCm how thick it lies when settled
     */
    public record Layer(String material, Role role, double litres, double kg, double thicknessCm) {}
}
