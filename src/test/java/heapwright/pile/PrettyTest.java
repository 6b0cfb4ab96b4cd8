package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

/** A written pile is read and edited by hand. */
class PrettyTest {

    private static final int WIDTH = 110;

    private final ObjectMapper mapper = new ObjectMapper();

    private JsonNode tree(String json) {
        try {
            return mapper.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }

    @Test
    void smallThingsStandOnALineAndLargeOnesAreIndentedByTwo() {
        String printed = """
                {
                  "name": "Heap \\"one\\"",
                  "place": {"latitude": 60.2, "settings": ["rats-about", "windy"]},
                  "recipe": [
                    {"material": "urea", "amount": 1, "piece": {"value": 2, "unit": "cm"}},
                    {"material": "leaves-mixed", "amount": 8, "unit": "bucket"}
                  ],
                  "none": [],
                  "nothing": {},
                  "deep": [
                    [
                      [[1, 2], [3]],
                      []
                    ]
                  ],
                  "last": true
                }""";
        assertEquals(printed, Pretty.print(tree(printed)));
    }

    @Test
    void theDocumentItselfIsNeverOneLine() {
        assertEquals("{\n  \"a\": 1\n}", Pretty.print(tree("{\"a\":1}")));
        assertEquals("[\n  1,\n  2\n]", Pretty.print(tree("[1,2]")));
        assertEquals("{}", Pretty.print(tree("{}")));
    }

    /** The line is counted with its indent and the name of the field before it. */
    @Test
    void aLineIsAtMostAHundredAndTenWide() {
        String before = "  \"list\": [1, \"";
        String full = "x".repeat(WIDTH - before.length() - "\"]".length());
        String line = before + full + "\"]";
        assertEquals(WIDTH, line.length());
        assertEquals("{\n" + line + "\n}", Pretty.print(tree("{\"list\":[1,\"" + full + "\"]}")));
        assertEquals(
                "{\n  \"list\": [\n    1,\n    \"" + full + "x\"\n  ]\n}",
                Pretty.print(tree("{\"list\":[1,\"" + full + "x\"]}")));
        String item = "x".repeat(WIDTH - "    [1, \"\"]".length());
        assertEquals(
                "{\n  \"l\": [\n    [1, \"" + item + "\"],\n    2\n  ]\n}",
                Pretty.print(tree("{\"l\":[[1,\"" + item + "\"],2]}")));
        assertEquals(
                "{\n  \"l\": [\n    [\n      1,\n      \"" + item + "x\"\n    ],\n    2\n  ]\n}",
                Pretty.print(tree("{\"l\":[[1,\"" + item + "x\"],2]}")));
    }
}
