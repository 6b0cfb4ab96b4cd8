package heapwright.process.mixture;

import heapwright.pile.Container;
import heapwright.pile.Pile;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A size that cannot belong to what went in: one of the two figures, or its unit, is a slip. The person is asked which;
 * until then their size counts, and the recipe only says of what it is made.
 *
 * @param toldM3 the size as told, cubic metres
 * @param kilograms what went in, as it was, likely
 * @param settledM3 what that fills once it has settled, cubic metres, at the least
 * @param looseM3 what it fills as filled by hand, cubic metres, at the most
 */
public record SizeDoubt(double toldM3, double kilograms, double settledM3, double looseM3) {

    /**
     * A pile sinks to a third or a quarter of what went in over its life, and a container may stand three quarters
     * empty; beyond this many times either way the figures do not belong together (judgement).
     */
    private static final double MOST_TIMES = 5;

    /** Less than this is no pile to compare with: somebody is trying the program out, kg. */
    private static final double LEAST_KG = 0.001;

    /**
     * The doubt about the size of a pile; empty where size and recipe may both be right, or one of them is not told:
     * what was added later says nothing of what the pile was built from.
     */
    public static Optional<SizeDoubt> of(Pile pile, Materials materials) {
        List<Portion> bulk = PileMixture.portions(pile, materials).stream()
                .filter(p -> !Density.fillsGaps(p.material()))
                .toList();
        double kilograms = bulk.stream().mapToDouble(p -> p.kgWet().likely()).sum();
        // What fills a trench is the earth that goes back on top.
        boolean mostlyEarth = pile.container().kind() == Container.Kind.TRENCH;
        if (pile.recipe().isEmpty() || kilograms < LEAST_KG || mostlyEarth) {
            return Optional.empty();
        }
        double loose = bulk.stream().mapToDouble(p -> p.litres().high()).sum() / Density.LITRES_PER_M3;
        double settled = bulk.stream()
                .mapToDouble(
                        p -> p.kgWet().low() / Density.settled(p.material()).high())
                .sum();
        return told(pile)
                .filter(m3 -> m3 > MOST_TIMES * loose || m3 * MOST_TIMES < settled)
                .findFirst()
                .map(m3 -> new SizeDoubt(m3, kilograms, settled, loose));
    }

    /** Whether the size that counts is the one in doubt, and not another that was told beside it. */
    boolean doubts(PileSize size) {
        return size.volumeM3() == toldM3;
    }

    /** The size that counts, and the others that a file may tell beside it. */
    private static Stream<Double> told(Pile pile) {
        Container container = pile.container();
        Stream<Double> sides = container.lengthM().isPresent()
                        && container.widthM().isPresent()
                        && container.heightM().isPresent()
                ? Stream.of(container.lengthM().getAsDouble()
                        * container.widthM().getAsDouble()
                        * container.heightM().getAsDouble())
                : Stream.empty();
        return Stream.of(
                        PileSize.told(pile).stream().map(PileSize::volumeM3),
                        sides,
                        container.volumeM3().stream().boxed())
                .flatMap(one -> one);
    }
}
