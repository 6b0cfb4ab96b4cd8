package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Material;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Density;
import java.util.List;
import java.util.Optional;

/**
 * How much of a remedy this pile needs, over all its parts together.
 *
 * @param dose which calculation
 * @param material what to use; empty for water, for fresh mix and where nothing serves
 * @param kg total mass, kg
 * @param litres total volume as filled by hand, litres
 * @param parts number of equal doses it is split into, 1 or more
 * @param intervalDays days between two doses, zero for a single one
 * @param carrierLitres water to dissolve each dose in, litres; zero where it is not dissolved
 * @param cap what held the amount down, if anything did
 * @param working the figures behind it
 */
public record DoseAmount(
        Dose dose,
        Optional<Material> material,
        Band kg,
        Band litres,
        int parts,
        int intervalDays,
        Band carrierLitres,
        Optional<Cap> cap,
        List<Term> working) {

    public DoseAmount {
        working = List.copyOf(working);
    }

    /** A single dose of a material by mass. */
    static DoseAmount ofMaterial(Dose dose, Material material, Band kg, Optional<Cap> cap, List<Term> working) {
        double litresPerKg = Density.LITRES_PER_M3 / Density.byHand(material).likely();
        return new DoseAmount(dose, Optional.of(material), kg, kg.times(litresPerKg), 1, 0, Band.ZERO, cap, working);
    }

    /** The whole need of a dose that a limit held down or struck out, where it is known and of a material. */
    public Optional<DoseAmount> whole() {
        return working.stream()
                .filter(term -> term.key() == Term.Key.FULL_NEED)
                .flatMap(term ->
                        material.stream().map(m -> ofMaterial(dose, m, term.value(), Optional.empty(), List.of())))
                .findFirst();
    }

    /** A single dose of a material by volume. */
    static DoseAmount ofVolume(Dose dose, Material material, Band litres, Optional<Cap> cap, List<Term> working) {
        double kgPerLitre = Density.byHand(material).likely() / Density.LITRES_PER_M3;
        return new DoseAmount(
                dose, Optional.of(material), litres.times(kgPerLitre), litres, 1, 0, Band.ZERO, cap, working);
    }

    /** A single dose of water. */
    static DoseAmount ofWater(Dose dose, Band litres, Optional<Cap> cap, List<Term> working) {
        return new DoseAmount(dose, Optional.empty(), litres, litres, 1, 0, Band.ZERO, cap, working);
    }

    /** Nothing to give, and why. */
    static DoseAmount none(Dose dose, Optional<Material> material, Cap cap, List<Term> working) {
        return new DoseAmount(dose, material, Band.ZERO, Band.ZERO, 1, 0, Band.ZERO, Optional.of(cap), working);
    }

    /** The same dose in a number of equal parts. */
    DoseAmount split(int into, int days, Band carrier) {
        return new DoseAmount(dose, material, kg, litres, into, into > 1 ? days : 0, carrier, cap, working);
    }

    /** The same held under a volume over all its parts, litres. */
    DoseAmount within(double mostLitres) {
        if (litres.high() <= mostLitres) {
            return this;
        }
        Band less = litres.atMost(mostLitres);
        double kgPerLitre = kg.likely() > 0 ? kg.likely() / litres.likely() : 0;
        boolean held = less.likely() < litres.likely();
        return new DoseAmount(
                dose,
                material,
                less.times(kgPerLitre),
                less,
                parts,
                intervalDays,
                carrierLitres,
                held ? Optional.of(Cap.SHARE_OF_PILE) : cap,
                working);
    }

    /** The same, held to so much by what was given before, kg; more than nothing. */
    DoseAmount atMostKg(double most) {
        double share = most / kg.likely();
        return new DoseAmount(
                dose,
                material,
                kg.times(share),
                litres.times(share),
                parts,
                intervalDays,
                carrierLitres,
                Optional.of(Cap.SEASON),
                working);
    }

    /** The same with one more figure behind it. */
    DoseAmount and(Term term) {
        return workedOutBy(
                Working.of(working).and(term.key(), term.value(), term.basis()).terms());
    }

    /** The same without the figures of one kind behind it. */
    DoseAmount without(Term.Key key) {
        return workedOutBy(working.stream().filter(term -> term.key() != key).toList());
    }

    private DoseAmount workedOutBy(List<Term> terms) {
        return new DoseAmount(dose, material, kg, litres, parts, intervalDays, carrierLitres, cap, terms);
    }

    /** Mass of one part, kg. */
    public Band kgEach() {
        return kg.times(1.0 / parts);
    }

    /** Volume of one part, litres. */
    public Band litresEach() {
        return litres.times(1.0 / parts);
    }

    /** Whether it gives a fair share of the need; true where the share is not known. */
    public boolean goesFar() {
        return working.stream()
                .filter(term -> term.key() == Term.Key.SHARE_OF_NEED)
                .allMatch(term -> term.value().likely() >= 100 * Ceiling.LEAST_SHARE);
    }

    /** True when there is something to give. */
    public boolean isNeeded() {
        return kg.likely() > 0 || litres.likely() > 0;
    }
}
