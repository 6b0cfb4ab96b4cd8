package heapwright.fuzz;

import heapwright.advice.Advice;
import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import heapwright.advice.winter.Hindsight;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.report.AdviceJson;
import heapwright.report.AuditJson;
import heapwright.report.AuditReport;
import heapwright.report.Catalogue;
import heapwright.report.ModelJson;
import heapwright.report.OutlookReport;
import heapwright.report.TextReport;
import heapwright.report.Units;
import heapwright.report.WhyReport;
import heapwright.report.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Documents that are nearly those of {@code cases/} to all that reckons with a pile and all that words it: whatever the
 * reader accepts is answered, and no answer has a figure that is none.
 */
public final class PipelineTarget {

    private static final PileReader READER = new PileReader(TestPile.KNOWLEDGE.vocabulary());
    private static final Forecaster FORECASTER = new Forecaster(TestPile.KNOWLEDGE);
    private static final Pattern NO_FIGURE = Pattern.compile("\\b(NaN|Infinity)\\b|\u221e|\ufffd");

    private PipelineTarget() {}

    /** What the fuzzer calls once before: rules and classes are loaded outside of the time that one input may take. */
    public static void fuzzerInitialize() {
        fuzzerTestOneInput(new byte[0]);
    }

    /** What the fuzzer calls, by its convention; the bytes are read by {@link EditScript}. */
    public static void fuzzerTestOneInput(byte[] script) {
        answer(EditScript.documentOf(script));
    }

    /** Answers a document in every way there is. */
    static void answer(String document) {
        read(document).ifPresent(PipelineTarget::answer);
    }

    static Optional<Pile> read(String document) {
        return READER.read("fuzz", document.getBytes(StandardCharsets.UTF_8)).pile();
    }

    private static void answer(Pile pile) {
        Advice advice = TestPile.ADVISOR.advise(pile);
        List<Hindsight> hindsights = advice.story().map(Hindsight::of).orElse(List.of());
        for (Units units : Units.values()) {
            Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), units);
            figures(new TextReport(words, false).write(advice));
            figures(new WhyReport(words, false).write(advice, hindsights));
            AdviceJson json = new AdviceJson(words, "fuzz");
            figures(json.write(advice, true));
            figures(json.why(advice, hindsights));
            TestPile.ADVISOR.audit(pile, OptionalDouble.empty()).ifPresent(audit -> {
                figures(new AuditReport(words, false).write(audit));
                figures(new AuditJson(words, "fuzz").write(audit));
            });
            FORECASTER.ahead(pile).ifPresent(ahead -> {
                figures(new OutlookReport(words, false).write(ahead));
                figures(new ModelJson(words, "fuzz").outlook(ahead));
            });
        }
    }

    static void figures(String text) {
        if (NO_FIGURE.matcher(text).find()) {
            throw new AssertionError("a figure that is none: "
                    + text.lines().filter(NO_FIGURE.asPredicate()).findFirst().orElse(""));
        }
    }
}
