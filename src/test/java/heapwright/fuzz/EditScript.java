package heapwright.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Reads bytes as a document of {@code cases/} and edits to it, so that what a fuzzer tries is nearly always a document
 * that the reader knows its way in. Two bytes name the document, then five each edit: two for the place, one for what is
 * done there, two for what is put there.
 */
final class EditScript {

    private static final int MOST_EDITS = 12;

    /** Marks the name of a list where one of its elements is meant; no field of a document ends so. */
    private static final String ELEMENT = "[]";

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<Double> FIGURES = List.of(
            0.0, 1e-9, 1e-3, 0.1, 0.5, 1.0, 2.0, 5.0, 10.0, 30.0, 40.0, 60.0, 73.0, 90.0, 99.0, 100.0, 150.0, 365.0,
            1e3, 1e4, 1e5, 1e6, 1e9, 1e15, 1e308, -1e-3, -1.0, -10.0, -40.0, -100.0, -1e9);
    private static final List<ObjectNode> DOCUMENTS = documents();

    /** What stands under each name in any document, so that a word is replaced by one of its kind. */
    private static final Map<String, List<JsonNode>> KNOWN = known();

    private EditScript() {}

    private record Place(JsonNode parent, String field, int index) {

        JsonNode value() {
            return parent.isObject() ? parent.get(field) : parent.get(index);
        }

        void put(JsonNode value) {
            if (parent instanceof ObjectNode object) {
                object.set(field, value);
            } else {
                ((ArrayNode) parent).set(index, value);
            }
        }

        void remove() {
            if (parent instanceof ObjectNode object) {
                object.remove(field);
            } else {
                ((ArrayNode) parent).remove(index);
            }
        }
    }

    static String documentOf(byte[] script) {
        ByteBuffer bytes = ByteBuffer.wrap(script);
        int first = bytes.remaining() < 2 ? 0 : Short.toUnsignedInt(bytes.getShort());
        ObjectNode document = DOCUMENTS.get(first % DOCUMENTS.size()).deepCopy();
        for (int edits = 0; edits < MOST_EDITS && bytes.remaining() >= 5; edits++) {
            List<Place> places = new ArrayList<>();
            collect(document, "", places);
            int where = Short.toUnsignedInt(bytes.getShort());
            int what = Byte.toUnsignedInt(bytes.get());
            int which = Short.toUnsignedInt(bytes.getShort());
            if (!places.isEmpty()) {
                edit(places.get(where % places.size()), what, which);
            }
        }
        return document.toString();
    }

    private static void edit(Place place, int what, int which) {
        switch (what % 8) {
            case 0 -> place.remove();
            case 1, 2 -> place.put(known(place.field(), which));
            case 3 -> repeat(place);
            case 4 -> {
                if (place.parent() instanceof ObjectNode object) {
                    List<String> names = KNOWN.keySet().stream()
                            .filter(n -> !n.endsWith(ELEMENT))
                            .toList();
                    String name = names.get(which % names.size());
                    object.set(name, known(name, which / names.size()));
                }
            }
            default -> place.put(altered(place.value(), what, which));
        }
    }

    private static JsonNode altered(JsonNode value, int what, int which) {
        if (value.isNumber()) {
            return DoubleNode.valueOf(
                    what % 2 == 0
                            ? FIGURES.get(which % FIGURES.size())
                            : value.asDouble() * FIGURES.get(which % FIGURES.size()));
        }
        if (value.isTextual()) {
            try {
                return TextNode.valueOf(LocalDate.parse(value.textValue())
                        .plusDays(which - 0x8000L)
                        .toString());
            } catch (DateTimeParseException e) {
                return TextNode.valueOf(value.textValue() + (char) which);
            }
        }
        return value;
    }

    private static void repeat(Place place) {
        if (place.value() instanceof ArrayNode list && !list.isEmpty()) {
            list.add(list.get(0).deepCopy());
        }
    }

    private static JsonNode known(String field, int which) {
        List<JsonNode> values = KNOWN.getOrDefault(field, List.of(DoubleNode.valueOf(1)));
        return values.get(which % values.size()).deepCopy();
    }

    /** Every value of a document with the name under which it or its list stands, in the order of the document. */
    private static void collect(JsonNode node, String name, List<Place> places) {
        if (node instanceof ObjectNode object) {
            object.properties().forEach(entry -> {
                places.add(new Place(object, entry.getKey(), 0));
                collect(entry.getValue(), entry.getKey(), places);
            });
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                places.add(new Place(list, name + ELEMENT, i));
                collect(list.get(i), name, places);
            }
        }
    }

    private static Map<String, List<JsonNode>> known() {
        Map<String, Map<String, JsonNode>> byText = new TreeMap<>();
        for (ObjectNode document : DOCUMENTS) {
            List<Place> places = new ArrayList<>();
            collect(document, "", places);
            places.forEach(place -> byText.computeIfAbsent(place.field(), f -> new TreeMap<>())
                    .put(place.value().toString(), place.value()));
        }
        Map<String, List<JsonNode>> known = new TreeMap<>();
        byText.forEach((name, values) -> known.put(name, List.copyOf(values.values())));
        return known;
    }

    private static List<ObjectNode> documents() {
        try (Stream<Path> files = Files.walk(Path.of("cases"))) {
            List<ObjectNode> documents = new ArrayList<>();
            for (Path file : files.filter(f -> f.toString().endsWith(".json"))
                    .filter(f -> !f.startsWith(Path.of("cases", "invalid")))
                    .sorted()
                    .toList()) {
                if (JSON.readTree(file.toFile()) instanceof ObjectNode document && document.has("heapwright")) {
                    document.remove("case");
                    documents.add(document);
                }
            }
            return documents;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
