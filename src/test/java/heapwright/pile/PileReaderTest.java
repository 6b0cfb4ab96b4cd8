package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PileReaderTest {

    private static final String FULL = """
            {"heapwright":"pile/1","name":"Tippen ved skjulet, 1,5 m³","asOf":"2026-11-22","built":"2026-10-31",
             "place":{"latitude":60.2,"monthlyMeanC":[-5,-6,-2,4,10,15,17,16,11,6,1,-3],"settings":["rats-about"]},
             "container":{"kind":"slatted-bin","length":{"value":4,"unit":"ft"},"width":{"value":1,"unit":"m"},
               "height":{"value":90,"unit":"cm"},"cover":"none","base":"soil","insulation":"none","rodentProof":true},
             "recipe":[{"material":"corn-stalks","amount":12,"unit":"Buckets","piece":{"value":20,"unit":"cm"}},
               {"material":"Lawn mowings","amount":2,"unit":"lbs","chopped":true,"date":"2026-11-01"}],
             "log":[
               {"date":"2026-11-21","seen":["smells-sour","waterlogged"],"notSeen":["smells-ammonia"],
                "measured":{"core":{"value":46.4,"unit":"°F"},"coreDepth":{"value":40,"unit":"cm"},
                  "outdoor":{"value":-2,"unit":"C"},"moisture":{"value":68,"unit":"%"},
                  "bulkDensity":{"value":40,"unit":"lb/ft3"},"ph":{"value":5.2,"unit":"pH"},
                  "height":{"value":0.8,"unit":"m"}},
                "done":["loosened"],"added":[{"material":"my-bark","amount":1,"unit":"pail"}],"note":"two\\nlines"},
               {"date":"2026-11-10","seen":["core-cold"]}],
             "aim":{"readyBy":"2027-04-20","use":"vegetable-bed"},
             "atHand":[{"material":"leaves-mixed","amount":8,"unit":"bucket"},{"material":"urea"}],
             "measures":{"bucket":{"value":12,"unit":"L"}},
             "materials":[{"id":"my-bark","like":"bark-softwood","name":"bark from the saw",
               "carbonToNitrogen":100,"moisture":{"value":50,"unit":"%"}}],
             "limits":{"moisture-good-high":62},
             "case":{"expect":["anything"]}}
            """;

    private final PileReader reader = new PileReader(new TestVocabulary());

    private ReadResult read(String document) {
        return reader.read("heap.json", document.getBytes(StandardCharsets.UTF_8));
    }

    private Pile pile(String fields) {
        ReadResult result = read("{\"heapwright\":\"pile/1\"," + fields + "}");
        assertEquals(List.of(), result.problems());
        return result.pile().orElseThrow();
    }

    private List<String> pointers(String fields) {
        return read("{\"heapwright\":\"pile/1\"," + fields + "}").problems().stream()
                .map(Problem::pointer)
                .toList();
    }

    private Problem only(String document) {
        List<Problem> problems = read(document).problems();
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    @Test
    void everyFieldIsKeptInItsUnit() {
        ReadResult result = read(FULL);
        assertEquals(List.of(), result.problems());
        Pile pile = result.pile().orElseThrow();
        assertEquals("Tippen ved skjulet, 1,5 m³", pile.name());
        assertEquals(LocalDate.of(2026, 10, 31), pile.built());
        assertEquals(12, pile.place().monthlyMeanC().size());
        assertEquals(List.of(Setting.RATS_ABOUT), pile.place().settings());
        assertEquals(1.2192, pile.container().lengthM().getAsDouble(), 1e-12);
        assertEquals(OptionalDouble.of(0.9), pile.container().heightM());
        assertEquals(Container.Kind.SLATTED_BIN, pile.container().kind());
        assertTrue(pile.container().rodentProof());
        Ingredient stalks = pile.recipe().get(0);
        assertEquals(Amount.ofVolume(12, "bucket", 144), stalks.amount());
        assertEquals(OptionalDouble.of(20), stalks.pieceCm());
        assertEquals(pile.built(), stalks.date());
        Ingredient grass = pile.recipe().get(1);
        assertEquals("grass-clippings", grass.material());
        assertEquals(0.90718474, grass.amount().kilograms(), 1e-12);
        assertEquals(LocalDate.of(2026, 11, 1), grass.date());
        assertEquals(LocalDate.of(2026, 11, 10), pile.log().get(0).date());
        Entry entry = pile.log().get(1);
        assertEquals(List.of("smells-sour", "soggy"), entry.seen());
        assertEquals(List.of("smells-ammonia"), entry.notSeen());
        assertEquals(8, entry.measured().coreC().getAsDouble(), 1e-12);
        assertEquals(640.7385, entry.measured().bulkDensityKgM3().getAsDouble(), 1e-4);
        assertEquals(List.of(Action.LOOSENED), entry.done());
        assertEquals("my-bark", entry.added().get(0).material());
        assertEquals(Amount.ofVolume(1, "bucket", 12), entry.added().get(0).amount());
        assertEquals(entry.date(), entry.added().get(0).date());
        assertEquals("two\nlines", entry.note());
        assertEquals(Aim.Use.VEGETABLE_BED, pile.aim().use());
        assertTrue(pile.atHand().get(1).available().isEmpty());
        assertEquals(Map.of("bucket", 12.0), pile.measures());
        assertEquals("bark from the saw", pile.materials().get(0).name());
        assertEquals(Map.of("moisture-good-high", 62.0), pile.limits());
        ReadResult.Accepted accepted = (ReadResult.Accepted) result;
        assertEquals(
                "anything", accepted.caseObject().orElseThrow().at("/expect/0").asText());
        assertEquals(
                List.of(new Note("/recipe/1/material", "\"Lawn mowings\" is taken as grass-clippings.")),
                accepted.notes());
    }

    @Test
    void asOfIsTheLatestDateAndBuiltTheEarliest() {
        Pile pile = pile("\"recipe\":[{\"material\":\"urea\",\"amount\":1,\"unit\":\"kg\",\"date\":\"2026-10-02\"}],"
                + "\"log\":[{\"date\":\"2026-12-01\"},{\"date\":\"2026-11-01\"}],\"aim\":{\"readyBy\":\"2027-05-01\"}");
        assertEquals(LocalDate.of(2026, 10, 2), pile.built());
        assertEquals(LocalDate.of(2026, 12, 1), pile.asOf());
    }

    @Test
    void aLaterAddedIngredientCountsForAsOf() {
        Pile pile = pile("\"log\":[{\"date\":\"2026-11-01\",\"added\":[{\"material\":\"urea\",\"amount\":1,"
                + "\"unit\":\"kg\",\"date\":\"2026-11-03\"}]}]");
        assertEquals(LocalDate.of(2026, 11, 3), pile.asOf());
    }

    /** Neither recipe nor field tells the day: the record's first day less a month, whatever the day of advice. */
    @Test
    void aRecordWithoutABuildingDayIsTakenAsAMonthOldOnItsFirstDay() {
        Pile young = pile("\"asOf\":\"2026-11-21\",\"log\":[{\"date\":\"2026-11-21\"}]");
        assertTrue(young.builtAssumed());
        assertEquals(LocalDate.of(2026, 10, 22), young.built());
        Pile later = pile("\"asOf\":\"2027-02-01\",\"log\":[{\"date\":\"2026-11-21\"}],"
                + "\"recipe\":[{\"material\":\"urea\",\"amount\":1,\"unit\":\"kg\"}]");
        assertEquals(young.built(), later.built());
        assertEquals(later.built(), later.recipe().get(0).date());
        Pile again =
                reader.read("again.json", new PileWriter().bytes(later)).pile().orElseThrow();
        assertEquals(later, again);
    }

    @Test
    void aDatedRecipeTellsWhenAPileWasBuilt() {
        Pile pile = pile("\"asOf\":\"2026-11-21\",\"log\":[{\"date\":\"2026-11-21\"}],"
                + "\"recipe\":[{\"material\":\"urea\",\"amount\":1,\"unit\":\"kg\",\"date\":\"2026-11-20\"}]");
        assertFalse(pile.builtAssumed());
        assertEquals(LocalDate.of(2026, 11, 20), pile.built());
    }

    @Test
    void aMaterialIsKnownByAnyNameInAnyFormOfWriting() {
        for (String word : List.of("grass clippings", "Grass-Clippings", "  lawn  MOWINGS ", "lawn-mowings")) {
            Pile pile = pile("\"asOf\":\"2026-11-21\",\"recipe\":[{\"material\":\"" + word
                    + "\",\"amount\":1,\"unit\":\"kg\"}],\"atHand\":[{\"material\":\"" + word + "\"}]");
            assertEquals("grass-clippings", pile.recipe().get(0).material(), word);
            assertEquals("grass-clippings", pile.atHand().get(0).material(), word);
        }
    }

    @Test
    void aWordForSeveralMaterialsIsRefusedWithTheCandidates() {
        Problem problem = reader.read(
                        "pile.json",
                        ("{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\",\"recipe\":[{\"material\":\"Leaves\","
                                        + "\"amount\":1,\"unit\":\"kg\"}]}")
                                .getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .problems()
                .get(0);
        assertEquals("/recipe/0/material", problem.pointer());
        assertEquals("a word for one material; this may mean leaves-mixed or leaves-oak", problem.allowed());
        assertEquals(java.util.Optional.empty(), problem.closest());
    }

    @Test
    void aBareRecipeNeedsOnlyTheDayOfAdvice() {
        Pile pile = pile("\"asOf\":\"2026-10-01\",\"recipe\":[{\"material\":\"urea\",\"amount\":1,\"unit\":\"kg\"}]");
        assertEquals(pile.asOf(), pile.built());
        assertEquals(pile.asOf(), pile.recipe().get(0).date());
        assertEquals(PileReader.UNNAMED, pile.name());
        assertEquals(Container.unknown(), pile.container());
        assertEquals(Aim.unknown(), pile.aim());
    }

    @Test
    void withoutAnyDateAsOfIsNeeded() {
        assertEquals(List.of("/asOf"), pointers("\"name\":\"x\",\"aim\":{\"readyBy\":\"2027-05-01\"}"));
    }

    @Test
    void aDateThatCannotBeReadIsReportedOnceAndAlone() {
        assertEquals(List.of("/asOf"), pointers("\"asOf\":\"21.11.2026\""));
        assertEquals(List.of("/built"), pointers("\"built\":\"2026-02-30\",\"asOf\":\"2026-11-21\""));
    }

    @Test
    void datesOutsideTheHistoryAreRefused() {
        assertEquals(List.of("/built"), pointers("\"asOf\":\"2026-10-01\",\"built\":\"2026-10-02\""));
        assertEquals(
                List.of("/log/0/date", "/log/1/date"),
                pointers("\"asOf\":\"2026-10-10\",\"built\":\"2026-10-02\","
                        + "\"log\":[{\"date\":\"2026-10-01\"},{\"date\":\"2026-10-11\"},{\"date\":\"2026-10-02\"}]"));
        assertEquals(List.of("/log/0/date"), pointers("\"asOf\":\"2026-10-10\",\"log\":[{\"date\":\"2026-10-11\"}]"));
        assertEquals(
                List.of("/aim/readyBy"), pointers("\"built\":\"2026-10-10\",\"aim\":{\"readyBy\":\"2026-10-09\"}"));
        assertEquals(List.of("/asOf"), pointers("\"asOf\":\"1989-12-31\""));
        assertEquals(List.of("/asOf"), pointers("\"asOf\":\"2101-01-01\""));
    }

    @Test
    void problemsComeInTheOrderOfTheDocument() {
        assertEquals(
                List.of("/limits/nonsense", "/log/0/seen/0", "/log/0/measured/moisture/value", "/colour", "/asOf"),
                pointers(
                        "\"limits\":{\"nonsense\":1},\"log\":[{\"date\":\"2026-11-01\",\"seen\":[\"smels-sour\"],"
                                + "\"measured\":{\"moisture\":{\"value\":140,\"unit\":\"%\"}}}],\"colour\":\"red\",\"asOf\":3"));
    }

    @Test
    void aProblemSaysWhereWhatAndWhatInstead() {
        Problem problem =
                only("{\n\"heapwright\":\"pile/1\",\n\"log\":[{\"date\":\"2026-11-01\",\n\"seen\":[\"smels-sour\"]}]}");
        assertEquals(
                "heap.json, line 4, /log/0/seen/0: found \"smels-sour\". Allowed: the id of a sign, such as smells-sour."
                        + " Did you mean \"smells-sour\"?",
                problem.message());
    }

    @Test
    void brokenJsonIsPlacedByLineAndColumn() {
        Problem problem = only("{\n  \"heapwright\": \"pile/1\",\n  \"asOf\": 'x'\n}");
        assertEquals(3, problem.line());
        assertEquals("something that is not JSON at column 11, before \"'x'\"", problem.found());
        assertEquals("words in straight double quotes, such as \"bucket\"", problem.allowed());
        assertEquals("no comma after the last item", only("{\"a\": [1,2,]}").allowed());
        assertEquals(
                "the end of the file in the middle of something",
                only("{\"a\": [1,2").found());
        assertEquals("an empty file", only(" \n ").found());
        assertTrue(only("// heap\n{}").allowed().startsWith("JSON without comments"));
    }

    @Test
    void aFieldGivenTwiceIsRefusedAtItsSecondPlace() {
        Problem problem = only("{\"heapwright\":\"pile/1\",\n\"asOf\":\"2026-11-01\",\n\"asOf\":\"2026-11-02\"}");
        assertEquals("/asOf", problem.pointer());
        assertEquals(3, problem.line());
        assertEquals("\"asOf\" a second time (the first is on line 2)", problem.found());
    }

    @Test
    void numbersThatAreNoneAreRefusedWhereTheyStand() {
        for (String number : List.of("NaN", "Infinity", "-Infinity", "1e999")) {
            assertEquals(
                    List.of("/place/latitude"),
                    pointers("\"asOf\":\"2026-11-01\",\"place\":{\"latitude\":" + number + "}"),
                    number);
        }
    }

    @Test
    void aNumberInQuotesIsRefusedWithTheNumberMeant() {
        Problem problem = only("{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-01\",\"recipe\":["
                + "{\"material\":\"urea\",\"amount\":\"12,5\",\"unit\":\"kg\"}]}");
        assertEquals("/recipe/0/amount", problem.pointer());
        assertEquals("12.5", problem.closest().orElseThrow());
        assertTrue(problem.message().endsWith(" Example: 8. Did you mean 12.5?"), problem.message());
    }

    @Test
    void tooManyProblemsAreCountedNotListed() {
        String names = "\"x\",".repeat(150) + "\"x\"";
        ReadResult.Refused many = (ReadResult.Refused)
                read("{\"heapwright\":\"pile/1\",\"log\":[{\"date\":\"2026-11-01\",\"seen\":[" + names + "]}]}");
        assertEquals(PileReader.MOST_PROBLEMS, many.problems().size());
        assertEquals(51, many.further());
        assertEquals("/log/0/seen/99", many.problems().get(99).pointer());
    }

    @Test
    void tooLargeTooDeepAndTooLongAreRefused() {
        assertEquals(
                "a file of up to 1 MiB",
                only(" ".repeat(PileReader.LARGEST + 1)).allowed());
        assertEquals("at most 32 levels", only("[".repeat(40)).allowed());
        assertEquals("at most 32 levels", only("[".repeat(100_000)).allowed());
        assertTrue(only("{\"" + "x".repeat(600) + "\":1}").found().contains("too long"));
        assertTrue(only("[" + "1".repeat(200) + "]").found().contains("too long"));
    }

    @Test
    void bytesThatAreNoTextAreRefused() {
        byte[] bytes = {'{', '\n', (byte) 0xC3, '}'};
        Problem problem = reader.read("heap.json", bytes).problems().get(0);
        assertEquals(2, problem.line());
        assertEquals("UTF-8 text", problem.allowed());
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertTrue(read('\uFEFF' + FULL).pile().isPresent());
    }

    @Test
    void aStreamReadsLikeBytesAndAFailingOneIsAProblem() {
        assertEquals(
                read(FULL).pile(),
                reader.read("heap.json", new ByteArrayInputStream(FULL.getBytes(StandardCharsets.UTF_8)))
                        .pile());
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("unplugged");
            }
        };
        assertEquals(
                "a file that could not be read (unplugged)",
                reader.read("x", broken).problems().get(0).found());
    }

    @Test
    void controlCharactersAndHalvesOfCharactersAreNoNames() {
        for (String bad : List.of("a\\u0007b", "a\\nb", "\\ud83d", "   ", "")) {
            assertEquals(List.of("/name"), pointers("\"asOf\":\"2026-11-01\",\"name\":\"" + bad + "\""), bad);
        }
        assertEquals(
                "🍂 堆肥 ٢", pile("\"asOf\":\"2026-11-01\",\"name\":\"🍂 堆肥 ٢\"").name());
    }

    @Test
    void aKnownMaterialsOwnFiguresNeedNoLike() {
        OwnMaterial own = pile("\"asOf\":\"2026-11-01\",\"materials\":[{\"id\":\"urea\"}]")
                .materials()
                .get(0);
        assertEquals("urea", own.like());
        assertEquals("urea", own.name());
        assertEquals(
                List.of("/materials/0/like"), pointers("\"asOf\":\"2026-11-01\",\"materials\":[{\"id\":\"mine\"}]"));
    }

    @Test
    void aTemperatureIsToldInBothUnitsWhenItIsImpossible() {
        Problem problem = only("{\"heapwright\":\"pile/1\",\"log\":[{\"date\":\"2026-11-01\",\"measured\":"
                + "{\"core\":{\"value\":450,\"unit\":\"F\"}}}]}");
        assertEquals("450 F (232.222 C)", problem.found());
        assertEquals("a figure from -60 to 120 C", problem.allowed());
    }
}
