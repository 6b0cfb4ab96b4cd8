package heapwright.report;

import heapwright.advice.Memory;
import heapwright.knowledge.MeasureInfo;
import heapwright.knowledge.Sign;
import heapwright.pile.Action;
import heapwright.pile.Advised;
import heapwright.pile.Amount;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Tells a pile's record by day: what was measured, done, added, seen and looked for in vain. */
public final class CourseText {

    private final Words words;

    public CourseText(Words words) {
        this.words = words;
    }

    /** The whole record as a page of its own. */
    public String history(Pile pile, boolean marked) {
        Layout page = new Layout(marked);
        page.line(0, page.strong(pile.name()));
        write(page, pile);
        if (!pile.advised().isEmpty()) {
            page.heading(words.text("history.advised"));
            pile.advised()
                    .forEach(a -> page.paragraph(
                            0,
                            4,
                            new Days(words).of(a.date()) + ": " + outcome(a, pile)
                                    + (a.amount().isEmpty() ? "" : ". " + a.amount())));
        }
        return page.toString();
    }

    /** The course under its heading, a line a day. */
    void write(Layout page, Pile pile) {
        page.heading(words.text("why.course"));
        DateTimeFormatter day =
                DateTimeFormatter.ofPattern("d MMM yyyy", words.catalogue().locale());
        page.paragraph(
                0,
                4,
                words.text("why.built", pile.built().format(day), pile.recipe().size()));
        for (Entry entry : pile.log()) {
            long age = ChronoUnit.DAYS.between(pile.built(), entry.date());
            List<String> happened = happened(entry);
            if (!happened.isEmpty()) {
                page.paragraph(
                        0,
                        4,
                        words.text("why.day", age, entry.date().format(day)) + " " + String.join("; ", happened) + ".");
            }
        }
    }

    /** What an entry tells, in a few words each. */
    public List<String> happened(Entry entry) {
        List<String> told = new ArrayList<>();
        Measured m = entry.measured();
        Figures figures = words.figures();
        m.coreC().ifPresent(v -> told.add(words.text("why.core", figures.temperature(v))));
        m.coreLowestC().ifPresent(v -> told.add(words.text("why.lowest", figures.temperature(v))));
        m.outdoorC().ifPresent(v -> told.add(words.text("why.outdoor", figures.temperature(v))));
        m.moisturePct().ifPresent(v -> told.add(words.text("why.moisture", figures.number(v, 0))));
        m.ph().ifPresent(v -> told.add(words.text("why.ph", figures.number(v, 1))));
        m.heightM().ifPresent(v -> told.add(words.text("why.height", figures.length(v * 100))));
        for (Action action : entry.done()) {
            told.add(words.text("action." + action.token()));
        }
        for (Ingredient one : entry.added()) {
            told.add(words.text("why.added", added(one)));
        }
        tests(entry).forEach(told::add);
        named(entry.seen()).forEach(told::add);
        named(entry.notSeen()).forEach(name -> told.add(words.text("why.not", name)));
        return told;
    }

    /** How home tests came out. */
    public List<String> tests(Entry entry) {
        return entry.tested().stream()
                .map(t -> words.text(
                        "tested.line",
                        words.knowledge().endUse().tests().get(t.test()).name(),
                        words.text("tested.result." + t.result().token())))
                .toList();
    }

    /** Signs by their names, in their usual order; most entries have none. */
    private List<String> named(List<String> ids) {
        return ids.isEmpty()
                ? List.of()
                : Arrays.stream(Sign.values())
                        .filter(sign -> ids.contains(sign.id()))
                        .map(sign -> words.knowledge().signs().get(sign).shortName())
                        .toList();
    }

    /** What came of a step, as "turned fully: helped". */
    public String outcome(Advised step, Pile pile) {
        return words.text(
                "outcome." + step.outcome().token(),
                words.way(Memory.remedy(step), pile).name());
    }

    /** What went in and how much, in the measure that the person used: "4 wheelbarrows of leaves". */
    public String added(Ingredient one) {
        return words.text("why.added-amount", amount(one.amount()), name(one));
    }

    /** How much, in the measure that the person used. */
    private String amount(Amount amount) {
        MeasureInfo measure = words.knowledge().measures().get(amount.unit());
        String unit = measure == null
                ? amount.unit()
                : amount.value() <= 1 ? measure.name().one() : measure.name().many();
        boolean whole = amount.value() == Math.rint(amount.value());
        Figures figures = words.figures();
        return (whole ? figures.number(amount.value(), 0) : figures.round(amount.value())) + " " + unit;
    }

    private String name(Ingredient one) {
        return words.knowledge().material(one.material()).map(words::thing).orElse(one.material());
    }
}
