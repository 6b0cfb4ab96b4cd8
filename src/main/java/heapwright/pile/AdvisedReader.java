package heapwright.pile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Reads what was advised for a pile and taken on. */
final class AdvisedReader {

    private static final String ALLOWED = "the id of a step, such as turn-fully";
    private static final String EXAMPLE = "\"turn-fully\"";

    private final Lexicon lexicon;
    private final Timeline timeline;

    AdvisedReader(Lexicon lexicon, Timeline timeline) {
        this.lexicon = lexicon;
        this.timeline = timeline;
    }

    /** The steps in order of the day of advice; those of one day stay in the order of the document. */
    List<Advised> advised(Section pile) {
        List<Advised> all = new ArrayList<>();
        for (Section section : pile.sections("advised", Shape.ADVISED, Lists.ADVISED)) {
            all.add(one(section));
        }
        all.sort(Comparator.comparing(Advised::date));
        return all;
    }

    private Advised one(Section section) {
        section.needed("date", Dates.ALLOWED, Dates.EXAMPLE);
        section.needed("step", ALLOWED, EXAMPLE);
        section.needed("look", Dates.ALLOWED, Dates.EXAMPLE);
        LocalDate date = timeline.past(section, "date").orElse(timeline.asOf());
        Optional<LocalDate> look = section.date("look");
        if (look.isPresent() && look.get().isBefore(date)) {
            Node node = section.field("look").orElseThrow();
            section.findings()
                    .wrong(node, node.shown() + ", before the advice", "a day from " + date + " on", Dates.EXAMPLE);
        }
        return new Advised(
                date,
                step(section),
                section.words("amount", Words.AMOUNT).orElse(""),
                look.orElse(date),
                section.token("outcome", Advised.Outcome.values(), Advised.Outcome.OPEN),
                told(section, date));
    }

    private Optional<LocalDate> told(Section section, LocalDate date) {
        Optional<LocalDate> told = timeline.past(section, "told");
        if (told.isPresent() && told.get().isBefore(date)) {
            Node node = section.field("told").orElseThrow();
            section.findings()
                    .wrong(node, node.shown() + ", before the advice", "a day from " + date + " on", Dates.EXAMPLE);
        }
        return told;
    }

    private String step(Section section) {
        return section.field("step")
                .flatMap(node -> {
                    Optional<String> word = section.string(node, ALLOWED, EXAMPLE);
                    if (word.isPresent() && !lexicon.isStep(word.get())) {
                        String given = word.get();
                        section.findings().wrong(node, node.shown(), ALLOWED, EXAMPLE, () -> lexicon.nearStep(given));
                        return Optional.empty();
                    }
                    return word;
                })
                .orElse("");
    }
}
