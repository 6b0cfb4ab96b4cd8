package heapwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.author.Answer;
import heapwright.author.Trial.Compared;
import heapwright.knowledge.Id;
import heapwright.report.JsonText;
import heapwright.report.Layout;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a trial of changed tables showed, as text or JSON.
 *
 * @param changes the rows that differ
 * @param cases every case with its two answers
 * @param rules whether there were rules, which were not tried
 */
record TrialReport(List<String> changes, List<Compared> cases, boolean rules) {

    /** Judgement: a likelihood that moves by less is told of no case. */
    private static final double WORTH_A_COUNT = 0.05;

    private static final int PERCENT = 100;

    String text(boolean marked) {
        Layout page = new Layout(marked);
        if (changes.isEmpty()) {
            page.paragraph(0, 0, "Nothing differs from what is shipped, so no case was run.");
        } else {
            page.line(0, page.strong("Changed"));
            changes.forEach(change -> page.paragraph(0, 4, "- " + change));
            page.blank();
            changing().forEach(c -> one(page, c));
            page.paragraph(0, 0, sum());
        }
        if (rules) {
            page.paragraph(
                    0, 0, "Rules (.drl) were not tried, as they take effect only in a build; check reads their text.");
        }
        return page.toString();
    }

    private List<Compared> changing() {
        return cases.stream().filter(Compared::changes).toList();
    }

    private static void one(Layout page, Compared c) {
        page.paragraph(0, 4, page.strong(c.tested().file()) + ": " + c.tested().says());
        Answer before = c.before();
        Answer after = c.after();
        if (!before.told().dangers().equals(after.told().dangers())) {
            page.paragraph(
                    4,
                    4,
                    "- danger: " + ids(before.told().dangers()) + "; now "
                            + ids(after.told().dangers()));
        }
        if (!first(before).equals(first(after))) {
            page.paragraph(4, 4, "- first step: " + first(before) + "; now " + first(after));
        } else if (!before.told().steps().equals(after.told().steps())) {
            page.paragraph(
                    4,
                    4,
                    "- steps: " + ids(before.told().steps()) + "; now "
                            + ids(after.told().steps()));
        }
        if (!before.told().causes().equals(after.told().causes())) {
            page.paragraph(4, 4, "- likely: " + causes(before) + "; now " + causes(after));
        }
        if (before.agrees() && !after.agrees()) {
            after.misses().forEach(miss -> page.paragraph(4, 4, "- no longer agrees: " + miss));
        } else if (after.agrees() && !before.agrees()) {
            page.paragraph(4, 4, "- agrees now");
        }
    }

    private String sum() {
        long lost = cases.stream()
                .filter(c -> c.before().agrees() && !c.after().agrees())
                .count();
        long won = cases.stream()
                .filter(c -> c.after().agrees() && !c.before().agrees())
                .count();
        long moved = cases.stream()
                .filter(c -> !c.changes() && c.moves() >= WORTH_A_COUNT)
                .count();
        return changing().size() + " of " + cases.size() + " cases get another answer; " + lost
                + " no longer agree with their source, " + won + " do now. In " + moved
                + " more a likelihood moves by five points or more.";
    }

    private static String first(Answer answer) {
        return answer.told().steps().isEmpty()
                ? "none"
                : answer.told().steps().get(0).id();
    }

    private static String causes(Answer answer) {
        return answer.told().causes().isEmpty()
                ? "none"
                : answer.told().causes().stream()
                        .map(c -> c.id() + " " + Math.round(answer.likelihoods().get(c) * PERCENT) + " %")
                        .collect(Collectors.joining(", "));
    }

    private static String ids(List<? extends Id> all) {
        return all.isEmpty() ? "none" : all.stream().map(Id::id).collect(Collectors.joining(", "));
    }

    String json() {
        ObjectNode root = JsonText.object("trial");
        changes.forEach(root.putArray("changes")::add);
        root.put("cases", cases.size());
        root.put("rulesTried", false);
        ArrayNode rows = root.putArray("changing");
        for (Compared c : changing()) {
            ObjectNode row = rows.addObject();
            row.put("file", c.tested().file()).put("says", c.tested().says());
            answer(row.putObject("before"), c.before());
            answer(row.putObject("after"), c.after());
        }
        return JsonText.write(root) + "\n";
    }

    private static void answer(ObjectNode node, Answer answer) {
        node.put("agrees", answer.agrees());
        ArrayNode causes = node.putArray("causes");
        answer.told()
                .causes()
                .forEach(c -> causes.addObject()
                        .put("cause", c.id())
                        .put("likelihood", answer.likelihoods().get(c)));
        answer.told().dangers().forEach(d -> node.withArray("dangers").add(d.id()));
        ArrayNode steps = node.putArray("steps");
        answer.told().steps().forEach(s -> steps.add(s.id()));
        answer.misses().forEach(node.putArray("misses")::add);
    }
}
