package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Days of a logger, to be put into the log of a document. A day that a logger told before is told anew, so that the same
 * file, or a longer one, can be brought again; what a person noted stays as it was typed.
 *
 * @param days the days
 * @param note begins the note by which an entry is known as a logger's
 */
public record LoggedDays(List<Day> days, String note) {

    /**
     * A day.
     *
     * @param date the day
     * @param coreC the core, °C
     * @param lowestC the lowest core of the day, °C
     * @param outdoorC the air, °C
     * @param rest what else its note tells
     */
    public record Day(
            LocalDate date, OptionalDouble coreC, OptionalDouble lowestC, OptionalDouble outdoorC, String rest) {}

    public LoggedDays {
        days = List.copyOf(days);
    }

    /**
     * The document with these days in order among the others.
     *
     * @throws IOException when the document is not JSON
     */
    public byte[] into(byte[] document) throws IOException {
        ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(document);
        Set<String> dates = days.stream().map(d -> d.date().toString()).collect(Collectors.toSet());
        List<JsonNode> entries = new ArrayList<>();
        tree.path("log").forEach(entry -> {
            boolean ours = entry.path("note").asText().startsWith(note);
            if (!ours || !dates.contains(entry.path("date").asText())) {
                entries.add(entry);
            }
        });
        days.forEach(day -> entries.add(entry(day)));
        entries.sort(Comparator.comparing(entry -> entry.path("date").asText()));
        ArrayNode log = tree.putArray("log");
        entries.forEach(log::add);
        String last = days.get(days.size() - 1).date().toString();
        if (tree.has("asOf") && tree.get("asOf").asText().compareTo(last) < 0) {
            tree.put("asOf", last);
        }
        return (Pretty.print(tree) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private ObjectNode entry(Day day) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        entry.put("date", day.date().toString());
        ObjectNode measured = entry.putObject("measured");
        temperature(measured, "core", day.coreC());
        temperature(measured, "coreLowest", day.lowestC());
        temperature(measured, "outdoor", day.outdoorC());
        entry.put("note", note + day.rest());
        return entry;
    }

    private static void temperature(ObjectNode measured, String field, OptionalDouble celsius) {
        celsius.ifPresent(c -> measured.putObject(field)
                .put("value", Math.round(c * 10) / 10.0)
                .put("unit", "C"));
    }
}
