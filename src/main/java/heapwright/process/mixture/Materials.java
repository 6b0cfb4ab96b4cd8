package heapwright.process.mixture;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Known;
import heapwright.knowledge.Material;
import heapwright.pile.OwnMaterial;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The materials that count for one pile: those of the knowledge base, with the person's own figures in their place.
 * Own figures are exact and known as measured.
 */
public final class Materials {

    /** Source key of figures that come from the pile file. */
    public static final String REPORTED = "REPORTED";

    /** Two statements of carbon, nitrogen and C:N agree when they differ by less than this share (rounding). */
    private static final double AGREES_WITHIN = 0.05;

    private final Map<String, Material> byId;

    private Materials(Map<String, Material> byId) {
        this.byId = byId;
    }

    /**
     * @param base materials of the knowledge base by id
     * @param own the person's own, in order; a later one may be like an earlier one
     * @throws IllegalArgumentException when an own material is like nothing known
     */
    public static Materials of(Map<String, Material> base, List<OwnMaterial> own) {
        Map<String, Material> all = new LinkedHashMap<>(base);
        for (OwnMaterial one : own) {
            Material model = all.get(all.containsKey(one.like()) ? one.like() : one.id());
            if (model == null) {
                throw new IllegalArgumentException("The material \"" + one.id() + "\" is said to be like \""
                        + one.like() + "\", which is not known. Maybe the id is misspelt.");
            }
            all.put(one.id(), override(model, one));
        }
        return new Materials(all);
    }

    public static Materials of(Map<String, Material> base) {
        return of(base, List.of());
    }

    public Optional<Material> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** @throws IllegalArgumentException when there is no such material */
    public Material get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException(
                "There is no material \"" + id + "\". Maybe describe it under \"materials\", like a known one."));
    }

    private static Material override(Material model, OwnMaterial own) {
        Material named = with(
                model,
                own.id(),
                own.name().isBlank() ? model.name() : own.name(),
                model.carbonToNitrogen(),
                model.carbonPct(),
                model.nitrogenPct(),
                model.nitrogenOnSameSample(),
                exactOr(own.moisturePct(), model.moisturePct()),
                exactOr(own.densityKgM3(), model.densityKgM3()));
        return chemistry(named, own);
    }

    /**
     * C:N and carbon are the primary pair; nitrogen counts where it was stated and agrees with them, and where it is
     * none: no C:N can say that.
     */
    private static Material chemistry(Material model, OwnMaterial own) {
        if (own.carbonToNitrogen().isEmpty()
                && own.carbonPct().isEmpty()
                && own.nitrogenPct().isEmpty()) {
            return model;
        }
        boolean nitrogenGiven = own.nitrogenPct().isPresent();
        boolean ratioGiven = own.carbonToNitrogen().isPresent();
        Figure carbon = exactOr(own.carbonPct(), model.carbonPct());
        Figure ratio = exactOr(own.carbonToNitrogen(), model.carbonToNitrogen());
        Figure nitrogen = exactOr(own.nitrogenPct(), model.nitrogenPct());
        if (nitrogenGiven && ratioGiven && own.carbonPct().isEmpty()) {
            carbon = exact(nitrogen.typical() * ratio.typical());
        } else if (nitrogenGiven && !ratioGiven && nitrogen.typical() > 0) {
            ratio = exact(carbon.typical() / nitrogen.typical());
        }
        boolean agree = nitrogenGiven && agree(carbon.typical(), nitrogen.typical() * ratio.typical());
        return with(
                model,
                model.id(),
                model.name(),
                ratio,
                carbon,
                nitrogen,
                agree || (nitrogenGiven && (ratio.typical() <= 0 || nitrogen.typical() <= 0)),
                model.moisturePct(),
                model.densityKgM3());
    }

    private static boolean agree(double one, double other) {
        return Math.abs(one - other) <= AGREES_WITHIN * Math.max(one, other);
    }

    private static Figure exactOr(OptionalDouble own, Figure otherwise) {
        return own.isPresent() ? exact(own.getAsDouble()) : otherwise;
    }

    private static Figure exact(double value) {
        return Figure.exact(value, REPORTED, Known.MEASURED);
    }

    private static Material with(
            Material model,
            String id,
            String name,
            Figure ratio,
            Figure carbon,
            Figure nitrogen,
            boolean sameSample,
            Figure moisture,
            Figure density) {
        return new Material(
                id,
                name,
                model.group(),
                model.aliases(),
                ratio,
                carbon,
                nitrogen,
                sameSample,
                moisture,
                density,
                model.ashPct(),
                model.ligninPctVs(),
                model.saltPct(),
                model.traits(),
                model.cautions(),
                model.keepOut(),
                model.note(),
                model.like());
    }
}
