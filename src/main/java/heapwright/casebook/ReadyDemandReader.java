package heapwright.casebook;

import com.fasterxml.jackson.databind.JsonNode;
import heapwright.advice.ready.Sureness;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.Ripeness;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads what a case demands of the answer to whether the compost is ready. */
final class ReadyDemandReader {

    private static final Set<String> FIELDS = Set.of(
            "for",
            "sure",
            "reasons",
            "notReasons",
            "tests",
            "notTests",
            "dates",
            "covers",
            "never",
            "spreadAfter",
            "contradictions");

    private final String file;
    private final Knowledge knowledge;

    ReadyDemandReader(String file, Knowledge knowledge) {
        this.file = file;
        this.knowledge = knowledge;
    }

    ReadyDemand read(JsonNode node) {
        Casebook.checkFields(file, node, FIELDS);
        Map<String, LocalDate> dates = new HashMap<>();
        node.path("dates").properties().forEach(e -> dates.put(e.getKey(), day(e.getValue())));
        Map<String, Double> covers = new HashMap<>();
        node.path("covers")
                .properties()
                .forEach(e -> covers.put(e.getKey(), e.getValue().asDouble()));
        return new ReadyDemand(
                maybe(Ripeness.values(), node.path("for")),
                maybe(Sureness.values(), node.path("sure")),
                all(RipeReason.values(), node.path("reasons")),
                all(RipeReason.values(), node.path("notReasons")),
                texts(node.path("tests")),
                texts(node.path("notTests")),
                dates,
                covers,
                texts(node.path("never")),
                node.has("spreadAfter") ? Optional.of(day(node.get("spreadAfter"))) : Optional.empty(),
                node.path("contradictions").asInt(0),
                knowledge);
    }

    private LocalDate day(JsonNode node) {
        try {
            return LocalDate.parse(node.asText());
        } catch (DateTimeParseException e) {
            throw new CaseFault(file + ": \"" + node.asText() + "\" is no day, such as 2027-05-02");
        }
    }

    private <T extends Id> Optional<T> maybe(T[] values, JsonNode id) {
        return id.isMissingNode() ? Optional.empty() : Optional.of(Casebook.one(file, values, id.asText()));
    }

    private <T extends Id> List<T> all(T[] values, JsonNode ids) {
        List<T> found = new ArrayList<>();
        ids.forEach(id -> found.add(Casebook.one(file, values, id.asText())));
        return found;
    }

    private static List<String> texts(JsonNode list) {
        List<String> found = new ArrayList<>();
        list.forEach(t -> found.add(t.asText()));
        return found;
    }
}
