package heapwright.report;

import static heapwright.advice.audit.Audits.some;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Audits;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The mend in words")
class MendTextTest {

    private static final String LEAF_MOULD = "leaves alone make leaf mould";
    private static final String OPEN = "To keep it open, mix in";

    @Test
    @DisplayName("says of leaves alone what they make as they are, and nothing of it where as much grass is in them")
    void leafMould() {
        assertTrue(mend(some("leaves-mixed", 12, "wheelbarrow")).contains(LEAF_MOULD));
        assertTrue(mend(some("leaves-mixed", 12, "wheelbarrow") + "," + some("grass-clippings", 1, "bucket"))
                .contains(LEAF_MOULD));
        assertFalse(mend(some("leaves-mixed", 4, "wheelbarrow") + "," + some("grass-clippings", 4, "wheelbarrow"))
                .contains(LEAF_MOULD));
    }

    @Test
    @DisplayName("asks for no coarse stuff to hold it open where straw, which is coarse, has to be got anyway")
    void coarseOnce() {
        String grass = mend(some("grass-clippings", 10, "wheelbarrow"));
        assertTrue(grass.matches("(?s).*One thing more would do it: [^.]* of straw.*"), grass);
        assertFalse(grass.contains(OPEN), grass);
        String scraps = mend(some("kitchen-scraps", 20, "bucket"));
        assertTrue(scraps.matches("(?s).*One thing more would do it: [^.]* of corrugated cardboard.*"), scraps);
        assertTrue(scraps.contains(OPEN), scraps);
    }

    @Test
    @DisplayName("says why a small heap that is left alone takes longer than heaps of its kind")
    void readyApart() {
        Audit told = Audits.of(
                some("coffee-grounds", 10, "bucket") + "," + some("straw-general", 3, "wheelbarrow") + ","
                        + some("kitchen-scraps", 3, "bucket"),
                "");
        String coffee = text(new Forecaster(TestPile.KNOWLEDGE).ready(told));
        assertTrue(coffee.contains("Not likely to be ready by"), coffee);
        assertTrue(coffee.contains("That is if it is left alone"), coffee);
        assertFalse(coffee.contains("Piles of this kind are ready between"), coffee);
    }

    @Test
    @DisplayName("leaves a cage of leaves open to the rain, and looks for no heat in it")
    void leafCage() {
        String cage =
                text(Audits.of(some("leaves-mixed", 10, "wheelbarrow"), ",\"container\":{\"kind\":\"leaf-cage\"}"));
        assertTrue(cage.contains("open to the rain"), cage);
        for (String hot : List.of("cover it against rain", "warm is right", "First turn", "in range")) {
            assertFalse(cage.contains(hot), hot + ": " + cage);
        }
        String heap = mend(some("leaves-mixed", 10, "wheelbarrow"));
        assertTrue(heap.contains("cover it against rain") && heap.contains("First turn"), heap);
    }

    private static String mend(String recipe) {
        return text(Audits.of(recipe, ""));
    }

    private static String text(Audit audit) {
        return new AuditReport(Audits.words(Units.METRIC), false).write(audit).replaceAll("\\s+", " ");
    }
}
