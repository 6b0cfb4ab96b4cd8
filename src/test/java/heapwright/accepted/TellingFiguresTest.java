package heapwright.accepted;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.advice.fact.Reads;
import heapwright.advice.winter.WhyUnmodelled;
import heapwright.knowledge.Reading;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.report.Catalogue;
import heapwright.report.Figures;
import heapwright.report.TextReport;
import heapwright.report.Units;
import heapwright.report.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Figures that cannot be")
class TellingFiguresTest {

    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
    private static final String RECIPE =
            "'built': '2026-10-31', 'asOf': '2026-11-21', 'recipe': [{'material': 'leaves-mixed', 'amount': 160, 'unit': 'kg'}]";
    private static final String MEASURED = ", 'log': [{'date': '2026-11-21', 'seen': ['squeeze-streams'],"
            + " 'measured': {'moisture': {'value': %s, 'unit': '%%'}}}]";

    @ParameterizedTest(name = "{0}")
    @DisplayName("a size that cannot belong to the recipe is asked about, with both figures, and counts until then")
    @ValueSource(
            strings = {
                "'volume': {'value': 27, 'unit': 'm3'}",
                "'volume': {'value': 1, 'unit': 'L'}",
                "'length': {'value': 3, 'unit': 'm'}, 'width': {'value': 3, 'unit': 'm'}, 'height': {'value': 3, 'unit': 'm'}"
            })
    void size(String container) {
        Pile pile = TestPile.of(RECIPE + ", 'container': {" + container + "}");
        List<String> told = WORDS.toCheck(pile);
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains("160 kg"), told.get(0));
        assertTrue(told.get(0).contains(container.contains("'L'") ? "1.0 L" : "27.0 m³"), told.get(0));
        Reads volume = TestPile.ADVISOR.diagnose(pile).readings().stream()
                .filter(r -> r.reading() == Reading.VOLUME)
                .findFirst()
                .orElseThrow();
        assertEquals(Reads.Basis.REPORTED, volume.basis());
        assertEquals(container.contains("'L'") ? 0.001 : 27, volume.likely(), 1e-9);
        assertTrue(new TextReport(WORDS, false)
                .write(TestPile.ADVISOR.diagnose(pile))
                .contains("Please check the size"));
    }

    @Test
    @DisplayName("a home remedy far above an assumed need is told as so many times that, not as thousands of percent")
    void manyTimesTheNeed() {
        Pile pile = TestPile.of("'built': '2026-08-24', 'asOf': '2026-11-21', 'container': {'kind': 'open-heap',"
                + " 'volume': {'value': 2, 'unit': 'L'}}, 'log': [{'date': '2026-11-18', 'seen': ['much-sawdust']}]");
        String text = new TextReport(WORDS, false)
                .write(TestPile.ADVISOR.diagnose(pile))
                .replaceAll("\\s+", " ");
        assertTrue(text.contains("times that"), text);
        assertEquals(List.of(), Sense.lacking(text));
    }

    @Test
    @DisplayName("a size that may belong to the recipe is taken as told")
    void sizeThatFits() {
        Pile pile = TestPile.of(RECIPE + ", 'container': {'volume': {'value': 1, 'unit': 'm3'}}");
        assertEquals(List.of(), WORDS.toCheck(pile));
        assertTrue(TestPile.ADVISOR.diagnose(pile).readings().stream()
                .anyMatch(r -> r.reading() == Reading.VOLUME && r.basis() == Reads.Basis.REPORTED && r.likely() == 1));
    }

    @ParameterizedTest(name = "{0} %: {1}")
    @DisplayName("a handful that streams and a sample that dries to next to nothing lost are told to clash")
    @CsvSource({"20, true", "27, true", "28.5, true", "30, true", "45, true", "60, false", "68, false"})
    void moisture(String measured, boolean clashes) {
        Pile pile = TestPile.of(RECIPE + String.format(MEASURED, measured));
        assertEquals(clashes, WORDS.toCheck(pile).stream().anyMatch(t -> t.contains("Please check the moisture")));
    }

    @Test
    @DisplayName("own nitrogen of none is believed")
    void noNitrogen() {
        String own = RECIPE.replace("leaves-mixed", "my-stuff")
                + ", 'materials': [{'id': 'my-stuff', 'like': 'leaves-mixed', 'nitrogen': {'value': 0, 'unit': '%'}}]";
        double ratio = TestPile.ADVISOR
                .audit(TestPile.of(own), OptionalDouble.empty())
                .orElseThrow()
                .mixture()
                .carbonToNitrogen()
                .likely();
        assertEquals(10_000, ratio);
    }

    @ParameterizedTest(name = "{0} with {1}")
    @DisplayName("own figures that make more than the whole with those of the material they are like are refused")
    @CsvSource(
            delimiter = '|',
            value = {
                "urine | 'carbon': {'value': 90, 'unit': '%'}",
                "leaves-mixed | 'nitrogen': {'value': 80, 'unit': '%'}",
                "fat-oil | 'carbonToNitrogen': 2"
            })
    void morethanTheWhole(String like, String figures) {
        String document = ("{'heapwright': 'pile/1', 'asOf': '2026-11-21', 'materials': [{'id': 'mine', 'like': '"
                        + like + "', " + figures + "}]}")
                .replace('\'', '"');
        var read =
                new PileReader(TestPile.KNOWLEDGE.vocabulary()).read("test", document.getBytes(StandardCharsets.UTF_8));
        assertEquals(1, read.problems().size());
        assertTrue(
                read.problems().get(0).found().contains("with the other figures of " + like),
                read.problems().get(0).message());
    }

    @Test
    @DisplayName("a look ahead says why there is none, and a recipe that went in after the building is one")
    void lookAhead() {
        Forecaster forecaster = new Forecaster(TestPile.KNOWLEDGE);
        assertEquals(
                Optional.of(WhyUnmodelled.NO_RECIPE),
                forecaster.lacking(TestPile.of("'built': '2026-10-31', 'asOf': '2026-11-21'")));
        Pile old = TestPile.of(RECIPE.replace("2026-10-31", "2016-10-31"));
        assertEquals(Optional.of(WhyUnmodelled.TOO_OLD), forecaster.lacking(old));
        assertTrue(forecaster.ahead(old).isEmpty()
                && forecaster.aheadOfTypical(old).isEmpty());
        Pile large = TestPile.of(RECIPE.replace("160", "60000"));
        assertEquals(Optional.of(WhyUnmodelled.TOO_LARGE), forecaster.lacking(large));
        assertTrue(forecaster.aheadOfTypical(large).isEmpty());
        Pile speck = TestPile.of(RECIPE.replace("160", "0.001"));
        assertEquals(Optional.of(WhyUnmodelled.TOO_LITTLE), forecaster.lacking(speck));
        Pile later = TestPile.of(RECIPE.replace("'unit': 'kg'", "'unit': 'kg', 'date': '2026-11-05'"));
        assertEquals(Optional.empty(), forecaster.lacking(later));
        assertEquals(16, forecaster.ahead(later).orElseThrow().model().age());
    }

    @ParameterizedTest(name = "{0}")
    @DisplayName("are told in digits that somebody can measure")
    @CsvSource({"0.00000044, under 0.01", "0.012, 0.012", "0, 0", "1234567, 1200000", "62, 62"})
    void digits(double value, String told) {
        assertEquals(told, new Figures(Units.METRIC, Catalogue.english()).round(value));
    }

    @Test
    @DisplayName("beyond the whole are told as times, and beyond a thousand times as more than that")
    void times() {
        Figures figures = new Figures(Units.METRIC, Catalogue.english());
        assertEquals("6.2", figures.times(6.2));
        assertEquals("over 1000", figures.times(1.4e14));
        Pile grams = TestPile.of(RECIPE.replace("160", "0.005"));
        String text = new TextReport(WORDS, false).write(TestPile.ADVISOR.diagnose(grams));
        assertFalse(text.matches("(?s).*\\d{4,} % of the.*"), text);
    }
}
