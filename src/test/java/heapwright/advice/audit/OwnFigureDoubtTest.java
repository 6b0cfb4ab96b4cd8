package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.process.mixture.CarbonCheck.Verdict;
import heapwright.process.mixture.Materials;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Plants are 35 to 58 % carbon; what implies less than 30 or more than 60 % is asked about. Figures are invented. */
@DisplayName("A person's own C:N and nitrogen")
class OwnFigureDoubtTest {

    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();

    private static List<OwnFigureDoubt> doubtful(String like, String figures) {
        String text =
                ("{'heapwright':'pile/1','asOf':'2026-10-18','built':'2026-10-18','materials':[{'id':'mine','like':'"
                                + like + "'" + figures + "}],'recipe':[{'material':'mine','amount':10,'unit':'kg'}]}")
                        .replace('\'', '"');
        Pile pile = new PileReader(KNOWLEDGE.vocabulary())
                .read("test", text.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
        return OwnFigureDoubt.doubtful(
                pile, KNOWLEDGE.materials(), Materials.of(KNOWLEDGE.materials(), pile.materials()));
    }

    private static String ratio(double value) {
        return ",'carbonToNitrogen':" + value;
    }

    private static String nitrogen(double pct) {
        return ",'nitrogen':{'value':" + pct + ",'unit':'%'}";
    }

    @Test
    @DisplayName("are let be where they can belong together and are usual")
    void possible() {
        assertEquals(List.of(), doubtful("leaves-mixed", ratio(50) + nitrogen(0.9)), "45 % carbon");
        assertEquals(
                List.of(), doubtful("leaves-mixed", ",'moisture':{'value':40,'unit':'%'}"), "nothing is said of them");
    }

    @Test
    @DisplayName("are asked about where they imply more carbon than there can be, or little")
    void carbon() {
        OwnFigureDoubt much =
                doubtful("leaves-mixed", ratio(70) + nitrogen(0.9)).get(0);
        assertEquals("mine", much.material());
        assertEquals(Verdict.TOO_MUCH_CARBON, much.check().verdict());
        assertEquals(63, much.check().carbonPct(), 1e-9);
        assertEquals(70, much.carbonToNitrogen(), 1e-9);
        assertEquals(0.9, much.nitrogenPct(), 1e-9);
        assertEquals(false, much.unusual());
        OwnFigureDoubt little =
                doubtful("leaves-mixed", ratio(40) + nitrogen(0.7)).get(0);
        assertEquals(Verdict.LITTLE_CARBON, little.check().verdict());
        assertEquals(28, little.check().carbonPct(), 1e-9);
    }

    /** Pine needles printed as 4 % nitrogen and 10:1 imply 40 % carbon, as they should, and are wrong all the same. */
    @Test
    @DisplayName("are asked about where one is far from what is usual, though their carbon can be")
    void unusual() {
        OwnFigureDoubt both = doubtful("pine-needles", ratio(10) + nitrogen(4)).get(0);
        assertEquals(Verdict.POSSIBLE, both.check().verdict());
        assertEquals(true, both.unusual());
        double high =
                KNOWLEDGE.materials().get("pine-needles").carbonToNitrogen().high();
        double n = 45 / (high * 2.1);
        assertEquals(
                true,
                doubtful("pine-needles", ratio(high * 2.1) + nitrogen(n)).get(0).unusual(),
                "the ratio");
        assertEquals(List.of(), doubtful("pine-needles", ratio(high) + nitrogen(45 / high)));
    }

    @Test
    @DisplayName("are taken with the usual other one where only one is told")
    void one() {
        OwnFigureDoubt ratio = doubtful("pine-needles", ratio(10)).get(0);
        assertEquals(10, ratio.carbonToNitrogen(), 1e-9);
        assertEquals(true, ratio.unusual());
        double most = KNOWLEDGE.materials().get("grass-clippings").nitrogenPct().high();
        OwnFigureDoubt nitrogen =
                doubtful("grass-clippings", nitrogen(most * 2.2)).get(0);
        assertEquals(most * 2.2, nitrogen.nitrogenPct(), 1e-9);
        assertEquals(true, nitrogen.unusual());
    }
}
