package heapwright.web.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.journal.Noting;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.phrase.NumberPhrase;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
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
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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

    /**
     * What came of a form.
     *
     * @param entry the entry, where nothing is wrong with it
     * @param faults what is wrong, at the fields it belongs to
     */
    record Noted(Optional<Entry> entry, List<Fault> faults) {}

    /** A new entry, as the reader takes it. */
    Noted noted(Pile pile, Map<String, String> typed) {
        return read(pile, JsonNodeFactory.instance.objectNode(), Map.of(), typed);
    }

    /** An entry put right: what the form does not show of it, or shows and left alone, stays as it is. */
    Noted corrected(Pile pile, Entry old, Map<String, String> typed) {
        Pile without = Noting.struck(pile, Noting.mark(old));
        return read(without, PileWriter.entry(old), told(old), typed);
    }

    private Noted read(Pile pile, ObjectNode entry, Map<String, String> before, Map<String, String> typed) {
        fill(entry, before, typed);
        Optional<Fault> fault = fault(entry, typed);
        if (fault.isPresent()) {
            return new Noted(Optional.empty(), List.of(fault.get()));
        }
        ObjectNode document = new PileWriter().tree(pile);
        document.withArray("log").add(entry);
        LocalDate day = date(typed.getOrDefault("date", ""), pile.asOf());
        document.put("asOf", (day.isAfter(pile.asOf()) ? day : pile.asOf()).toString());
        ReadResult read =
                site.reader().read(pile.name(), JsonText.write(document).getBytes(StandardCharsets.UTF_8));
        return new Noted(
                read.pile().flatMap(p -> Noting.last(p, day)),
                read.problems().stream().map(p -> fault(p, typed)).toList());
    }

    /** What no reader of documents can see: a day to come, an amount of nothing, a note of nothing. */
    private Optional<Fault> fault(ObjectNode entry, Map<String, String> typed) {
        if (date(typed.getOrDefault("date", ""), site.today()).isAfter(site.today())) {
            return Optional.of(new Fault("date", texts.of("fault.future")));
        }
        if (empty(typed, "material") && !empty(typed, "amount")) {
            return Optional.of(new Fault("material", texts.of("fault.amount-alone", typed.get("amount"))));
        }
        return entry.size() > 1 ? Optional.empty() : Optional.of(new Fault("core", texts.of("fault.nothing")));
    }

    private void fill(ObjectNode entry, Map<String, String> before, Map<String, String> typed) {
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
        }
        if (changed("out", before, typed)) {
            temperature(entry, "outdoor", typed, "out");
        }
        if (changed("done", before, typed)) {
            words(entry, "done", typed);
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
        for (String list : List.of("measured", "seen", "notSeen", "done", "added")) {
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
        if (!entry.added().isEmpty()) {
            Ingredient first = entry.added().get(0);
            told.put("material", Names.shown(words.knowledge(), first.material()));
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

    private void temperature(ObjectNode entry, String field, Map<String, String> typed, String from) {
        ObjectNode measured = entry.withObject("/measured");
        measured.remove(field);
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
