package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.WhyUnmodelled;
import heapwright.pile.Pile;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The look ahead of a pile file")
class ForecasterTest {

    private static final Forecaster FORECASTER = new Forecaster(TestPile.KNOWLEDGE);

    private static Pile pile(String kind, String recipe, String seen) {
        return TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-05', 'container': {'kind': '" + kind
                + "', 'volume': {'value': 1, 'unit': 'm3'}}, 'recipe': [" + recipe
                + "], 'log': [{'date': '2026-11-05', 'seen': [" + seen + "]}]");
    }

    private static String leaves(double buckets) {
        return "{'material': 'leaves-mixed', 'amount': " + buckets + ", 'unit': 'bucket'}";
    }

    private static PileModel model(String recipe, String seen) {
        return FORECASTER
                .ahead(pile("slatted-bin", recipe, seen))
                .map(PileOutlook::model)
                .orElseThrow();
    }

    @Test
    @DisplayName("says why there is none")
    void lacking() {
        assertEquals(Optional.of(WhyUnmodelled.NO_RECIPE), FORECASTER.lacking(pile("slatted-bin", "", "")));
        assertEquals(Optional.of(WhyUnmodelled.COLD_KIND), FORECASTER.lacking(pile("worm-bin", leaves(30), "")));
        assertTrue(FORECASTER.ahead(pile("slatted-bin", "", "")).isEmpty());
        assertTrue(FORECASTER.lacking(pile("slatted-bin", leaves(30), "")).isEmpty());
    }

    @Test
    @DisplayName("is that of a usual mix in its size where no recipe is told, and none for what works cold")
    void typical() {
        PileOutlook usual =
                FORECASTER.aheadOfTypical(pile("slatted-bin", "", "")).orElseThrow();
        assertTrue(usual.model().typical());
        assertEquals(1, usual.model().start().matter().volumeM3(), 1e-9);
        assertTrue(FORECASTER.aheadOfTypical(pile("worm-bin", "", "")).isEmpty());
    }

    @Test
    @DisplayName("goes by what the hand tells of the water, and by what is seen of the cover")
    void signs() {
        PileModel dry = model(leaves(60), "'squeeze-crumbles'");
        PileModel wet = model(leaves(60), "'squeeze-streams', 'sealed-under-plastic'");
        assertTrue(dry.marks().stream().allMatch(m -> m.moisture().isEmpty()), "the recipe is as dry");
        double felt = wet.marks().get(0).bounds().orElseThrow().leastMoisture();
        assertTrue(felt > 0.65, "felt " + felt);
        assertTrue(wet.start().envelope().topOpen() < dry.start().envelope().topOpen());
    }

    @Test
    @DisplayName("is the same however the recipe was written down")
    void gathered() {
        PileModel once = model(leaves(60), "");
        PileModel twice = model(leaves(20) + "," + leaves(40), "");
        assertEquals(once.start(), twice.start());
        assertEquals(1, twice.pile().recipe().size());
    }
}
