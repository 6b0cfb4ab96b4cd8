package heapwright.advice.ready;

import heapwright.advice.TestPile;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.RipeReasonInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.StringJoiner;

/** A heap of leaves built on 20 August 2026 and asked about on 2 May 2027, 255 days old, with more of its record. */
final class RipePiles {

    static final String LEAVES = "{'material': 'leaves-mixed', 'amount': 30, 'unit': 'bucket'}";
    static final String RIPE = "{'date': '2027-05-02', 'seen': ['dark-crumbly', 'smells-earthy']}";

    private RipePiles() {}

    static ReadyAnswer answer(String head, String recipe, String... entries) {
        return Ready.of(
                TestPile.ADVISOR.diagnose(TestPile.of("'asOf': '2027-05-02'" + head + ", 'recipe': [" + recipe
                        + "], 'log': [" + String.join(",", entries) + "]")),
                TestPile.KNOWLEDGE);
    }

    static ReadyAnswer heap(String... entries) {
        return answer(", 'built': '2026-08-20'", LEAVES, entries);
    }

    static ReadyAnswer built(String day, String... entries) {
        return answer(", 'built': '" + day + "'", LEAVES, entries);
    }

    static String on(String day, String list, String... ids) {
        return "{'date': '" + day + "', '" + list + "': ['" + String.join("','", ids) + "']}";
    }

    static String seen(String... ids) {
        return on("2027-05-02", "seen", ids);
    }

    static String notSeen(String... ids) {
        return on("2027-05-02", "notSeen", ids);
    }

    static String added(String day, String material) {
        return "{'date': '" + day + "', 'added': [{'material': '" + material + "', 'amount': 1, 'unit': 'bucket'}]}";
    }

    static String test(String day, String test, String result) {
        return "{'date': '" + day + "', 'tested': [{'test': '" + test + "', 'result': '" + result + "'}]}";
    }

    static List<RipeReason> reasons(ReadyAnswer answer) {
        return answer.reasons().stream().map(RipeReasonInfo::id).toList();
    }

    /** Fifteen days at 60 °C with five turns, from the first of a month on: hot enough by all rules. */
    static String hot(String month) {
        StringJoiner log = new StringJoiner(",");
        for (int day = 0; day < 15; day++) {
            log.add("{'date': '" + LocalDate.parse(month + "-01").plusDays(day)
                    + "', 'measured': {'core': {'value': 60, 'unit': 'C'}}"
                    + (day % 3 == 2 ? ", 'done': ['turned-fully']" : "") + "}");
        }
        return log.toString();
    }
}
