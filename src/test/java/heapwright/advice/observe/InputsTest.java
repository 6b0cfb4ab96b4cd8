package heapwright.advice.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Trait;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What went into a pile")
class InputsTest {

    private static List<WentIn> facts(String fields, Trait trait) {
        Pile pile = TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', " + fields);
        return new Inputs(pile, Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials()))
                .facts().stream().filter(fact -> fact.trait() == trait).toList();
    }

    /** 100 kg at 40 % are 60 kg dry; 50 kg and 75 kg at 80 % are 10 and 15 kg. */
    private static final String OWN = "'materials': [{'id': 'dry', 'like': 'leaves-mixed', "
            + "'moisture': {'value': 40, 'unit': '%'}}, {'id': 'wet', 'like': 'grass-clippings', "
            + "'moisture': {'value': 80, 'unit': '%'}}], ";

    @Test
    @DisplayName("counts by its share of the dry matter, day by day")
    void shares() {
        String pile = OWN + "'recipe': [{'material': 'dry', 'amount': 100, 'unit': 'kg'},"
                + "{'material': 'wet', 'amount': 50, 'unit': 'kg'}], 'log': [{'date': '2026-11-01', 'added':"
                + "[{'material': 'wet', 'amount': 75, 'unit': 'kg'}]}]";
        List<WentIn> grass = facts(pile, Trait.GRASS);
        assertEquals(2, grass.size());
        assertEquals(20, grass.get(0).daysAgo());
        assertEquals(15.0 / 85, grass.get(0).share(), 1e-12);
        assertEquals(42, grass.get(1).daysAgo());
        assertEquals(10.0 / 85, grass.get(1).share(), 1e-12);
        List<WentIn> leaves = facts(pile, Trait.LEAVES);
        assertEquals(60.0 / 85, leaves.get(0).share(), 1e-12);
        assertEquals(100 * 60.0 / 85, leaves.get(0).sharePct(), 1e-12);
    }

    @Test
    @DisplayName("on one day counts together")
    void together() {
        List<WentIn> grass = facts(
                OWN + "'recipe': [{'material': 'wet', 'amount': 50, 'unit': 'kg'},"
                        + "{'material': 'wet', 'amount': 75, 'unit': 'kg'}]",
                Trait.GRASS);
        assertEquals(1, grass.size());
        assertEquals(1, grass.get(0).share(), 1e-12);
    }

    @Test
    @DisplayName("without any recipe is nothing")
    void nothing() {
        assertTrue(facts("'name': 'Heap'", Trait.GRASS).isEmpty());
    }
}
