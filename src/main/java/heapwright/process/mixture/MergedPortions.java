package heapwright.process.mixture;

import heapwright.pile.Amount;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Portions of one material taken together: a record may name it thousands of times, and each draw is work. */
final class MergedPortions {

    private record Key(String material, boolean weighed) {}

    private MergedPortions() {}

    /**
     * A portion of each material that was weighed and one of each that was measured out, with all there is of it; what
     * size and whether chopped says nothing of masses and volumes. In the order in which they first appear.
     */
    static List<Portion> of(List<Portion> portions) {
        Map<Key, Portion> alike = new LinkedHashMap<>();
        for (Portion one : portions) {
            alike.merge(new Key(one.material().id(), one.amount().isMass()), one, MergedPortions::both);
        }
        return alike.size() == portions.size() ? portions : List.copyOf(alike.values());
    }

    private static Portion both(Portion one, Portion other) {
        Amount a = one.amount();
        Amount b = other.amount();
        Amount sum = a.isMass()
                ? Amount.ofMass(a.kilograms() + b.kilograms(), "kg", a.kilograms() + b.kilograms())
                : Amount.ofVolume(a.litres() + b.litres(), "L", a.litres() + b.litres());
        return new Portion(one.material(), sum, one.pieceCm(), one.chopped());
    }
}
