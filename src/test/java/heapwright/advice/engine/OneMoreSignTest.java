package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import heapwright.advice.TestPile;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Stands;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.When;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("One more sign")
class OneMoreSignTest {

    private static final Inference INFERENCE = new Inference(TestPile.ADVISOR.rulebook(), TestPile.KNOWLEDGE);

    /** Rounding off adds up differently with one more piece. */
    private static final double ROUNDING = 1e-9;

    /**
     * A row that waits for a sign, and that sign.
     *
     * @param row the row
     * @param sign one of the signs that make it speak
     */
    record Waiting(Evidence row, Sign sign) {}

    @Property(tries = 400, seed = Seed.FIXED)
    @Label("for a cause never lowers it, whatever else was answered, unless the answers clash or a danger stands")
    void forCause(@ForAll("rowsFor") Waiting more, @ForAll("signs") Set<Sign> seen, @ForAll("signs") Set<Sign> denied) {
        List<Object> before = facts(seen, denied, more.sign());
        List<Object> after = new ArrayList<>(before);
        after.add(new Seen(more.sign(), 0));
        Outcome without = INFERENCE.upToConclusions(before);
        Outcome with = INFERENCE.upToConclusions(after);
        if (results(without, Contradicts.class).containsAll(results(with, Contradicts.class))
                && results(without, Stands.class).containsAll(results(with, Stands.class))) {
            double was = without.weighed().get(more.row().cause()).likelihood();
            double is = with.weighed().get(more.row().cause()).likelihood();
            assertTrue(
                    is >= was - ROUNDING,
                    more.sign().id() + " for " + more.row().cause().id() + ": " + was + " to " + is + " beside "
                            + before);
        }
    }

    @Property(tries = 60, seed = Seed.FIXED)
    @Label("that is too old to count changes nothing, whatever else was answered")
    void tooOld(@ForAll("signs") Set<Sign> seen, @ForAll("signs") Set<Sign> denied, @ForAll("signs") Set<Sign> old) {
        old.removeIf(OneMoreSignTest::stays);
        String today = "{'date': '2026-11-21', 'seen': " + ids(seen) + ", 'notSeen': "
                + ids(denied.stream().filter(s -> !seen.contains(s)).collect(Collectors.toSet())) + "}";
        String longAgo = "{'date': '2026-07-01', 'seen': " + ids(old) + "}, ";
        String pile = "'built': '2026-06-20', 'asOf': '2026-11-21', 'log': [";
        assertEquals(
                TestPile.ADVISOR.diagnose(TestPile.of(pile + today + "]")).steps(),
                TestPile.ADVISOR
                        .diagnose(TestPile.of(pile + longAgo + today + "]"))
                        .steps());
    }

    /** Whether an old answer still matters: what a person is, and what went in and stays in. */
    private static boolean stays(Sign sign) {
        SignInfo info = TestPile.KNOWLEDGE.signs().get(sign);
        return info.lasts() == SignInfo.Lasts.ALWAYS
                || !info.brings().isEmpty()
                || TestPile.KNOWLEDGE.keepOuts().values().stream()
                        .anyMatch(k -> k.signs().contains(sign));
    }

    @Provide
    Arbitrary<Waiting> rowsFor() {
        return Arbitraries.of(TestPile.KNOWLEDGE.evidence().stream()
                .filter(r -> r.speaks() == Evidence.Speaks.FOR && r.when() instanceof When.Seen)
                .flatMap(r -> ((When.Seen) r.when()).anyOf().stream().map(s -> new Waiting(r, s)))
                .toList());
    }

    @Provide
    Arbitrary<Set<Sign>> signs() {
        return Arbitraries.of(Sign.class).set().ofMinSize(0).ofMaxSize(5);
    }

    private static List<Object> facts(Set<Sign> seen, Set<Sign> denied, Sign but) {
        List<Object> facts = new ArrayList<>();
        seen.stream().filter(s -> s != but).forEach(s -> facts.add(new Seen(s, 0)));
        denied.stream().filter(s -> s != but && !seen.contains(s)).forEach(s -> facts.add(new Denied(s, 0)));
        return facts;
    }

    private static Set<Object> results(Outcome outcome, Class<?> kind) {
        return outcome.of(kind).stream().map(Firing::result).collect(Collectors.toSet());
    }

    private static String ids(Set<Sign> signs) {
        return signs.stream().map(s -> "'" + s.id() + "'").collect(Collectors.joining(",", "[", "]"));
    }
}
