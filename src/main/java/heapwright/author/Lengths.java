package heapwright.author;

import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.SignInfo;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds texts that are too long for their place. How long a text may be is our judgement: a little more than the longest
 * that was shipped when the pages were laid out.
 */
final class Lengths {

    private static final int NAME = 70;
    private static final int LINE = 100;
    private static final int SENTENCE = 150;
    private static final int PARAGRAPH = 240;
    private static final int PASSAGE = 420;

    private final Knowledge knowledge;
    private final List<RuleFile> files;
    private final List<String> looks = new ArrayList<>();

    Lengths(Knowledge knowledge, List<RuleFile> files) {
        this.knowledge = knowledge;
        this.files = files;
    }

    List<String> looks() {
        for (SignInfo sign : knowledge.signs().values()) {
            String where = "tables/signs.json, " + sign.id().id();
            measure(where, "ask", sign.ask(), LINE);
            measure(where, "say", sign.say(), NAME);
            measure(where, "deny", sign.deny(), NAME);
            measure(where, "how", sign.how(), SENTENCE);
        }
        for (CauseInfo cause : knowledge.causes().values()) {
            String where = "tables/causes.json, " + cause.id().id();
            measure(where, "name", cause.name(), NAME);
            measure(where, "summary", cause.summary(), LINE);
            measure(where, "why", cause.why(), PARAGRAPH);
            measure(where, "tellApart", cause.tellApart(), PARAGRAPH);
        }
        for (RemedyInfo remedy : knowledge.remedies().values()) {
            String where = "tables/remedies.json, " + remedy.id().id();
            measure(where, "name", remedy.name(), NAME);
            measure(where, "how", remedy.how(), PASSAGE);
            remedy.gently().ifPresent(text -> measure(where, "gently", text, PARAGRAPH));
            measure(where, "expect", remedy.expect(), LINE);
            measure(where, "otherwise", remedy.otherwise(), PARAGRAPH);
            measure(where, "notWhen", remedy.notWhen(), PARAGRAPH);
        }
        for (CautionInfo caution : knowledge.cautions().values()) {
            String where = "tables/cautions.json, " + caution.id().id();
            measure(where, "title", caution.title(), NAME);
            measure(where, "text", caution.text(), PARAGRAPH);
            measure(where, "why", caution.why(), PARAGRAPH);
        }
        knowledge
                .materials()
                .values()
                .forEach(m -> measure("tables/materials.json, " + m.id(), "name", m.name(), NAME));
        knowledge.limits().values().forEach(l -> measure("tables/limits.json, " + l.id().id(), "name", l.name(), LINE));
        knowledge
                .evidence()
                .forEach(row -> measure(
                        "evidence/" + row.cause().id() + ".json, " + row.id(), "because", row.because(), SENTENCE));
        files.forEach(file -> file.rules()
                .forEach(rule ->
                        rule.meta("rationale").ifPresent(text -> measure(rule.where(), "@rationale", text, SENTENCE))));
        return looks;
    }

    private void measure(String where, String field, String text, int most) {
        if (text.length() > most) {
            looks.add(where + ", " + field + ": is " + text.length() + " letters long; " + most
                    + " or fewer fit its place.");
        }
    }
}
