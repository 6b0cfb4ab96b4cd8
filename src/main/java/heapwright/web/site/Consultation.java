package heapwright.web.site;

import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.Advice;
import heapwright.advice.Question;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import heapwright.report.JsonText;
import heapwright.report.Units;
import heapwright.web.view.CheckupView.Fault;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes the answers of a checkup to the advisor. */
final class Consultation {

    private final Site site;
    private final Texts texts;
    private final PileReader reader;

    Consultation(Site site, Texts texts) {
        this.site = site;
        this.texts = texts;
        this.reader = site.reader();
    }

    /**
     * What came of it: advice, or what is wrong with what was typed.
     *
     * @param advice the advice; empty where something is wrong
     * @param next the question that helps most and was not passed over
     * @param faults what is wrong
     */
    record Consulted(Optional<Advice> advice, Optional<Question> next, List<Fault> faults) {}

    /** The advice on the answers; where they are about a pile of the folder, all that is known of it counts. */
    Consulted of(CheckupAnswers said, Units units, Optional<Pile> about) {
        ReadResult read =
                about.map(p -> read(said, units, p)).orElseGet(() -> read(said, units, texts.of("checkup.pile")));
        List<Fault> faults = new ArrayList<>(
                read.problems().stream().map(p -> fault(p, said, units)).toList());
        String built = said.about().getOrDefault(AboutPile.BUILT, "");
        if (about.isEmpty()
                && !built.isEmpty()
                && BuiltWhen.of(built, said.on()).isEmpty()) {
            faults.add(new Fault(AboutPile.BUILT, texts.of("fault.when", built)));
        }
        Optional<Advice> advice = faults.isEmpty() ? read.pile().map(site.desk()::advise) : Optional.empty();
        return new Consulted(advice, advice.flatMap(a -> next(said, a)), List.copyOf(faults));
    }

    /** The pile of the answers. */
    ReadResult read(CheckupAnswers said, Units units, String name) {
        return read(name, AboutPile.document(said, units, name));
    }

    /** A pile of the folder with the answers in its log. */
    ReadResult read(CheckupAnswers said, Units units, Pile pile) {
        return read(pile.name(), AboutPile.document(said, units, pile));
    }

    private ReadResult read(String name, ObjectNode document) {
        return reader.read(name, JsonText.write(document).getBytes(StandardCharsets.UTF_8));
    }

    private Optional<Question> next(CheckupAnswers said, Advice advice) {
        Optional<Question> found = notPassed(said, advice);
        return found.isPresent() || said.passed().isEmpty()
                ? found
                : notPassed(said, site.advisor().advise(advice.pile(), said.passed()));
    }

    private static Optional<Question> notPassed(CheckupAnswers said, Advice advice) {
        return advice.questions().stream()
                .filter(q -> !said.passed().contains(q.sign()))
                .findFirst();
    }

    private Fault fault(Problem problem, CheckupAnswers said, Units units) {
        FaultWords words = new FaultWords(texts);
        String place = problem.pointer().replaceFirst("^/log/[0-9]+/", "");
        return AboutPile.PLACES.entrySet().stream()
                .filter(e -> place.startsWith(e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .map(field -> new Fault(
                        field,
                        words.text(
                                texts.of(field),
                                field,
                                said.about().getOrDefault(field, ""),
                                AboutPile.degrees(units),
                                problem)))
                .orElseGet(() -> words.other(problem));
    }
}
