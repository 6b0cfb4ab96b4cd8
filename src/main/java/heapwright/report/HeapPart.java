package heapwright.report;

import heapwright.knowledge.Dose;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * An amount that nobody carts in a day, told for a part of the heap that one person works in a day.
 *
 * @param parts into how many parts the heap is taken
 * @param m3 how much of the heap a part is, cubic metres; empty where the size is not known or all is worked on top
 */
record HeapPart(int parts, OptionalDouble m3) {

    /** What one person carts to a heap and forks in on one day, litres: ten barrows; judgement. */
    private static final double DAY_L = 800;

    /** The same where it is heavy, kg; judgement. */
    private static final double DAY_KG = 300;

    /** So much of a heap one person forks over in a day, cubic metres; judgement. */
    private static final double DAY_M3 = 1.5;

    /** The parts that have a name people use, the largest part first. */
    private static final int[] PARTS = {2, 3, 4, 5, 6, 8, 10, 15, 20};

    /** A coat goes round all of a heap, and stuff to build it up with makes no part of it. */
    private static final Set<Dose> ON_THE_WHOLE = Set.of(Dose.INSULATION, Dose.ENLARGE);

    /** The part for a dose; empty where all of it is no more than a day's carting. */
    static Optional<HeapPart> of(DoseAmount dose, Pile pile) {
        double days = Math.max(dose.litresEach().likely() / DAY_L, dose.kgEach().likely() / DAY_KG);
        if (days <= 1 || ON_THE_WHOLE.contains(dose.dose())) {
            return Optional.empty();
        }
        OptionalDouble heap = pile.container().builtVolumeM3();
        if (heap.isPresent() && dose.dose() != Dose.COVER) {
            int parts = (int) Math.ceil(heap.getAsDouble() / DAY_M3);
            return Optional.of(new HeapPart(parts, OptionalDouble.of(heap.getAsDouble() / parts)));
        }
        int most = PARTS[PARTS.length - 1];
        int parts = IntStream.of(PARTS).filter(n -> n >= days).findFirst().orElse(most);
        return Optional.of(new HeapPart(parts, OptionalDouble.empty()));
    }

    /** What the part gets: so much in a measure of the house, of what, and so much by weight or volume. */
    String told(Words words, String house, String what, String amount) {
        return m3.isPresent()
                ? words.text(
                                "dose.to-each",
                                house,
                                what,
                                amount,
                                words.figures().pileVolume(m3.getAsDouble())) + " " + words.text("dose.to-each.how")
                : words.text("dose.to-each-part", house, what, amount, words.text("dose.part." + parts));
    }
}
