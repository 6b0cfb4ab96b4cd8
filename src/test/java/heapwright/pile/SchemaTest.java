package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.Dialects;
import heapwright.Seed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The published schema and the reader say the same, as far as a schema can. */
class SchemaTest {

    private static final Path SCHEMA = Path.of("docs", "schema", "pile.schema.json");

    /**
     * What only the reader can see: ids of the tables, one date against another, units
     * converted, JSON itself. (That 30 February is no day is left to a schema only where it asserts formats.)
     */
    private static final Set<String> BEYOND_A_SCHEMA = Set.of(
            "a-field-is-given-twice",
            "a-limit-is-out-of-its-span",
            "a-limit-is-unknown",
            "a-material-is-described-twice",
            "a-material-is-misspelt",
            "a-date-is-not-in-the-calendar",
            "a-sign-is-both-seen-and-not-seen",
            "a-step-taken-on-is-misspelt",
            "a-unit-is-unknown",
            "a-unit-of-fixed-size-is-redefined",
            "an-amount-would-fill-a-village",
            "an-entry-is-later-than-the-day-of-advice",
            "an-entry-is-older-than-the-pile",
            "an-own-material-has-a-ratio-and-no-nitrogen",
            "an-own-material-has-more-carbon-than-its-dry-mass",
            "carbon-and-nitrogen-disagree",
            "no-date-is-given",
            "the-pile-was-built-after-the-day-of-advice",
            "two-documents-stand-in-one-file");

    private final ObjectMapper mapper = new ObjectMapper();
    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final String text = read(SCHEMA);
    private final Schema schema = registry.getSchema(text);
    private final JsonNode tree = tree(text);

    @Provide
    Arbitrary<String> documents() {
        return PileArbitraries.documents();
    }

    @Property(tries = 200, seed = Seed.FIXED)
    void generatedDocumentsPass(@ForAll("documents") String document) {
        assertEquals(List.of(), schema.validate(document, InputFormat.JSON));
    }

    @Example
    void theSchemaIsASchema() {
        Schema meta =
                registry.getSchema(SchemaLocation.of(Dialects.getDraft202012().getId()));
        assertEquals(List.of(), meta.validate(text, InputFormat.JSON));
        assertFalse(meta.validate(text.replace("\"type\": \"object\"", "\"type\": 7"), InputFormat.JSON)
                .isEmpty());
        assertEquals("urn:heapwright:pile:1", tree.get("$id").asText());
    }

    @Example
    void theSchemaKnowsTheFieldsOfTheReaderAndNoOthers() {
        Map<Shape, List<JsonNode>> objects = new LinkedHashMap<>();
        for (Shape shape : Shape.values()) {
            objects.put(
                    shape,
                    switch (shape) {
                        case PILE -> List.of(tree);
                        case QUANTITY ->
                            Stream.of("length", "temperature", "volume", "percent", "acidity", "density")
                                    .map(this::def)
                                    .toList();
                        case OWN_MATERIAL -> List.of(def("ownMaterial"));
                        default -> List.of(def(shape.name().toLowerCase(java.util.Locale.ROOT)));
                    });
        }
        objects.forEach((shape, nodes) -> nodes.forEach(node -> {
            List<String> fields = new ArrayList<>();
            node.get("properties").fieldNames().forEachRemaining(fields::add);
            assertEquals(shape.fields(), fields, shape.name());
            assertFalse(node.get("additionalProperties").asBoolean(true), shape.name());
        }));
        long closed = tree.findValues("additionalProperties").stream()
                .filter(JsonNode::isBoolean)
                .count();
        assertEquals(objects.values().stream().mapToInt(List::size).sum(), closed, "objects without a shape");
    }

    @Example
    void everyFieldIsReallyRead() {
        PileReader reader = new PileReader(new TestVocabulary());
        String bad = "[[]]";
        Map<Shape, String> around = Map.ofEntries(
                Map.entry(Shape.PILE, "%s"),
                Map.entry(Shape.PLACE, "\"asOf\":\"2026-11-21\",\"place\":{%s}"),
                Map.entry(Shape.CONTAINER, "\"asOf\":\"2026-11-21\",\"container\":{%s}"),
                Map.entry(Shape.QUANTITY, "\"asOf\":\"2026-11-21\",\"container\":{\"height\":{%s}}"),
                Map.entry(Shape.INGREDIENT, "\"asOf\":\"2026-11-21\",\"recipe\":[{%s}]"),
                Map.entry(Shape.ENTRY, "\"asOf\":\"2026-11-21\",\"log\":[{%s}]"),
                Map.entry(Shape.TESTED, "\"log\":[{\"date\":\"2026-11-21\",\"tested\":[{%s}]}]"),
                Map.entry(Shape.ADVISED, "\"asOf\":\"2026-11-21\",\"advised\":[{%s}]"),
                Map.entry(Shape.MEASURED, "\"log\":[{\"date\":\"2026-11-21\",\"measured\":{%s}}]"),
                Map.entry(Shape.KEEPER, "\"asOf\":\"2026-11-21\",\"keeper\":{%s}"),
                Map.entry(Shape.AIM, "\"asOf\":\"2026-11-21\",\"aim\":{%s}"),
                Map.entry(Shape.STOCK, "\"asOf\":\"2026-11-21\",\"atHand\":[{%s}]"),
                Map.entry(Shape.OWN_MATERIAL, "\"asOf\":\"2026-11-21\",\"materials\":[{%s}]"));
        for (Shape shape : Shape.values()) {
            for (String field : shape.fields()) {
                String document = "{" + String.format(around.get(shape), "\"" + field + "\":" + bad) + "}";
                List<String> pointers =
                        reader.read("x", document.getBytes(java.nio.charset.StandardCharsets.UTF_8)).problems().stream()
                                .map(Problem::pointer)
                                .filter(pointer -> pointer.contains("/" + field))
                                .toList();
                assertFalse(pointers.isEmpty(), document);
            }
        }
    }

