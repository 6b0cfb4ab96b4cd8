package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.casebook.Score;
import heapwright.casebook.Scored;
import heapwright.knowledge.Weights;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Scores of cases, source by source and all together. */
final class ScoreReport {

    private final Map<String, Score> bySource = new TreeMap<>();
    private final Score all;
    private final Optional<Fitted> fitted;

    ScoreReport(List<Scored> scored, Optional<Fitted> fitted) {
        this.fitted = fitted;
        scored.stream()
                .collect(Collectors.groupingBy(s -> s.tested().source()))
                .forEach((source, cases) -> bySource.put(source, Score.of(cases)));
        all = Score.of(scored);
    }

    String text(boolean bold) {
        Layout page = new Layout(bold);
        page.line(
                0,
                String.format(
                        "%-14s %7s %7s %7s %7s %5s %7s %6s",
                        "source", "right", "first", "in two", "steps", "harm", "agree", "Brier"));
        bySource.forEach((source, score) -> page.line(0, row(source, score)));
        page.line(0, row("all", all));
        fitted.ifPresent(f -> {
            page.line(0, row("left out", Score.of(f.leftOut())));
            page.line(0, "");
            page.line(0, "Left out: each source scored with weights fitted to all the others. Fitted to all:");
            page.line(2, figures(f.weights()));
        });
        page.line(0, "");
        page.line(0, "Likelihoods as stated, and how many of them are so by the source:");
        bands(page, all);
        fitted.ifPresent(f -> {
            page.line(0, "");
            page.line(0, "The same with each source left out:");
            bands(page, Score.of(f.leftOut()));
        });
        return page.toString();
    }

    private static String figures(Weights weights) {
        StringBuilder text = new StringBuilder();
        weights.decibans()
                .forEach((strength, decibans) -> text.append(String.format("%s %.1f, ", strength.id(), decibans)));
        return text.append(String.format("again %.2f", weights.again())).toString();
    }

    private static void bands(Layout page, Score score) {
        for (Score.Band band : score.bands()) {
            page.line(
                    2,
                    band.stated() == 0
                            ? String.format("%3.0f to %3.0f in 100: none stated", 100 * band.from(), 100 * band.to())
                            : String.format(
                                    "%3.0f to %3.0f in 100: %4d stated, on average %3.0f; so: %3.0f in 100",
                                    100 * band.from(),
                                    100 * band.to(),
                                    band.stated(),
                                    100 * band.mean(),
                                    100 * band.so()));
        }
    }

    String json() {
        ObjectNode root = JsonText.object("scores");
        ArrayNode rows = root.putArray("sources");
        bySource.forEach((source, score) -> put(rows.addObject().put("source", source), score));
        put(root.putObject("all"), all);
        fitted.ifPresent(f -> {
            put(root.putObject("leftOut"), Score.of(f.leftOut()));
            ObjectNode weights = root.putObject("fitted");
            f.weights().decibans().forEach((strength, decibans) -> weights.put(strength.id(), decibans));
            weights.put("again", f.weights().again());
        });
        ArrayNode bands = root.putArray("likelihoods");
        for (Score.Band band : all.bands()) {
            ObjectNode row = bands.addObject();
            row.put("from", band.from()).put("to", band.to()).put("stated", band.stated());
            if (band.stated() > 0) {
                row.put("mean", band.mean()).put("so", band.so());
            }
        }
        return JsonText.write(root) + System.lineSeparator();
    }

    private static String row(String source, Score score) {
        return String.format(
                "%-14s %7s %7s %7s %7s %5d %7s %6s",
                source,
                score.right() + "/" + score.cases(),
                told(score.first()),
                told(score.firstTwo()),
                told(score.steps()),
                score.harmful(),
                score.agree() + "/" + score.cases(),
                Double.isNaN(score.brier()) ? "" : String.format("%.3f", score.brier()));
    }

    private static String told(Score.Share share) {
        return share.of() == 0 ? "" : share.hits() + "/" + share.of();
    }

    private static void put(ObjectNode row, Score score) {
        row.put("cases", score.cases()).put("right", score.right()).put("agree", score.agree());
        put(row.putObject("first"), score.first());
        put(row.putObject("firstTwo"), score.firstTwo());
        put(row.putObject("stepsInFour"), score.steps());
        row.put("harmful", score.harmful());
        if (!Double.isNaN(score.brier())) {
            row.put("brier", score.brier());
        }
    }

    private static void put(ObjectNode row, Score.Share share) {
        row.put("hits", share.hits()).put("of", share.of());
    }
}
