package heapwright.web.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.journal.Noting;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import heapwright.pile.Tested;
import heapwright.report.JsonText;
import heapwright.report.Units;
import heapwright.report.Words;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.PileView.NoteView;
import heapwright.web.view.PileView.SignsView;
import heapwright.web.view.PileView.TestChoices;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The form in which a day's temperatures, smell, work and additions are noted. What it makes is put into the pile's
 * document and read by the same reader as every document, which finds all that is wrong with it.
 */
final class NoteForm {

    private static final List<String> FIELDS =
            List.of("date", "core", "out", "seen", "done", "tested", "material", "amount", "unit", "note");

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
    private final NoteFields fields;

    NoteForm(Site site, Words words, Texts texts) {
        this.site = site;
        this.words = words;
        this.texts = texts;
        this.fields = new NoteFields(words);
    }

    /** What was typed, by field; several ticks of one field in one line. */
    static Map<String, String> typed(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String field : FIELDS) {
            List<String> values = ctx.formParams(field);
            if (!values.isEmpty()) {
                typed.put(
                        field,
                        values.stream()
                                .filter(v -> !v.isBlank())
                                .collect(Collectors.joining(" "))
                                .strip());
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

    /** An entry as the form shows it. */
    Map<String, String> told(Entry entry) {
        return fields.told(entry);
    }

    /** An entry put right: what the form does not show of it, or shows and left alone, stays as it is. */
    Noted corrected(Pile pile, Entry old, Map<String, String> typed) {
        Pile without = Noting.struck(pile, Noting.mark(old));
        return read(without, PileWriter.entry(old), fields.told(old), typed);
    }

    private Noted read(Pile pile, ObjectNode entry, Map<String, String> before, Map<String, String> typed) {
        fields.fill(entry, before, typed);
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
        if (NoteFields.empty(typed, "material") && !NoteFields.empty(typed, "amount")) {
            return Optional.of(new Fault("material", texts.of("fault.amount-alone", typed.get("amount"))));
        }
        return entry.size() > 1 ? Optional.empty() : Optional.of(new Fault("core", texts.of("fault.nothing")));
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
        FaultWords told = new FaultWords(texts);
        return field.map(Map.Entry::getValue)
                .map(f -> new Fault(
                        f,
                        told.text(
                                texts.of("note." + f),
                                f,
                                typed.getOrDefault(f, ""),
                                place.startsWith("measured/")
                                        ? AboutPile.degrees(words.figures().units())
                                        : "",
                                problem)))
                .orElseGet(() -> told.other(problem));
    }

    /** The form as it is shown. */
    NoteView view(Map<String, String> typed, List<Fault> faults) {
        List<String> ticked = NoteFields.ticked(typed, "done");
        return new NoteView(
                typed,
                Arrays.stream(Sense.values())
                        .map(s -> sense(s, NoteFields.ticked(typed, "seen")))
                        .filter(s -> !s.signs().isEmpty())
                        .toList(),
                Arrays.stream(Action.values())
                        .map(a -> new Choice(a.token(), words.text("action." + a.token()), ticked.contains(a.token())))
                        .toList(),
                Arrays.stream(HomeTest.values())
                        .map(t -> test(t, NoteFields.ticked(typed, "tested")))
                        .toList(),
                new AmountUnits(words, texts).choices(typed.getOrDefault("unit", "")),
                words.figures().units() == Units.US ? "°F" : "°C",
                MaterialChoices.of(words.knowledge()),
                faults);
    }

    /** A home test and how it may come out; not done is the first. */
    private TestChoices test(HomeTest test, List<String> chosen) {
        List<Choice> results = new ArrayList<>();
        results.add(new Choice("", texts.of("note.not-tested"), false));
        for (Tested.Result result : Tested.Result.values()) {
            String value = test.token() + "=" + result.token();
            results.add(new Choice(value, words.text("tested.result." + result.token()), chosen.contains(value)));
        }
        return new TestChoices(
                test.token(), words.knowledge().endUse().tests().get(test).name(), results);
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
