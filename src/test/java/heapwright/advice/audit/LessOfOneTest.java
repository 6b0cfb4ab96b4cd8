package heapwright.advice.audit;

import static heapwright.advice.audit.Audits.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.report.FirstPageOfAudit;
import heapwright.report.Units;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Amounts by hand: droppings of hens bring most of the nitrogen, leaves most of the carbon. */
@DisplayName("Less of one thing")
class LessOfOneTest {

    private static final String LEAVES =
            some("leaves-mixed", 48, "bucket") + "," + some("grass-clippings", 24, "bucket");

    private static Proposal proposal(String recipe, String more) {
        return Audits.of(recipe, more).proposal().orElseThrow();
    }

    @Test
    @DisplayName("is told before anything is fetched, and the plan takes no more")
    void droppings() {
        Proposal proposal = proposal(LEAVES + "," + some("manure-hen-home", 12, "bucket"), "");
        Trimming.Trimmed less = proposal.less().orElseThrow();
        assertEquals("manure-hen-home", less.material().id());
        assertTrue(less.litres() < 120 && less.litres() % 10 < 1e-6, less.toString());
        assertTrue(proposal.mend().chosen().meetsAll());
        assertTrue(proposal.mend().unlock().isEmpty(), "nothing is fetched");
        assertEquals(
                less.litres(),
                proposal.build().orElseThrow().plan().layers().stream()
                        .filter(l -> l.material().equals(less.material().id()))
                        .mapToDouble(l -> l.litres() * l.times())
                        .sum(),
                1e-6);
    }

    @Test
    @DisplayName("is not asked for where what is at hand does it")
    void atHand() {
        assertTrue(proposal(
                        LEAVES + "," + some("manure-hen-home", 12, "bucket"),
                        ",\"atHand\":[{\"material\":\"straw\"},{\"material\":\"cardboard\"}]")
                .less()
                .isEmpty());
    }

    @Test
    @DisplayName("is not asked for where more than a quarter of the whole would have to go")
    void tooMuch() {
        assertTrue(proposal(some("grass-clippings", 40, "bucket") + "," + some("leaves-mixed", 4, "bucket"), "")
                .less()
                .isEmpty());
    }

    /** A heap of manure a little on the wet side works slowly; a smaller one would only be colder. */
    @Test
    @DisplayName("is not asked for where the heap works as it is")
    void works() {
        assertTrue(proposal(some("manure-horse-straw", 300, "kg") + "," + some("leaves-mixed", 60, "kg"), "")
                .less()
                .isEmpty());
    }

    @Test
    @DisplayName("never calls coarse stuff in order where it is short, and says how much would do")
    void coarse() {
        Audit audit = Audits.of(
                some("sawdust", 5, "bucket") + "," + some("coffee-grounds", 10, "bucket") + ","
                        + some("leaves-mixed", 3, "bucket"),
                "");
        double litres = audit.proposal().orElseThrow().mend().coarseLitres();
        assertTrue(litres > 5 && litres < 30, "a tenth of some 150 L: " + litres);
        String page = new FirstPageOfAudit(Audits.words(Units.METRIC), false)
                .write(audit)
                .replaceAll("\\s+", " ");
        assertFalse(page.contains("coarse stuff are in order"), page);
        assertTrue(page.contains("To hold it open mix in about"), page);
    }
}
