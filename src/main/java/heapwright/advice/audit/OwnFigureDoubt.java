package heapwright.advice.audit;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Material;
import heapwright.pile.OwnMaterial;
import heapwright.pile.Pile;
import heapwright.process.mixture.CarbonCheck;
import heapwright.process.mixture.Materials;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A person's own C:N and nitrogen that can hardly belong to one sample, or that lie far from what is usual.
 *
 * @param material id of the material
 * @param name what the person calls it
 * @param carbonToNitrogen C:N in force
 * @param nitrogenPct nitrogen in force, percent of dry mass
 * @param check the carbon that the two imply
 * @param unusual whether one of them is far outside the usual range of the material it is like
 */
public record OwnFigureDoubt(
        String material, String name, double carbonToNitrogen, double nitrogenPct, CarbonCheck check, boolean unusual) {

    /** The doubtful pairs of a pile document, in its order. */
    static List<OwnFigureDoubt> doubtful(Pile pile, Map<String, Material> base, Materials materials) {
        List<OwnFigureDoubt> doubtful = new ArrayList<>();
        for (OwnMaterial own : pile.materials()) {
            if (own.nitrogenPct().isEmpty() && own.carbonToNitrogen().isEmpty()) {
                continue;
            }
            Material mine = materials.get(own.id());
            double ratio = mine.carbonToNitrogen().typical();
            double nitrogen =
                    own.nitrogenPct().isPresent() ? own.nitrogenPct().getAsDouble() : mine.typicalNitrogenPct();
            CarbonCheck check = CarbonCheck.of(ratio, nitrogen);
            boolean unusual = isUnusual(own, base.get(own.like()));
            if (check.verdict() != CarbonCheck.Verdict.POSSIBLE || unusual) {
                doubtful.add(new OwnFigureDoubt(own.id(), mine.name(), ratio, nitrogen, check, unusual));
            }
        }
        return doubtful;
    }

    private static boolean isUnusual(OwnMaterial own, Material like) {
        return like != null
                && (isUnusual(own.carbonToNitrogen(), like.carbonToNitrogen())
                        || isUnusual(own.nitrogenPct(), like.nitrogenPct()));
    }

    private static boolean isUnusual(OptionalDouble own, Figure usual) {
        return own.isPresent() && CarbonCheck.isUnusual(own.getAsDouble(), usual);
    }
}
