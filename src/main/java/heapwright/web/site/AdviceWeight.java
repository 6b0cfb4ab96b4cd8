package heapwright.web.site;

import heapwright.pile.Entry;
import heapwright.pile.Pile;

/** What a pile and its advice take in memory, near enough to bound how many are kept. Measured on piles of 0 to 5000 days. */
final class AdviceWeight {

    /** The advice itself, its chains and its story; it hardly grows with the record. */
    private static final int ADVICE = 120 << 10;

    private static final int ENTRY = 250;
    private static final int INGREDIENT = 150;

    private AdviceWeight() {}

    /** Bytes. */
    static int bytes(Pile pile) {
        int bytes = ADVICE + INGREDIENT * pile.recipe().size();
        for (Entry entry : pile.log()) {
            bytes += ENTRY
                    + 2 * entry.note().length()
                    + INGREDIENT * entry.added().size();
        }
        return bytes;
    }
}
