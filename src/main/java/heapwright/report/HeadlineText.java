package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.Headline;
import heapwright.advice.fact.Grade;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts what stands into one line: how sure, said once, and of what. */
public final class HeadlineText {

    private final Words words;

    public HeadlineText(Words words) {
        this.words = words;
    }

    /** The headline of an advice, and what work on the pile did harm, unless a danger stands. */
    public String of(Advice advice) {
        return advice.alarm().isPresent()
                ? stands(advice)
                : String.join(
                        " ",
                        Stream.concat(Stream.of(stands(advice)), new HarmText(words).of(advice).stream())
                                .toList());
    }

    private String stands(Advice advice) {
        Headline headline = Headline.of(advice, words.knowledge());
        return switch (headline.kind()) {
            case DANGER -> new AlarmText(words).headline(advice.alarm().orElseThrow());
            case MUST_NOT_BE_USED -> words.text("headline.must-not-be-used", names(headline.findings()));
            case CONTRADICTION -> words.text("headline.contradiction");
            case TROUBLE -> names(headline.findings());
            case WELL -> words.text("headline.well", names(headline.findings()));
            case UNCLEAR -> words.text("headline.unclear");
        };
    }

    /** Findings by how firmly they stand: "Very likely: too much water; too little air. Likely: packed too densely." */
    String names(List<Finding> findings) {
        int last = findings.size() - 1;
        if (last > 0
                && Headline.countsInUse(findings.get(last).cause())
                && findings.get(last).grade().compareTo(findings.get(last - 1).grade()) > 0) {
            Finding use = findings.get(last);
            return names(findings.subList(0, last)) + " "
                    + words.text(
                            "headline.before-use",
                            words.cause(use.cause()),
                            words.text("grade." + use.grade().id()));
        }
        Map<Grade, List<String>> byGrade = new LinkedHashMap<>();
        findings.forEach(
                f -> byGrade.computeIfAbsent(f.grade(), g -> new ArrayList<>()).add(words.cause(f.cause())));
        return byGrade.entrySet().stream()
                .map(e -> words.text("headline.grade." + e.getKey().id(), String.join("; ", e.getValue())))
                .collect(Collectors.joining(" "));
    }
}
