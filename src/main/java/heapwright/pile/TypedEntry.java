package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A day's entry as it was typed, to be put into a document. The document is read afterwards like every other, and the
 * reader finds what is wrong with it.
 *
 * @param date the day
 * @param seen ids of signs that were noticed
 * @param notSeen ids of signs that were looked for and not found
 * @param measured what was measured, by the field of the document
 * @param done tokens of what was done
 * @param added what was added
 * @param tested how home tests came out: the result by the test, as the document names them
 * @param note free words
 */
public record TypedEntry(
        LocalDate date,
        List<String> seen,
        List<String> notSeen,
        Map<String, Figure> measured,
        List<String> done,
        List<Added> added,
        Map<String, String> tested,
        String note) {

    /**
     * A figure with its unit.
     *
     * @param value the figure
     * @param unit its unit
     */
    public record Figure(double value, String unit) {}

    /** What was added: a material by id or name, how much, and the unit. */
    public record Added(String material, double amount, String unit) {}

    public TypedEntry {
        seen = List.copyOf(seen);
        notSeen = List.copyOf(notSeen);
        measured = Map.copyOf(measured);
        done = List.copyOf(done);
        added = List.copyOf(added);
        tested = Map.copyOf(tested);
    }

    /** Whether it tells nothing. */
    public boolean empty() {
        return seen.isEmpty()
                && notSeen.isEmpty()
                && measured.isEmpty()
                && done.isEmpty()
                && added.isEmpty()
                && tested.isEmpty()
                && note.isBlank();
    }

    /**
     * The document with this entry after those of its day and before later ones. The day of advice, where the document
     * names one that is earlier, moves on to the entry's. All else stays as it was typed.
     *
     * @throws IOException when the document is not JSON
     */
    public byte[] into(byte[] document) throws IOException {
        ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(document);
        ArrayNode log = tree.withArray("log");
        int place = 0;
        while (place < log.size() && !day(log.get(place)).isAfter(date)) {
            place++;
        }
        log.insert(place, node());
        if (tree.has("asOf") && LocalDate.parse(tree.get("asOf").asText()).isBefore(date)) {
            tree.put("asOf", date.toString());
        }
        return (Pretty.print(tree) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static LocalDate day(JsonNode entry) {
        return LocalDate.parse(entry.get("date").asText());
    }

    private ObjectNode node() {
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        entry.put("date", date.toString());
        texts(entry, "seen", seen);
        texts(entry, "notSeen", notSeen);
        if (!measured.isEmpty()) {
            ObjectNode figures = entry.putObject("measured");
            measured.forEach((field, figure) ->
                    figures.putObject(field).put("value", figure.value()).put("unit", figure.unit()));
        }
        texts(entry, "done", done);
        if (!added.isEmpty()) {
            ArrayNode all = entry.putArray("added");
            added.forEach(a -> all.addObject()
                    .put("material", a.material())
                    .put("amount", a.amount())
                    .put("unit", a.unit()));
        }
        if (!tested.isEmpty()) {
            ArrayNode all = entry.putArray("tested");
            new TreeMap<>(tested)
                    .forEach((test, result) -> all.addObject().put("test", test).put("result", result));
        }
        if (!note.isBlank()) {
            entry.put("note", note.strip());
        }
        return entry;
    }

    private static void texts(ObjectNode entry, String field, List<String> values) {
        if (!values.isEmpty()) {
            ArrayNode all = entry.putArray(field);
            values.forEach(all::add);
        }
    }
}
