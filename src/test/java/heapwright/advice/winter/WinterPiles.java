package heapwright.advice.winter;

import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import java.util.List;

/** Piles for the tests of this room. */
final class WinterPiles {

    static final String COLD_YEAR = "'monthlyMeanC': [-9,-9,-3,4,11,15,18,16,10,4,-2,-7]";
    static final String GOOD = "{'material': 'leaves-shredded', 'amount': 70, 'unit': 'bucket'},"
            + "{'material': 'manure-horse-straw', 'amount': 40, 'unit': 'bucket'},"
            + "{'material': 'kitchen-scraps', 'amount': 20, 'unit': 'bucket'},"
            + "{'material': 'grass-clippings', 'amount': 20, 'unit': 'bucket'}";

    private WinterPiles() {}

    /** A pile built on 10 October, looked at on 5 November. */
    static Pile pile(String place, String container, String recipe, String log) {
        return TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-05', 'place': {" + place + "}, 'container': {"
                + container + "}, 'recipe': [" + recipe + "], 'log': [" + log + "], 'aim': {'readyBy': '2027-05-01'}");
    }

    static Pile good(String log) {
        return pile(COLD_YEAR, bin("none", "none"), GOOD, log);
    }

    static String bin(String cover, String insulation) {
        return "'kind': 'slatted-bin', 'length': {'value': 1.1, 'unit': 'm'}, 'width': {'value': 1.1, 'unit': 'm'},"
                + " 'height': {'value': 1.1, 'unit': 'm'}, 'cover': '" + cover + "', 'base': 'soil', 'insulation': '"
                + insulation + "'";
    }

    static Materials materials(Pile pile) {
        return Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials());
    }

    static PileModel model(Pile pile) {
        return PileModel.of(pile, materials(pile), List.of(), List.of()).orElseThrow();
    }
}
