package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.report.Catalogue;
import heapwright.report.OutlookReport;
import heapwright.report.Units;
import heapwright.report.Words;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The day on which compost is wanted")
class WantedDateTest {

    private static final Forecaster FORECASTER = new Forecaster(TestPile.KNOWLEDGE);

    private static PileOutlook ahead(String aim) {
        return FORECASTER
                .ahead(TestPile.of("'built': '2026-10-31', 'asOf': '2026-11-21', 'container': {"
                        + WinterPiles.bin("none", "none") + "}, 'recipe': [" + WinterPiles.GOOD + "]" + aim))
                .orElseThrow();
    }

    @Test
    @DisplayName("does not move what is looked at")
    void movesNothing() {
        PileOutlook without = ahead("");
        for (String day : new String[] {"2026-11-10", "2026-12-10", "2027-09-01", "2029-01-01"}) {
            PileOutlook with = ahead(", 'aim': {'readyBy': '" + day + "'}");
            assertEquals(without.figures(), with.figures(), day);
            assertEquals(without.core().likely().length, with.core().likely().length, day);
            assertEquals(without.lookedDays(), with.lookedDays(), day);
        }
        assertTrue(without.wish().isEmpty());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @DisplayName("is answered")
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-11-10 | PAST | that day is past",
                "2026-12-10 | NOT_BY_THEN | not by then",
                "2029-01-01 | BEYOND | This looks no further than"
            })
    void answered(String day, WantedDate.Answer answer, String told) {
        PileOutlook ahead = ahead(", 'aim': {'readyBy': '" + day + "'}");
        assertEquals(answer, ahead.wish().orElseThrow().answer());
        String headline = new OutlookReport(new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC), false)
                .headline(ahead);
        assertTrue(headline.contains(told), headline);
    }

    @Test
    @DisplayName("is likely met where the compost is nearly ready")
    void likely() {
        PileOutlook ahead = FORECASTER
                .ahead(TestPile.of("'built': '2026-03-01', 'asOf': '2026-09-01', 'container': {"
                        + WinterPiles.bin("none", "none") + "}, 'recipe': [" + WinterPiles.GOOD
                        + "], 'aim': {'readyBy': '2027-04-20'}"))
                .orElseThrow();
        assertEquals(
                WantedDate.Answer.LIKELY,
                ahead.wish().orElseThrow().answer(),
                ahead.figures().toString());
    }
}
