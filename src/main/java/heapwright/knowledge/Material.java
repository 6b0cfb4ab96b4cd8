package heapwright.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A material that may go into a pile, or must stay out of it.
 *
 * <p>Carbon and C:N are the primary pair; nitrogen is carbon divided by C:N unless it was measured on the same sample
 * (or there is no carbon, as in fertilisers), because published mean N and mean C:N often come from different samples.
 *
 * @param id its id
 * @param name its name
 * @param group what kind of material it is
 * @param aliases what people also call it
 * @param carbonToNitrogen C:N by mass of dry matter; zero where there is no organic carbon
 * @param carbonPct total carbon, percent of dry mass
 * @param nitrogenPct total nitrogen, percent of dry mass, as the source prints it
 * @param nitrogenOnSameSample whether that nitrogen belongs to the same sample as the C:N
 * @param moisturePct moisture, percent of wet mass
 * @param densityKgM3 bulk density as it lies, kg per cubic metre: loose, settled, packed
 * @param ashPct ash, percent of dry mass, where known
 * @param ligninPctVs lignin, percent of volatile solids, where known
 * @param saltPct salt, percent of dry mass, where known
 * @param traits what it does in a pile
 * @param cautions cautions that go with handling it
 * @param keepOut why and when it must stay out; empty for what may go in
 * @param note what to know about the figures
 * @param like id of the material of the table whose ranges it has; its own, unless a person described it
 */
public record Material(
        String id,
        String name,
        Group group,
        List<String> aliases,
        Figure carbonToNitrogen,
        Figure carbonPct,
        Figure nitrogenPct,
        boolean nitrogenOnSameSample,
        Figure moisturePct,
        Figure densityKgM3,
        Optional<Figure> ashPct,
        Optional<Figure> ligninPctVs,
        Optional<Figure> saltPct,
        Set<Trait> traits,
        List<Caution> cautions,
        Optional<KeepOut> keepOut,
        String note,
        String like) {

    private static final double PERCENT = 100;

    public Material {
        aliases = List.copyOf(aliases);
        traits = Set.copyOf(traits);
        cautions = List.copyOf(cautions);
    }

    /** A material of the table. */
    public Material(
            String id,
            String name,
            Group group,
            List<String> aliases,
            Figure carbonToNitrogen,
            Figure carbonPct,
            Figure nitrogenPct,
            boolean nitrogenOnSameSample,
            Figure moisturePct,
            Figure densityKgM3,
            Optional<Figure> ashPct,
            Optional<Figure> ligninPctVs,
            Optional<Figure> saltPct,
            Set<Trait> traits,
            List<Caution> cautions,
            Optional<KeepOut> keepOut,
            String note) {
        this(
                id,
                name,
                group,
                aliases,
                carbonToNitrogen,
                carbonPct,
                nitrogenPct,
                nitrogenOnSameSample,
                moisturePct,
                densityKgM3,
                ashPct,
                ligninPctVs,
                saltPct,
                traits,
                cautions,
                keepOut,
                note,
                id);
    }

    /** What kind of material it is. */
    public enum Group implements Id {
        CARBON_RICH,
        NITROGEN_RICH,
        WOODY,
        MANURE,
        MEAL,
        STARTER,
        MINERAL,
        AMENDMENT,
        PROBLEM
    }

    /** How firmly a material must stay out. */
    public enum Bar implements Id {
        /** Never in a home pile. */
        NEVER,
        /** Only where the pile surely gets hot throughout. */
        ONLY_HOT,
        /** Only in small amounts or with a condition that {@link KeepOut#reason()} names. */
        WITH_CARE,
        /** Not until a test has passed. */
        AFTER_TEST
    }

    /**
     * Why a material must stay out.
     *
     * @param bar how firmly
     * @param kind the class it belongs to
     * @param reason one sentence to the person
     * @param instead what to do with it instead
     */
    public record KeepOut(Bar bar, KeepOutClass kind, String reason, String instead) {}

    /** All its figures. */
    public List<Figure> figures() {
        return Stream.concat(
                        Stream.of(carbonToNitrogen, carbonPct, nitrogenPct, moisturePct, densityKgM3),
                        Stream.of(ashPct, ligninPctVs, saltPct).flatMap(Optional::stream))
                .toList();
    }

    /** Organic matter is so many times its carbon (CORNC, published; stated accuracy 2 to 10 %). */
    public static final double ORGANIC_PER_CARBON = 1.8;

    /** The most carbon that its typical ash leaves room for, percent of dry mass; of fat and of char there may be more. */
    public double mostCarbonPct() {
        return (100 - ashPct.map(Figure::typical).orElse(0.0)) / ORGANIC_PER_CARBON;
    }

    /** Nitrogen in percent of dry mass at the typical figures: measured where it belongs to the sample, else C divided by C:N. */
    public double typicalNitrogenPct() {
        return nitrogenOnSameSample || carbonToNitrogen.typical() <= 0
                ? nitrogenPct.typical()
                : carbonPct.typical() / carbonToNitrogen.typical();
    }

    /**
     * Salt that it brings to plants, as a share of its dry mass, 0–1: all of it where the share of salted stuff is not
     * known. Food brings none: it is salted to be eaten, and thinned in the pile.
     */
    public double saltShare() {
        boolean salted = traits.contains(Trait.SALTED) || traits.contains(Trait.SODIUM);
        return salted && !traits.contains(Trait.COOKED)
                ? saltPct.map(Figure::typical).orElse(PERCENT) / PERCENT
                : 0;
    }
}
