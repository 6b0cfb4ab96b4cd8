package heapwright.knowledge;

import heapwright.pile.HomeTest;
import heapwright.pile.Tested;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What is known of ripe compost and of using it.
 *
 * @param tests the home tests
 * @param uses the uses, by id
 * @param waits the waiting times
 * @param reasons how far each reason holds compost back
 */
public record EndUse(
        Map<HomeTest, HomeTestInfo> tests,
        Map<String, UseInfo> uses,
        Map<Wait, WaitInfo> waits,
        Map<RipeReason, RipeReasonInfo> reasons) {
    public EndUse {
        tests = Collections.unmodifiableMap(tests);
        uses = Collections.unmodifiableMap(uses);
        waits = Collections.unmodifiableMap(waits);
        reasons = Collections.unmodifiableMap(reasons);
    }

    /** The same with its sentences put another way; ids, names and figures stay. */
    EndUse reworded(UnaryOperator<String> wording) {
        Map<HomeTest, HomeTestInfo> toldTests = new LinkedHashMap<>();
        tests.forEach((id, t) -> toldTests.put(id, t.reworded(wording)));
        Map<String, UseInfo> toldUses = new LinkedHashMap<>();
        uses.forEach((id, u) -> toldUses.put(id, u.reworded(wording)));
        Map<RipeReason, RipeReasonInfo> toldReasons = new LinkedHashMap<>();
        reasons.forEach((id, r) -> toldReasons.put(id, r.reworded(wording)));
        return new EndUse(toldTests, toldUses, waits, toldReasons);
    }

    /** What does not hang together with the other tables. */
    List<String> faults(Knowledge knowledge) {
        List<String> faults = new ArrayList<>();
        References references = new References(knowledge, faults);
        all("home-tests.json", HomeTest.values(), tests, faults);
        all("waits.json", Wait.values(), waits, faults);
        all("ripeness.json", RipeReason.values(), reasons, faults);
        tests.values().forEach(t -> {
            String where = "home-tests.json " + t.id().token();
            references.sources(where, t.sources());
            if (t.allows(Tested.Result.GOOD) != Ripeness.POTS || t.allows(Tested.Result.POOR) == Ripeness.POTS) {
                faults.add(where + ": a good result must allow pots, and a poor one must not");
            }
            inOrder(where, t.fromDays(), t.toDays(), faults);
        });
        uses.values().forEach(u -> {
            String where = "uses.json " + u.id();
            references.sources(where, u.sources());
            inOrder(where, u.low(), u.usual(), faults);
            inOrder(where, u.usual(), u.high(), faults);
        });
        waits.values().forEach(w -> {
            String where = "waits.json " + w.id().id();
            references.sources(where, w.sources());
            inOrder(where, w.days(), w.toDays(), faults);
            references.materials(where, w.materials());
        });
        reasons.values().forEach(r -> {
            references.sources("ripeness.json " + r.id().id(), r.sources());
            if (r.allows() == Ripeness.POTS) {
                faults.add("ripeness.json " + r.id().id() + ": a reason that allows everything is none");
            }
        });
        return faults;
    }

    private static <K> void all(String file, K[] wanted, Map<K, ?> rows, List<String> faults) {
        Arrays.stream(wanted)
                .filter(w -> !rows.containsKey(w))
                .forEach(w -> faults.add(file + ": nothing is said of " + w));
    }

    private static void inOrder(String where, double low, double high, List<String> faults) {
        if (low > high) {
            faults.add(where + ": " + low + " stands before " + high);
        }
    }
}
