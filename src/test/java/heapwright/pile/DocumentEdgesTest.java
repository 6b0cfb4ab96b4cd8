package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BigIntegerNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.LongNode;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Documents at the very edge of what is taken, and what is kept of them. */
class DocumentEdgesTest {

    private final PileReader reader = new PileReader(new TestVocabulary());

    private ReadResult read(String document) {
        return reader.read("x", document.getBytes(StandardCharsets.UTF_8));
    }

    private ReadResult fields(String fields) {
        return read("{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\"," + fields + "}");
    }

    private Problem only(ReadResult result) {
        assertEquals(1, result.problems().size(), () -> result.problems().toString());
        return result.problems().get(0);
    }

    @Test
    void aFileMayBeOneMebibyte() {
        String heap = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\"}";
        String padded = heap + " ".repeat(PileReader.LARGEST - heap.length());
        assertEquals(List.of(), read(padded).problems());
        assertFalse(read(padded + " ").problems().isEmpty());
    }

    @Test
    void aFileMayBeThirtyTwoLevelsDeep() {
        assertTrue(fields("\"case\":{\"x\":" + "[".repeat(30) + "]".repeat(30) + "}")
                .pile()
                .isPresent());
        assertEquals(
                "at most 32 levels",
                only(fields("\"case\":{\"x\":" + "[".repeat(31) + "]".repeat(31) + "}"))
                        .allowed());
    }

    @Test
    void whatFollowsTheDocumentIsRefusedAndToldOnItsLine() {
        Problem problem = only(read("{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\"}\n{}"));
        assertEquals("more after the end of the document", problem.found());
        assertEquals(2, problem.line());
    }

    @Test
    void brokenTextIsToldOnItsLine() {
        byte[] bytes = {'{', '"', 'a', '\n', '\n', 'b', (byte) 0xFF, '\n', '}'};
        assertEquals(3, reader.read("x", bytes).problems().get(0).line());
    }

    /** What a case says is handed on as it stands: integers of any size stay integers, others become doubles. */
    @Test
    void numbersOfACaseKeepTheirKind() {
        ReadResult.Accepted accepted = (ReadResult.Accepted)
                fields("\"case\":{\"n\":[7,-2147483648,2147483647,2147483648,9223372036854775807,9223372036854775808,"
                        + "1.0,1e2,1E2],\"t\":[true,false,null,\"x\"]}");
        JsonNode of = accepted.caseObject().orElseThrow();
        List<JsonNode> expected = List.of(
                IntNode.valueOf(7),
                IntNode.valueOf(Integer.MIN_VALUE),
                IntNode.valueOf(Integer.MAX_VALUE),
                LongNode.valueOf(1L << 31),
                LongNode.valueOf(Long.MAX_VALUE),
                BigIntegerNode.valueOf(BigInteger.TWO.pow(63)),
                DoubleNode.valueOf(1),
                DoubleNode.valueOf(100),
                DoubleNode.valueOf(100));
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(expected.get(i), of.at("/n/" + i));
        }
        assertTrue(of.at("/t/0").asBoolean());
        assertFalse(of.at("/t/1").asBoolean());
        assertTrue(of.at("/t/2").isNull());
        assertEquals("x", of.at("/t/3").textValue());
    }

    @Test
    void aNameMayHaveACharacterOrAHundredAndTwenty() {
        for (String name : List.of("x", "🍂".repeat(120))) {
            assertEquals(
                    name,
                    fields("\"name\":\"" + name + "\"").pile().orElseThrow().name());
        }
        Problem problem = only(fields("\"name\":\"" + "x".repeat(121) + "\""));
        assertEquals("text of 1 to 120 characters, not only spaces, without control characters", problem.allowed());
        assertEquals("\"Heap by the shed\"", problem.example());
    }

    @Test
    void aNoteMayBeEmptyAndRunOverLines() {
        String entry = "\"log\":[{\"date\":\"2026-11-21\",\"note\":\"%s\"}]";
        for (String note : List.of("", "x".repeat(4000), "a\\nb\\tc\\r", "\ud7ff\ue000")) {
            assertEquals(List.of(), fields(entry.formatted(note)).problems(), note);
        }
        for (String note : List.of("x".repeat(4001), "a\\u000bb", "\\ud800", "\\udfff")) {
            assertEquals(
                    "text of 0 to 4000 characters, without control characters other than line breaks and tabs",
                    only(fields(entry.formatted(note))).allowed());
        }
    }

    @Test
    void falseStaysFalse() {
        assertFalse(fields("\"container\":{\"rodentProof\":false}")
                .pile()
                .orElseThrow()
                .container()
                .rodentProof());
        assertTrue(fields("\"container\":{\"rodentProof\":true}")
                .pile()
                .orElseThrow()
                .container()
                .rodentProof());
    }

    @ParameterizedTest
    @CsvSource({"12,12", "12.0,12", "0.5,0.5", "-0.0,0", "40,40"})
    void wholeNumbersAreWrittenWithoutAPoint(String given, String written) {
        Pile pile = fields("\"place\":{\"latitude\":" + given + "}").pile().orElseThrow();
        assertEquals(written, new PileWriter().tree(pile).at("/place/latitude").toString());
    }

    @Test
    void aUnitThatIsMisspeltOrOfAnotherKindIsMetWithWhatIsAllowed() {
        Problem near = only(fields("\"container\":{\"height\":{\"value\":1,\"unit\":\"metrse\"}}"));
        assertEquals(Optional.of("m"), near.closest());
        assertEquals("one of the units m, cm, mm, in, ft", near.allowed());
        assertEquals("{\"value\": 0.9, \"unit\": \"m\"}", near.example());
        Problem acid =
                only(fields("\"log\":[{\"date\":\"2026-11-21\",\"measured\":{\"ph\":{\"value\":7,\"unit\":\"%\"}}}]"));
        assertEquals("the unit pH", acid.allowed());
    }

    /** A reader of several faults hears of the date that cannot be read once, and of none that rests on it. */
    @Test
    void datesThatRestOnAnUnreadDateAreLeftAlone() {
        assertEquals(
                List.of("/built"),
                read(
                                "{\"heapwright\":\"pile/1\",\"built\":\"soon\",\"asOf\":\"2026-11-21\",\"log\":[{\"date\":\"2026-11-30\"}]}")
                        .problems()
                        .stream()
                        .map(Problem::pointer)
                        .toList());
    }

    @Test
    void whatWasTakenForADateIsTold() {
        ReadResult.Accepted recipe =
                (ReadResult.Accepted) read("{\"heapwright\":\"pile/1\",\"built\":\"2026-11-02\",\"log\":[]}");
        assertEquals(List.of(new Note("/asOf", "Taken as 2026-11-02, the latest date in the file.")), recipe.notes());
        ReadResult.Accepted log = (ReadResult.Accepted) fields("\"log\":[{\"date\":\"2026-11-10\"}]");
        assertEquals(
                List.of(new Note("/built", "Taken as 2026-10-11, about a month before the earliest date in the file.")),
                log.notes());
        ReadResult.Accepted empty = (ReadResult.Accepted) fields("\"log\":[]");
        assertEquals(
                List.of(new Note("/built", "Taken as 2026-10-22, about a month before the earliest date in the file.")),
                empty.notes());
        assertTrue(empty.pile().orElseThrow().builtAssumed());
    }

    @Test
    void builtAloneGivesTheDayOfAdvice() {
        Pile pile = read("{\"heapwright\":\"pile/1\",\"built\":\"2026-11-02\"}")
                .pile()
                .orElseThrow();
        assertEquals(pile.built(), pile.asOf());
    }
}
