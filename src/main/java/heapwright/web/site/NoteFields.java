package heapwright.web.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.phrase.NumberPhrase;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.TemperatureUnit;
import heapwright.report.Units;
import heapwright.report.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The fields of a note and the entry of the document, one made of the other. */
final class NoteFields {

    private final Words words;

    NoteFields(Words words) {
        this.words = words;
    }

    /** Puts what was typed into an entry of the document, where it differs from what the form showed before. */
    void fill(ObjectNode entry, Map<String, String> before, Map<String, String> typed) {
        entry.put("date", typed.getOrDefault("date", ""));
        if (changed("seen", before, typed)) {
            words(entry, "seen", typed);
            // What is seen now was not missed.
            List<String> seen = ticked(typed, "seen");
            if (entry.get("notSeen") instanceof ArrayNode denied) {
                for (int i = denied.size() - 1; i >= 0; i--) {
                    if (seen.contains(denied.get(i).asText())) {
                        denied.remove(i);
                    }
                }
            }
        }
        if (changed("core", before, typed)) {
            temperature(entry, "core", typed, "core");
            lowest(entry.withObject("/measured"));
        }
        if (changed("out", before, typed)) {
            temperature(entry, "outdoor", typed, "out");
        }
        if (changed("done", before, typed)) {
            words(entry, "done", typed);
        }
        if (changed("tested", before, typed)) {
            tested(entry, typed);
        }
        if (changed("material", before, typed) || changed("amount", before, typed) || changed("unit", before, typed)) {
            added(entry, typed);
        }
        if (changed("note", before, typed)) {
            entry.remove("note");
            if (!empty(typed, "note")) {
                entry.put("note", typed.get("note"));
            }
        }
        for (String list : List.of("measured", "seen", "notSeen", "done", "added", "tested")) {
            if (entry.path(list).isEmpty()) {
                entry.remove(list);
            }
        }
    }

    private static boolean changed(String field, Map<String, String> before, Map<String, String> typed) {
        return !typed.getOrDefault(field, "").equals(before.getOrDefault(field, ""));
    }

    private static void words(ObjectNode entry, String field, Map<String, String> typed) {
        ArrayNode all = entry.putArray(field);
        ticked(typed, field).stream().filter(word -> !word.isEmpty()).forEach(all::add);
    }

    /** Home tests as the form sends them: the test, an equals sign and the result. */
    private static void tested(ObjectNode entry, Map<String, String> typed) {
        ArrayNode all = entry.putArray("tested");
        ticked(typed, "tested").stream()
                .map(one -> one.split("=", 2))
                .filter(one -> one.length == 2)
                .forEach(one -> all.addObject().put("test", one[0]).put("result", one[1]));
    }

    /** The material of the form is the first of the entry; others stay. */
    private static void added(ObjectNode entry, Map<String, String> typed) {
        ArrayNode all = entry.withArray("added");
        if (empty(typed, "material")) {
            if (!all.isEmpty()) {
                all.remove(0);
            }
            return;
        }
        ObjectNode one = all.isEmpty() ? all.addObject() : (ObjectNode) all.get(0);
        one.put("material", typed.get("material"));
        String amount = typed.getOrDefault("amount", "");
        NumberPhrase.number(amount).ifPresentOrElse(v -> one.put("amount", v), () -> one.put("amount", amount));
        one.put("unit", typed.getOrDefault("unit", ""));
    }

    /** An entry as the form shows it. */
    Map<String, String> told(Entry entry) {
        Map<String, String> told = new LinkedHashMap<>();
        told.put("date", entry.date().toString());
        told.put("core", degrees(entry.measured().coreC()));
        told.put("out", degrees(entry.measured().outdoorC()));
        told.put("seen", String.join(" ", entry.seen()));
        told.put(
                "done",
                String.join(" ", entry.done().stream().map(Action::token).toList()));
        told.put(
                "tested",
                entry.tested().stream()
                        .map(t -> t.test().token() + "=" + t.result().token())
                        .collect(Collectors.joining(" ")));
        if (!entry.added().isEmpty()) {
            Ingredient first = entry.added().get(0);
            told.put("material", MaterialChoices.shown(words.knowledge(), first.material()));
            told.put("amount", plain(first.amount().value()));
            told.put("unit", first.amount().unit());
        }
        told.put("note", entry.note());
        told.values().removeIf(String::isEmpty);
        return told;
    }

    private String degrees(OptionalDouble celsius) {
        if (celsius.isEmpty()) {
            return "";
        }
        double c = celsius.getAsDouble();
        return plain(Math.round((words.figures().units() == Units.US ? c * 9 / 5 + 32 : c) * 10) / 10.0);
    }

    static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The lowest of a day does not outlive a core that was put right to less, or taken away. */
    private static void lowest(ObjectNode measured) {
        if (measured.has("coreLowest") && !(celsius(measured, "core") >= celsius(measured, "coreLowest"))) {
            measured.remove("coreLowest");
        }
    }

    private static double celsius(ObjectNode measured, String field) {
        double value = measured.at("/" + field + "/value").asDouble(Double.NaN);
        boolean us = measured.at("/" + field + "/unit").asText().equals(TemperatureUnit.FAHRENHEIT.symbol());
        return us ? TemperatureUnit.FAHRENHEIT.to(TemperatureUnit.CELSIUS, value) : value;
    }

    private void temperature(ObjectNode entry, String field, Map<String, String> typed, String from) {
        ObjectNode measured = entry.withObject("/measured");
        measured.remove(field);
        if (!empty(typed, from)) {
            AboutPile.temperature(
                    measured, field, typed.get(from), words.figures().units());
        }
    }

    static boolean empty(Map<String, String> typed, String field) {
        return typed.getOrDefault(field, "").isBlank();
    }

    static List<String> ticked(Map<String, String> typed, String field) {
        return List.of(typed.getOrDefault(field, "").split(" "));
    }
}
