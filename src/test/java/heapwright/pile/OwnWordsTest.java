package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measures, limits and materials that a document defines for itself. */
class OwnWordsTest {

    private final PileReader reader = new PileReader(new TestVocabulary());

    private ReadResult read(String fields) {
        String document = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\"," + fields + "}";
        return reader.read("x", document.getBytes(StandardCharsets.UTF_8));
    }

    private Problem only(String fields) {
        List<Problem> problems = read(fields).problems();
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    private Pile pile(String fields) {
        ReadResult result = read(fields);
        assertEquals(List.of(), result.problems());
        return result.pile().orElseThrow();
    }

    @Test
    void aMeasureHasOneSizeUnderWhateverWord() {
        assertEquals(
                Map.of("bucket", 9.0),
                pile("\"measures\":{\"pails\":{\"value\":9,\"unit\":\"L\"}}").measures());
        Problem twice =
                only("\"measures\":{\"bucket\":{\"value\":9,\"unit\":\"L\"},\"pail\":{\"value\":8,\"unit\":\"L\"}}");
        assertEquals("/measures/pail", twice.pointer());
        assertEquals("bucket a second time", twice.found());
    }

    @Test
    void aMisspeltMeasureOrUnitIsMetWithTheNearest() {
        assertEquals(
                Optional.of("bucket"),
                only("\"measures\":{\"buket\":{\"value\":9,\"unit\":\"L\"}}").closest());
        assertEquals(
                Optional.of("gal"),
                only("\"measures\":{\"bucket\":{\"value\":2,\"unit\":\"galon\"}}")
                        .closest());
        assertEquals(
                Optional.of("wheelbarrow"),
                only("\"recipe\":[{\"material\":\"urea\",\"amount\":1,\"unit\":\"wheelbarow\"}]")
                        .closest());
    }

    @Test
    void aLimitOutOfItsSpanIsShownTheMiddleOfIt() {
        Problem problem = only("\"limits\":{\"turning-frost\":11}");
        assertEquals("a figure from -30 to 10", problem.allowed());
        assertEquals("-10", problem.example());
    }

    @Test
    void anIdMayHaveSixtyCharacters() {
        String sixty = "barkchips-".repeat(5) + "barkchips1";
        assertEquals(60, sixty.length());
        assertEquals(sixty, material(sixty).id());
        assertEquals(
                "/materials/0/id",
                only("\"materials\":[{\"id\":\"" + sixty + "x\",\"like\":\"urea\"}]")
                        .pointer());
        for (String bad : List.of("My-Bark", "my bark", "-bark", "bark-", "my--bark", "")) {
            assertEquals(
                    "/materials/0/id",
                    only("\"materials\":[{\"id\":\"" + bad + "\",\"like\":\"urea\"}]")
                            .pointer(),
                    bad);
        }
    }

    private OwnMaterial material(String id) {
        return pile("\"materials\":[{\"id\":\"" + id + "\",\"like\":\"urea\"}]")
                .materials()
                .get(0);
    }

    @Test
    void aResembledMaterialGoesByAnyOfItsNamesAndAMisspeltOneIsMetWithTheNearest() {
        assertEquals(
                "urea",
                pile("\"materials\":[{\"id\":\"mine\",\"like\":\"Carbamide\"}]")
                        .materials()
                        .get(0)
                        .like());
        Problem problem = only("\"materials\":[{\"id\":\"mine\",\"like\":\"bark-sofwood\"}]");
        assertEquals("/materials/0/like", problem.pointer());
        assertEquals(Optional.of("bark-softwood"), problem.closest());
    }

    /** What is measured twice differs a little; a tenth is passed over. */
    @ParameterizedTest
    @CsvSource({"50,1,50,true", "50,1,55,true", "50,1,45,true", "50,1,55.1,false", "50,1,44.9,false", "50,2,25,true"})
    void carbonNitrogenAndTheirRatioMustAgreeWithinATenth(String carbon, String nitrogen, String ratio, boolean agree) {
        List<Problem> problems =
                read("\"materials\":[{\"id\":\"mine\",\"like\":\"bark-softwood\",\"carbon\":{\"value\":"
                                + carbon + ",\"unit\":\"%\"},\"nitrogen\":{\"value\":" + nitrogen
                                + ",\"unit\":\"%\"},\"carbonToNitrogen\":" + ratio + "}]")
                        .problems();
        assertEquals(agree, problems.isEmpty(), problems::toString);
        if (!agree) {
            assertEquals("/materials/0/carbonToNitrogen", problems.get(0).pointer());
            assertEquals(
                    ratio + ", while carbon over nitrogen is 50.0 / 1.0",
                    problems.get(0).found());
        }
    }

    @Test
    void carbonAndNitrogenAreNoMoreThanTheWhole() {
        assertTrue(read(halves("60", "40")).problems().isEmpty());
        Problem problem = only(halves("60", "40.5"));
        assertEquals("/materials/0/nitrogen", problem.pointer());
        assertEquals("carbon and nitrogen of 100.5 % together", problem.found());
    }

    private static String halves(String carbon, String nitrogen) {
        return "\"materials\":[{\"id\":\"urea\",\"carbon\":{\"value\":" + carbon
                + ",\"unit\":\"%\"},\"nitrogen\":{\"value\":" + nitrogen + ",\"unit\":\"%\"}}]";
    }

    @Test
    void everyFigureOfAMaterialIsWrittenAndReadBack() {
        Pile pile = pile("\"materials\":[{\"id\":\"mine\",\"like\":\"bark-softwood\",\"name\":\"bark\","
                + "\"carbonToNitrogen\":50.5,\"moisture\":{\"value\":41,\"unit\":\"%\"},"
                + "\"density\":{\"value\":210,\"unit\":\"kg/m3\"}}]");
        Pile again = reader.read("y", new PileWriter().bytes(pile)).pile().orElseThrow();
        assertEquals(pile.materials(), again.materials());
        assertEquals(210, again.materials().get(0).densityKgM3().orElseThrow());
    }
}
