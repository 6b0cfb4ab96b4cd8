package heapwright.casebook;

import com.fasterxml.jackson.databind.JsonNode;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Topic;
import heapwright.casebook.AuditExpectation.Within;
import heapwright.knowledge.Knowledge;
import heapwright.process.mixture.Averaging.Shortcut;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** Reads what a case demands of an audit. */
final class AuditReader {

    private static final Set<String> FIELDS = Set.of(
            "mark",
            "topics",
            "rules",
            "notRules",
            "keepOut",
            "leftOut",
            "cutBack",
            "mendMeets",
            "mendAdds",
            "notMendAdds",
            "unlock",
            "figures",
            "ownRatio",
            "shortcut");

    private static final Set<String> FIGURES = Set.of(
            "wetKg",
            "dryKg",
            "waterKg",
            "carbonKg",
            "nitrogenKg",
            "moisturePct",
            "carbonToNitrogen",
            "densityKgM3",
            "freeAirSpacePct",
            "looseM3",
            "settledM3",
            "coarseSharePct");

    private final String file;
    private final Knowledge knowledge;

    AuditReader(String file, Knowledge knowledge) {
        this.file = file;
        this.knowledge = knowledge;
    }

    /** @throws CaseFault when a field, an id or a figure is none that there is */
    AuditExpectation read(JsonNode told) {
        Casebook.checkFields(file, told, FIELDS);
        Map<Topic, Mark> topics = new EnumMap<>(Topic.class);
        told.path("topics")
                .properties()
                .forEach(e -> topics.put(
                        Casebook.one(file, Topic.values(), e.getKey()),
                        Casebook.one(file, Mark.values(), e.getValue().asText())));
        Map<String, Within> figures = new TreeMap<>();
        told.path("figures").properties().forEach(e -> {
            JsonNode figure = e.getValue();
            if (!FIGURES.contains(e.getKey())
                    || !figure.path("value").isNumber()
                    || !figure.path("within").isNumber()) {
                throw new CaseFault(file + ": the figure \"" + e.getKey()
                        + "\" needs a value and a within, and a name of " + FIGURES);
            }
            figures.put(
                    e.getKey(),
                    new Within(
                            figure.path("value").asDouble(),
                            figure.path("within").asDouble()));
        });
        return new AuditExpectation(
                told.hasNonNull("mark")
                        ? Optional.of(Casebook.one(
                                file, Mark.values(), told.get("mark").asText()))
                        : Optional.empty(),
                topics,
                texts(told.path("rules")),
                texts(told.path("notRules")),
                materials(told.path("keepOut")),
                texts(told.path("leftOut")),
                texts(told.path("cutBack")),
                told.hasNonNull("mendMeets") ? Optional.of(told.get("mendMeets").asBoolean()) : Optional.empty(),
                texts(told.path("mendAdds")),
                texts(told.path("notMendAdds")),
                told.hasNonNull("unlock") ? Optional.of(materials(told.get("unlock"))) : Optional.empty(),
                figures,
                told.path("ownRatio").isNumber()
                        ? OptionalDouble.of(told.get("ownRatio").asDouble())
                        : OptionalDouble.empty(),
                Optional.ofNullable(told.path("shortcut").textValue()).map(this::shortcut));
    }

    private Shortcut shortcut(String token) {
        return Arrays.stream(Shortcut.values())
                .filter(s -> s.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(token))
                .findFirst()
                .orElseThrow(() -> new CaseFault(file + ": \"" + token + "\" is no shortcut"));
    }

    private List<String> materials(JsonNode ids) {
        List<String> found = texts(ids);
        for (String id : found) {
            if (!knowledge.materials().containsKey(id)) {
                throw new CaseFault(file + ": \"" + id + "\" is not the id of a material");
            }
        }
        return found;
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts;
    }
}