    @Example
    void theSchemaKnowsTheTokensAndSpellingsOfTheReader() {
        assertEquals(tokens(Setting.values()), enumOf("place", "settings"));
        assertEquals(tokens(Container.Kind.values()), enumOf("container", "kind"));
        assertEquals(tokens(Container.Cover.values()), enumOf("container", "cover"));
        assertEquals(tokens(Container.Base.values()), enumOf("container", "base"));
        assertEquals(tokens(Container.Insulation.values()), enumOf("container", "insulation"));
        assertEquals(tokens(Action.values()), enumOf("entry", "done"));
        assertEquals(tokens(HomeTest.values()), enumOf("tested", "test"));
        assertEquals(tokens(Tested.Result.values()), enumOf("tested", "result"));
        assertEquals(tokens(Aim.Use.values()), enumOf("aim", "use"));
        assertEquals(tokens(Gear.values()), enumOf("keeper", "lacks"));
        assertEquals(spellings(LengthUnit.values()), enumOf("length", "unit"));
        assertEquals(spellings(TemperatureUnit.values()), enumOf("temperature", "unit"));
        assertEquals(spellings(VolumeUnit.values()), enumOf("volume", "unit"));
        assertEquals(spellings(DensityUnit.values()), enumOf("density", "unit"));
        assertEquals(spellings(PlainUnit.PERCENT), enumOf("percent", "unit"));
        assertEquals(spellings(PlainUnit.PH), enumOf("acidity", "unit"));
    }

    @Example
    void theSchemaKnowsTheSizesOfTheReader() {
        assertEquals(Lists.RECIPE, tree.at("/properties/recipe/maxItems").asInt());
        assertEquals(Lists.LOG, tree.at("/properties/log/maxItems").asInt());
        assertEquals(Lists.STOCK, tree.at("/properties/atHand/maxItems").asInt());
        assertEquals(Lists.MATERIALS, tree.at("/properties/materials/maxItems").asInt());
        assertEquals(Lists.SIGNS, def("entry").at("/properties/seen/maxItems").asInt());
        assertEquals(
                Lists.SIGNS, def("entry").at("/properties/notSeen/maxItems").asInt());
        assertEquals(Lists.ADDED, def("entry").at("/properties/added/maxItems").asInt());
        assertEquals(Lists.TOKENS, def("entry").at("/properties/done/maxItems").asInt());
        assertEquals(
                Lists.TOKENS, def("place").at("/properties/settings/maxItems").asInt());
        assertEquals(Words.NAME.longest(), def("name").get("maxLength").asInt());
        assertEquals(
                Words.NOTE.longest(),
                def("entry").at("/properties/note/maxLength").asInt());
        assertEquals(PileReader.VERSION, tree.at("/properties/heapwright/const").asText());
    }

    @Example
    void refusedDocumentsFailTheSchemaAsFarAsItCanSee() throws IOException {
        Set<String> passed = new TreeSet<>();
        for (Path file : InvalidCasesTest.documents()) {
            if (passes(read(file))) {
                passed.add(file.getFileName().toString().replace(".json", ""));
            }
        }
        assertEquals(new TreeSet<>(BEYOND_A_SCHEMA), passed);
    }

    private boolean passes(String document) {
        try {
            return mapper.readTree(document).isObject()
                    && schema.validate(document, InputFormat.JSON).isEmpty();
        } catch (IOException e) {
            return false;
        }
    }

    private JsonNode def(String name) {
        JsonNode def = tree.at("/$defs/" + name);
        assertTrue(def.isObject(), name);
        return def;
    }

    private List<String> enumOf(String def, String property) {
        JsonNode node = def(def).at("/properties/" + property);
        List<String> words = new ArrayList<>();
        (node.has("enum") ? node.get("enum") : node.at("/items/enum")).forEach(word -> words.add(word.asText()));
        return words;
    }

    private static List<String> tokens(Token... all) {
        return Stream.of(all).map(Token::token).toList();
    }

    private static List<String> spellings(Unit... units) {
        return Stream.of(units).flatMap(unit -> unit.spellings().stream()).toList();
    }

    private JsonNode tree(String json) {
        try {
            return mapper.readTree(json);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
