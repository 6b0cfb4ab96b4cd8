package heapwright.web.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.phrase.NumberPhrase;
import heapwright.pile.Action;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import heapwright.report.JsonText;
import heapwright.report.Units;
import heapwright.report.Words;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.PileView.NoteView;
import heapwright.web.view.PileView.SignsView;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The form in which a day's temperatures, smell, work and additions are noted. What it makes is put into the pile's
 * document and read by the same reader as every document, which finds all that is wrong with it.
 */
final class NoteForm {

    private static final List<String> FIELDS =
            List.of("date", "core", "out", "seen", "done", "material", "amount", "unit", "note");

    /** Where a fault of the document belongs in the form. */
    private static final Map<String, String> PLACES = Map.of(
            "date", "date",
            "measured/core", "core",
            "measured/outdoor", "out",
            "seen", "seen",
            "added/0/amount", "amount",
            "added/0/unit", "unit",
            "note", "note");

    private final Site site;
    private final Words words;
    private final Texts texts;

    NoteForm(Site site, Words words, Texts texts) {
        this.site = site;
        this.words = words;
        this.texts = texts;
    }

    /** What was typed, by field; several ticks of one field in one line. */
    static Map<String, String> typed(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String field : FIELDS) {
            List<String> values = ctx.formParams(field);
            if (!values.isEmpty()) {
                typed.put(field, String.join(" ", values).strip());
            }
        }
        return typed;
    }

    /** The pile with the note, as the reader takes it. */
    ReadResult noted(Pile pile, Map<String, String> typed) {
        ObjectNode document = new PileWriter().tree(pile);
        ObjectNode entry = entry(typed);
        document.withArray("log").add(entry);
        LocalDate asOf = date(typed.getOrDefault("date", ""), pile.asOf());
        document.put("asOf", (asOf.isAfter(pile.asOf()) ? asOf : pile.asOf()).toString());
        byte[] bytes = JsonText.write(document).getBytes(StandardCharsets.UTF_8);
        return site.reader().read(pile.name(), bytes);
    }

    private ObjectNode entry(Map<String, String> typed) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        entry.put("date", typed.getOrDefault("date", ""));
        if (!empty(typed, "seen")) {
            Arrays.stream(typed.get("seen").split(" ")).forEach(entry.putArray("seen")::add);
        }
        ObjectNode measured = JsonNodeFactory.instance.objectNode();
        temperature(measured, "core", typed, "core");
        temperature(measured, "outdoor", typed, "out");
        if (!measured.isEmpty()) {
            entry.set("measured", measured);
        }
        if (!empty(typed, "done")) {
            Arrays.stream(typed.get("done").split(" ")).forEach(entry.putArray("done")::add);
        }
        if (!empty(typed, "material")) {
            ObjectNode added = entry.putArray("added").addObject();
            added.put("material", typed.get("material"));
            String amount = typed.getOrDefault("amount", "");
            NumberPhrase.number(amount).ifPresentOrElse(v -> added.put("amount", v), () -> added.put("amount", amount));
            added.put("unit", typed.getOrDefault("unit", ""));
        }
        if (!empty(typed, "note")) {
            entry.put("note", typed.get("note"));
        }
        return entry;
    }

    private void temperature(ObjectNode measured, String field, Map<String, String> typed, String from) {
        if (!empty(typed, from)) {
            AboutPile.temperature(
                    measured, field, typed.get(from), words.figures().units());
        }
    }

    private static boolean empty(Map<String, String> typed, String field) {
        return typed.getOrDefault(field, "").isBlank();
    }

    private static LocalDate date(String typed, LocalDate otherwise) {
        try {
            return LocalDate.parse(typed);
        } catch (java.time.DateTimeException e) {
            return otherwise;
        }
    }

    /** The faults of a refused note, at the fields they belong to. */
    List<Fault> faults(ReadResult read, Map<String, String> typed) {
        return read.problems().stream().map(p -> fault(p, typed)).toList();
    }

    private Fault fault(Problem problem, Map<String, String> typed) {
        String place = problem.pointer().replaceFirst("^/log/[0-9]+/", "");
        if (place.startsWith("added/0/material")) {
            return new Fault(
                    "material",
                    new MaterialFault(words.knowledge(), texts)
                            .text(texts.of("note.material"), typed.get("material"), problem));
        }
        Optional<Map.Entry<String, String>> field = PLACES.entrySet().stream()
                .filter(e -> place.startsWith(e.getKey()))
                .findFirst();
        if (place.startsWith("measured/")
                && field.filter(e -> NumberPhrase.number(typed.getOrDefault(e.getValue(), ""))
                                .isEmpty())
                        .isPresent()) {
            return new Fault(field.get().getValue(), texts.of("fault.temperature", problem.found(), problem.allowed()));
        }
        return field.map(e -> new Fault(
                        e.getValue(),
                        texts.of("fault.field", texts.of("note." + e.getValue()), problem.found(), problem.allowed())
                                + problem.closest()
                                        .map(near -> " " + texts.of("fault.near", near))
                                        .orElse("")))
                .orElseGet(() -> new Fault("", problem.message()));
    }

    /** The form as it is shown. */
    NoteView view(Map<String, String> typed, List<Fault> faults) {
        List<String> ticked = ticked(typed, "done");
        return new NoteView(
                typed,
                Arrays.stream(Sense.values())
                        .map(s -> sense(s, ticked(typed, "seen")))
                        .filter(s -> !s.signs().isEmpty())
                        .toList(),
                Arrays.stream(Action.values())
                        .map(a -> new Choice(a.token(), words.text("action." + a.token()), ticked.contains(a.token())))
                        .toList(),
                new AmountUnits(words, texts).choices(typed.getOrDefault("unit", "")),
                words.figures().units() == Units.US ? "°F" : "°C",
                Names.of(words.knowledge()),
                faults);
    }

    private static List<String> ticked(Map<String, String> typed, String field) {
        return List.of(typed.getOrDefault(field, "").split(" "));
    }

    /** The signs of a sense; those of the nose stand open, as they are noted most, and any with a tick. */
    private SignsView sense(Sense sense, List<String> ticked) {
        List<Choice> signs = words.knowledge().signs().values().stream()
                .filter(s -> s.sense() == sense)
                .map(s -> new Choice(s.id().id(), s.shortName(), ticked.contains(s.id().id())))
                .toList();
        boolean open = sense == Sense.NOSE || signs.stream().anyMatch(Choice::chosen);
        return new SignsView(sense.id(), words.word("sense", sense), open, signs);
    }
}
