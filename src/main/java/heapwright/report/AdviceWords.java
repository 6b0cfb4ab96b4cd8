package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.Option;
import heapwright.advice.Question;
import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.fact.LimitIs;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.pile.Container;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The sentences of an advice, each in one place for the terminal, the page and the JSON. */
public final class AdviceWords {

    /** Steps told in full, with their cautions; more would not be done on one cold afternoon. */
    static final int STEPS_IN_FULL = 4;

    private final Words words;

    public AdviceWords(Words words) {
        this.words = words;
    }

    /** The findings that a step is for, each once, with how firmly they stand, and why it helps. */
    public String why(Option option) {
        String causes = words.grounds(option);
        return (causes.isEmpty() ? "" : causes + ". ")
                + words.rationale(option.grounds().get(0).rule());
    }

    /** The facts on which a piece of evidence rests. */
    public String because(EvidencePiece piece) {
        String facts = piece.because().stream()
                .filter(f -> !(f instanceof LimitIs))
                .flatMap(f -> words.fact(f).stream())
                .collect(Collectors.joining("; "));
        return facts.isEmpty() ? piece.rule().name() : facts;
    }

    /** Why a finding was set aside; empty where it was not. */
    public String aside(Finding finding) {
        return finding.setAside().map(f -> words.rationale(f.rule())).orElse("");
    }

    /** What a yes would show; empty where it would show nothing. */
    public String helps(Question question) {
        if (question.raises().isPresent() && question.lowers().isPresent()) {
            return words.text(
                    "question.both",
                    words.cause(question.raises().get()),
                    words.cause(question.lowers().get()));
        }
        return question.raises()
                .map(c -> words.text("question.raises", words.cause(c)))
                .or(() -> question.lowers().map(c -> words.text("question.lowers", words.cause(c))))
                .orElse("");
    }

    /** Answers that cannot both be so, with how to look again. */
    public List<String> clashes(Advice advice) {
        Container.Kind kind = advice.pile().container().kind();
        return advice.contradictions().stream()
                .map(c -> words.text(
                        "contradiction.line",
                        words.says(c.one()),
                        words.says(c.other()),
                        words.knowledge().signs().get(c.one()).how(kind)))
                .toList();
    }

    /** The cautions of an advice and of the steps that are told in full, the gravest first. */
    public List<CautionInfo> cautions(Advice advice) {
        Set<Caution> all = EnumSet.noneOf(Caution.class);
        all.addAll(advice.cautions());
        advice.steps().stream()
                .limit(STEPS_IN_FULL)
                .forEach(s -> all.addAll(s.main().cautions()));
        return cautions(all);
    }

    /** Some cautions, the gravest first. */
    public List<CautionInfo> cautions(Collection<Caution> all) {
        return words.knowledge().cautions().values().stream()
                .filter(c -> all.contains(c.id()))
                .sorted(Comparator.comparing(CautionInfo::severity))
                .toList();
    }
}
