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
 * @param told which of the two the person told; the other follows from the carbon that is usual
 * @param check the carbon that the two imply
 * @param unusual whether one of them is far outside the usual range of the material it is like
 */
public record OwnFigureDoubt(
        String material,
        String name,
        double carbonToNitrogen,
        double nitrogenPct,
        Told told,
        CarbonCheck check,
        boolean unusual) {

    /** Which figures are the person's own. */
    public enum Told {
        RATIO,
        NITROGEN,
        BOTH;

        static Told of(OwnMaterial own) {
            return own.nitrogenPct().isEmpty() ? RATIO : own.carbonToNitrogen().isEmpty() ? NITROGEN : BOTH;
        }
    }

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
            // No C:N can say that there is no nitrogen, so there is no pair to check.
            boolean pair = nitrogen > 0 || own.carbonToNitrogen().isPresent();
            CarbonCheck check = pair
                    ? CarbonCheck.of(ratio, nitrogen)
                    : new CarbonCheck(mine.carbonPct().typical(), CarbonCheck.Verdict.POSSIBLE);
            boolean unusual = isUnusual(own, base.get(own.like()));
            if (check.verdict() != CarbonCheck.Verdict.POSSIBLE || unusual) {
                doubtful.add(new OwnFigureDoubt(own.id(), mine.name(), ratio, nitrogen, Told.of(own), check, unusual));
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
