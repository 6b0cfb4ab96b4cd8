package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heapwright.Seed;
import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.advice.fact.Seen;
import heapwright.advice.winter.Gain;
import heapwright.advice.winter.PileOutlook;
import heapwright.casebook.JudgedCases;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.pile.PileArbitraries;
import heapwright.process.heat.Range;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Label("Reports of the model")
@DisplayName("Reports of the model")
@Tag("thorough")
@net.jqwik.api.Tag("thorough")
class ModelReportsTest {

    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
    private static final Words US = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.US);

    @Test
    @DisplayName("tell every winter case in lines that fit, with a verdict in the JSON")
    void texts() throws IOException {
        for (JudgedCases.Judged judged : JudgedCases.below("winter")) {
            String text = new WhyReport(WORDS, false).write(judged.advice());
            assertFalse(text.contains("NaN") || text.contains("{0}") || text.contains("-0 "), text);
            JsonNode json = new ObjectMapper().readTree(new AdviceJson(WORDS, "test").write(judged.advice(), true));
            assertEquals(
                    judged.tested()
                            .expect()
                            .why()
                            .orElseThrow()
                            .verdict()
                            .orElseThrow()
                            .id(),
                    json.path("why").path("verdict").asText());
            assertTrue(json.path("story").path("days").size() > 0);
        }
    }

    @Test
    @DisplayName("call a pile colder than the weather explains only where its core was below the band")
    void colder() {
        int below = 0;
        int besides = 0;
        for (JudgedCases.Judged judged : JudgedCases.all()) {
            String text = new WhyReport(WORDS, false).write(judged.advice()).replaceAll("\\s+", " ");
            boolean colder = text.contains("it is colder than the weather explains");
            assertFalse(
                    colder && !text.matches(".*That is [0-9.]+ °C colder than a healthy pile\\..*"),
                    judged.tested().file());
            below += colder ? 1 : 0;
            besides += text.contains("it is not the weather alone") ? 1 : 0;
        }
        assertTrue(below > 5 && besides > 5, below + " and " + besides);
    }

    @Property(tries = 60, seed = Seed.FIXED)
    @Label("never fail, whatever the pile")
    void anyPile(@ForAll("piles") Pile pile) throws IOException {
        Forecaster forecaster = new Forecaster(TestPile.KNOWLEDGE);
        Optional<PileOutlook> reckoned = forecaster.ahead(pile).or(() -> forecaster.aheadOfTypical(pile));
        if (reckoned.isEmpty()) {
            assertTrue(forecaster.lacking(pile).isPresent());
            return;
        }
        PileOutlook ahead = reckoned.get();
        String text = new OutlookReport(US, false).write(ahead);
        assertFalse(text.contains("NaN") || text.contains("Infinity"), text);
        new ObjectMapper().readTree(new ModelJson(WORDS, "test").outlook(ahead));
    }

    @Provide
    Arbitrary<Pile> piles() {
        return PileArbitraries.piles(TestPile.KNOWLEDGE.vocabulary());
    }

    @Test
    @DisplayName("tell no day on which it stalled where it was told that it never warmed")
    void neverWarmed() {
        int told = 0;
        for (JudgedCases.Judged judged : JudgedCases.all()) {
            if (judged.advice().story().isPresent()
                    && judged.advice().outcome().facts().stream()
                            .anyMatch(f -> f instanceof Seen seen && seen.sign() == Sign.NEVER_HEATED)) {
                told++;
                assertEquals(
                        List.of(),
                        new ModelWords(WORDS).stall(judged.advice()),
                        judged.tested().file());
            }
        }
        assertTrue(told > 0, "no case with a course was told so");
    }

    @Test
    @DisplayName("counts no days on a pile that lies dormant, and says until when")
    void asleep() {
        Range none = new Range(90, 90, 90);
        Range won = new Range(40, 80, 88);
        Range little = new Range(0, 0.01, 0.02);
        Gain.Back never = new Gain.Back(false, 0, none);
        Gain.Back back = new Gain.Back(false, 0.9, new Range(20, 30, 60));
        LocalDate today = LocalDate.of(2027, 1, 10);
        GainWords words = new GainWords(WORDS);
        assertTrue(
                words.gain(new Gain(90, won, none, none, never, never, new Gain.Frost(0, 0), little), today)
                        .isEmpty(),
                "nothing, under each step");
        String wakes = words.gain(new Gain(90, won, none, none, back, never, new Gain.Frost(0, 0), little), today)
                .orElseThrow();
        assertTrue(wakes.contains("30 (20 to 60) days") && wakes.contains("lies dormant until 10 Apr 2027"), wakes);
        assertFalse(wakes.contains("80"), wakes);
    }

    @Test
    @DisplayName("say once for all steps that none of them brings the core back, and under no step")
    void noneWarms() {
        Range won = new Range(4, 8, 12);
        Range half = new Range(0.4, 0.5, 0.6);
        Gain.Back never = new Gain.Back(false, 0, new Range(90, 90, 90));
        Gain.Back back = new Gain.Back(false, 0.9, new Range(20, 30, 60));
        Gain cool = new Gain(90, won, won, won, never, never, new Gain.Frost(0.5, 1), half);
        Gain warms = new Gain(90, won, won, won, back, never, new Gain.Frost(0.5, 1), half);
        LocalDate today = LocalDate.of(2027, 1, 10);
        GainWords words = new GainWords(WORDS);
        String none = words.none(List.of(cool, cool), today).orElseThrow();
        assertTrue(none.contains("none of these steps") && none.contains("10 Apr 2027"), none);
        assertTrue(words.none(List.of(cool, warms), today).isEmpty());
        assertTrue(words.none(List.of(), today).isEmpty(), "where no step was tried nothing is said");
        String told = words.gain(cool, today).orElseThrow();
        assertFalse(told.contains("40"), told);
        Gain iced = new Gain(90, won, won, won, never, never, new Gain.Frost(1, 1), half);
        assertTrue(words.gain(iced, today).isEmpty(), "no days for a pile that freezes through whatever is done");
        String all = words.none(List.of(iced, iced), today).orElseThrow();
        assertTrue(all.contains("freezes through before 10 Apr 2027"), all);
    }

    /** Invented: leaves alone, bone dry, under the rain of a winter. */
    @Test
    @DisplayName("never tell more than the whole as a part of it where rain makes a pile heavier")
    void heavier() {
        Pile pile = TestPile.of("'built': '2026-10-10', 'asOf': '2026-10-10', 'place': {'latitude': 52},"
                + "'recipe': [{'material': 'straw-general', 'amount': 400, 'unit': 'L'}]");
        PileOutlook ahead = new Forecaster(TestPile.KNOWLEDGE).ahead(pile).orElseThrow();
        assertTrue(ahead.figures().massLeft().likely() > 1, "rain makes it heavier");
        String weight = new OutlookReport(WORDS, false)
                .figures(ahead).stream()
                        .filter(l -> l.startsWith("Weight"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(weight.matches("Weight: about \\d\\.\\d times today.s, rain and melt counted"), weight);
    }
}
