package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each common slip in JSON is told as what it is, at its place. */
class BrokenJsonTest {

    private static final String COMMENT = "JSON without comments; a log entry has a \"note\" field for free words";
    private static final String QUOTES = "words in straight double quotes, such as \"bucket\"";
    private static final String BREAK = "text in quotes on one line; a line break within it is written \\n";
    private static final String LAST_COMMA = "no comma after the last item";
    private static final String DECIMAL = "numbers with a decimal point: 12.5, not 12,5";
    private static final String BETWEEN =
            "a comma between one item and the next, a colon between a field and its value";
    private static final String BARE =
            "words in double quotes, such as \"bucket\"; only true, false and numbers stand without";
    private static final String ANY = "JSON, in which words stand in double quotes and numbers stand without";

    private final PileReader reader = new PileReader(new TestVocabulary());

    private Problem only(String document) {
        List<Problem> problems =
                reader.read("x", document.getBytes(StandardCharsets.UTF_8)).problems();
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    static List<Arguments> slips() {
        return List.of(
                Arguments.of("# my heap\n{}", "column 1, before \"# my heap\"", COMMENT),
                Arguments.of("{\"a\": 1, // one\n}", "column 10, before \"// one\"", COMMENT),
                Arguments.of("{\"a\": 'x'}", "column 7, before \"'x'}\"", QUOTES),
                Arguments.of("{\"a\": “x”}", "column 7, before \"“x”}\"", QUOTES),
                Arguments.of("{“a”: 1}", "column 2, before \"“a”: 1}\"", QUOTES),
                Arguments.of("{\"a\": „x“}", "column 7, before \"„x“}\"", QUOTES),
                Arguments.of("{\"a\": ”x”}", "column 7, before \"”x”}\"", QUOTES),
                Arguments.of("{\"a\": ‘x’}", "column 7, before \"‘x’}\"", QUOTES),
                Arguments.of("{\"a\": \"one\ntwo\"}", "column 11, before \"\\u000atwo\"}\"", BREAK),
                Arguments.of("[1, 2, ]", "column 8, before \"]\"", LAST_COMMA),
                Arguments.of("{\"a\": 1,\n}", "column 1, before \"}\"", LAST_COMMA),
                Arguments.of("{\"a\": 12,5}", "column 10, before \"5}\"", DECIMAL),
                Arguments.of("{\"a\": 1 \"b\": 2}", "column 9, before \"\"b\": 2}\"", BETWEEN),
                Arguments.of("[1 {\"b\": 2}]", "column 4, before \"{\"b\": 2}]\"", BETWEEN),
                Arguments.of("[1 [2]]", "column 4, before \"[2]]\"", BETWEEN),
                Arguments.of("{_a: 1}", "column 2, before \"_a: 1}\"", BARE),
                Arguments.of("{bucket: 1}", "column 2, before \"bucket: 1}\"", BARE),
                Arguments.of("{\"a\": ]", "column 7, before \"]\"", ANY),
                Arguments.of("{\"a\": *}", "column 7, before \"*}\"", ANY));
    }

    @ParameterizedTest
    @MethodSource("slips")
    void isToldByTheCharacterWhereReadingStops(String document, String place, String allowed) {
        Problem problem = only(document);
        assertEquals("something that is not JSON at " + place, problem.found());
        assertEquals(allowed, problem.allowed());
    }

    @Test
    void noMoreThanTwelveCharactersOfTheLineAreQuoted() {
        assertEquals(
                "something that is not JSON at column 2, before \"abcdefghijkl\"",
                only("{abcdefghijklmnop: 1}").found());
        assertEquals(
                "something that is not JSON at column 2, before \"abc: 1}\"",
                only("{abc: 1}\n\n").found());
    }

    @Test
    void whatIsLeftOpenEndsInTheMiddle() {
        for (String open : List.of("{", "{\"a\": [1", "{\"a\": \"x", "{\"a\"", "{\"a\": 1,  \n")) {
            assertEquals(
                    "the end of the file in the middle of something", only(open).found(), open);
            assertEquals(
                    "a file in which every { [ and \" is closed", only(open).allowed(), open);
        }
    }
}
