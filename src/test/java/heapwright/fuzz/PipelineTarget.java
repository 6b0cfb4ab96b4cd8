package heapwright.fuzz;

import heapwright.advice.Advice;
import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
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
import java.util.Arrays;
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

    private static final List<Question> EVERY =
            List.of(PipelineTarget::checkup, PipelineTarget::why, PipelineTarget::audit, PipelineTarget::outlook);

    /** How often each question comes up: the look ahead costs as much as many of the others. Our judgement. */
    private static final List<Question> LOTS = List.of(
            PipelineTarget::checkup,
            PipelineTarget::audit,
            PipelineTarget::checkup,
            PipelineTarget::why,
            PipelineTarget::audit,
            PipelineTarget::checkup,
            PipelineTarget::audit,
            PipelineTarget::outlook);

    private PipelineTarget() {}

    /** Something that is asked of a pile, and worded. */
    private interface Question {
        void ask(Pile pile, Words words);
    }

    /** What the fuzzer calls once before: rules and classes are loaded outside of the time that one input may take. */
    public static void fuzzerInitialize() {
        answer(EditScript.documentOf(new byte[0]));
    }

    /**
     * What the fuzzer calls, by its convention; the bytes are read by {@link EditScript}. Each input is asked one
     * question in one system of units, always the same by its bytes: so many more documents are tried than if each were
     * asked everything, and the look ahead, which runs whole winters, does not take most of the time.
     */
    public static void fuzzerTestOneInput(byte[] script) {
        int lot = Math.floorMod(Arrays.hashCode(script), LOTS.size() * Units.values().length);
        Units units = Units.values()[lot / LOTS.size()];
        read(EditScript.documentOf(script))
                .ifPresent(pile -> LOTS.get(lot % LOTS.size())
                        .ask(pile, new Words(TestPile.KNOWLEDGE, Catalogue.english(), units)));
    }

    /** Answers a document in every way there is. */
    static void answer(String document) {
        read(document).ifPresent(pile -> {
            for (Units units : Units.values()) {
                Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), units);
                EVERY.forEach(question -> question.ask(pile, words));
            }
        });
    }

    static Optional<Pile> read(String document) {
        return READER.read("fuzz", document.getBytes(StandardCharsets.UTF_8)).pile();
    }

    private static void checkup(Pile pile, Words words) {
        Advice advice = TestPile.ADVISOR.advise(pile);
        figures(new TextReport(words, false).write(advice));
        figures(new AdviceJson(words, "fuzz").write(advice, true));
    }

    private static void why(Pile pile, Words words) {
        Advice advice = TestPile.ADVISOR.diagnose(pile);
        figures(new WhyReport(words, false).write(advice));
        figures(new AdviceJson(words, "fuzz").write(advice, true));
    }

    private static void audit(Pile pile, Words words) {
        TestPile.ADVISOR.audit(pile, OptionalDouble.empty()).ifPresent(audit -> {
            figures(new AuditReport(words, false).write(audit));
            figures(new AuditJson(words, "fuzz").write(audit));
        });
    }

    private static void outlook(Pile pile, Words words) {
        FORECASTER.ahead(pile).ifPresent(ahead -> {
            figures(new OutlookReport(words, false).write(ahead));
            figures(new ModelJson(words, "fuzz").outlook(ahead));
        });
    }

    static void figures(String text) {
        if (NO_FIGURE.matcher(text).find()) {
            throw new AssertionError("a figure that is none: "
                    + text.lines().filter(NO_FIGURE.asPredicate()).findFirst().orElse(""));
        }
    }
}
