package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.Seed;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** Whatever comes in, the reader answers with a pile or with problems that can be shown. */
@Tag("thorough")
class AnyInputTest {

    private static final List<String> ODD = List.of(
            "null",
            "true",
            "\"\"",
            "\"12,5\"",
            "\"2026-02-30\"",
            "\"smels-sour\"",
            "\"bucket\"",
            "-1",
            "0",
            "140",
            "1e308",
            "123456789012345678901234567890",
            "[]",
            "{}",
            "[[[[]]]]",
            "{\"value\":1}",
            "{\"value\":1e308,\"unit\":\"t\"}",
            "\"\\ud800\"",
            "\"\\u0000\"");

    private final PileReader reader = new PileReader(new TestVocabulary());
    private final ObjectMapper mapper = new ObjectMapper();

    @Provide
    Arbitrary<String> documents() {
        return PileArbitraries.documents();
    }

    @Property(tries = 500, seed = Seed.FIXED)
    void randomBytesAreAnswered(@ForAll byte[] bytes) {
        answered(bytes);
    }

    @Property(tries = 500, seed = Seed.FIXED)
    void randomTextIsAnswered(@ForAll String text) {
        answered(text.getBytes(StandardCharsets.UTF_8));
    }

    @Property(tries = 500, seed = Seed.FIXED)
    void aDocumentWithAFewBytesChangedIsAnswered(@ForAll("documents") String document, @ForAll long seed) {
        Random random = new Random(seed);
        byte[] bytes = document.getBytes(StandardCharsets.UTF_8);
        for (int i = random.nextInt(4); i >= 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        answered(bytes);
    }

    @Property(tries = 300, seed = Seed.FIXED)
    void aDocumentCutShortIsRefused(@ForAll("documents") String document, @ForAll long seed) {
        String cut = document.substring(
                0, new Random(seed).nextInt(document.stripTrailing().length()));
        assertFalse(answered(cut.getBytes(StandardCharsets.UTF_8)).problems().isEmpty());
    }

    @Property(tries = 600, seed = Seed.FIXED)
    void aDocumentWithValuesExchangedIsAnsweredAndPointsAtWhatIsThere(
            @ForAll("documents") String document, @ForAll long seed) throws JsonProcessingException {
        Random random = new Random(seed);
        ObjectNode tree = (ObjectNode) mapper.readTree(document);
        for (int i = random.nextInt(5); i >= 0; i--) {
            mutate(tree, random);
        }
        ReadResult result = answered(tree.toString().getBytes(StandardCharsets.UTF_8));
        for (Problem problem : result.problems()) {
            JsonPointer pointer = JsonPointer.compile(problem.pointer());
            boolean there = !tree.at(pointer).isMissingNode();
            assertNotEquals(problem.found().equals("nothing"), there, problem::message);
            assertTrue(there || !tree.at(pointer.head()).isMissingNode(), problem::message);
        }
    }

    private void mutate(ObjectNode tree, Random random) throws JsonProcessingException {
        List<JsonNode> containers = new ArrayList<>();
        collect(tree, containers);
        JsonNode chosen = containers.get(random.nextInt(containers.size()));
        JsonNode odd = mapper.readTree(ODD.get(random.nextInt(ODD.size())));
        if (chosen instanceof ArrayNode list) {
            if (list.isEmpty() || random.nextInt(3) == 0) {
                list.add(odd);
            } else {
                list.set(random.nextInt(list.size()), odd);
            }
        } else if (chosen instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String name = names.isEmpty() ? "x" : names.get(random.nextInt(names.size()));
            switch (random.nextInt(4)) {
                case 0 -> object.remove(name);
                case 1 -> object.set(name + "x", odd);
                default -> object.set(name, odd);
            }
        }
    }

    private static void collect(JsonNode node, List<JsonNode> containers) {
        if (node.isContainerNode()) {
            containers.add(node);
            node.forEach(child -> collect(child, containers));
        }
    }

    private ReadResult answered(byte[] document) {
        ReadResult result = reader.read("pile.json", document);
        assertEquals(result.pile().isPresent(), result.problems().isEmpty());
        assertTrue(result.problems().size() <= PileReader.MOST_PROBLEMS);
        for (Problem problem : result.problems()) {
            JsonPointer.compile(problem.pointer());
            assertTrue(problem.line() >= 1);
            assertTrue(problem.message().chars().noneMatch(Character::isISOControl), problem::message);
            assertFalse(problem.found().isBlank() || problem.allowed().isBlank());
        }
        return result;
    }
}
