package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Concluded;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.HoldsNot;
import heapwright.advice.fact.Judges;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Offered;
import heapwright.advice.fact.Placed;
import heapwright.advice.fact.Planned;
import heapwright.advice.fact.Precedes;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Replaces;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.advice.fact.Stands;
import heapwright.advice.fact.Topic;
import heapwright.advice.fact.Withholds;
import heapwright.advice.observe.PileFacts;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the passes do with each other's results, on invented piles with the rules of the program. */
@DisplayName("The passes")
class InferenceTest {

    private static final double TINY = 1e-9;
    private static final Inference INFERENCE = new Inference(TestPile.ADVISOR.rulebook(), TestPile.KNOWLEDGE);

    private static final String SOGGY =
            "'built': '2026-10-31', 'recipe': [{'material': 'kitchen-scraps', 'amount': 60, 'unit': 'kg'}], 'container':"
                    + " {'kind': 'slatted-bin', 'volume': {'value': 0.4, 'unit': 'm3'}}, 'log': [{'date': '2026-11-21',"
                    + " 'seen': ['soggy', 'pregnant', 'smells-sour', 'smells-ammonia', 'squeeze-streams'], 'measured': {'outdoor':"
                    + " {'value': -6, 'unit': 'C'}, 'moisture': {'value': 66, 'unit': '%'}}}]";
    private static final String HURT = "'built': '2026-10-31', 'log': [{'date': '2026-11-21',"
            + " 'seen': ['lye-in-eye', 'smoke', 'smells-ammonia']}]";
    private static final String FROZEN = "'built': '2026-09-01', 'log': [{'date': '2026-11-21',"
            + " 'seen': ['frozen-through', 'not-shrinking', 'dust-dry', 'never-heated']}]";

    private static List<Object> facts(String pile) {
        return PileFacts.of(TestPile.of(pile), TestPile.KNOWLEDGE).facts();
    }

    private static Set<Pass> passes(List<Firing> firings) {
        return firings.stream()
                .map(f -> f.rule().pass())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Pass.class)));
    }

    private static List<String> order(List<Firing> firings) {
        return firings.stream()
                .map(f -> f.rule().pass().ordinal() + f.rule().id() + f.result())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {SOGGY, HURT, FROZEN})
    @DisplayName("tell each firing once, in order of pass and rule, whatever the order of the facts")
    void order(String pile) {
        List<Object> facts = new ArrayList<>(facts(pile));
        Outcome outcome = INFERENCE.run(facts);
        List<String> order = order(outcome.firings());
        assertEquals(order.stream().sorted().distinct().toList(), order);
        assertEquals(facts, outcome.facts());
        Collections.shuffle(facts, new Random(3));
        Outcome shuffled = INFERENCE.run(facts);
        assertEquals(order, order(shuffled.firings()));
        assertEquals(outcome.weighed(), shuffled.weighed());
    }

    @ParameterizedTest
    @ValueSource(strings = {SOGGY, HURT, FROZEN})
    @DisplayName("stop where they are told to, and come to the same as far as they go")
    void parts(String pile) {
        List<Object> facts = facts(pile);
        Outcome whole = INFERENCE.run(facts);
        Outcome some = INFERENCE.upToConclusions(facts);
        assertEquals(facts, some.facts());
        assertEquals(whole.weighed(), some.weighed());
        assertTrue(passes(whole.firings()).containsAll(EnumSet.of(Pass.WEIGH, Pass.REMEDY)));
        assertTrue(EnumSet.range(Pass.DERIVE, Pass.CONCLUDE).containsAll(passes(some.firings())));
        assertEquals(
                Set.copyOf(order(whole.firings()).stream()
                        .filter(o -> o.charAt(0) - '0' <= Pass.CONCLUDE.ordinal())
                        .toList()),
                Set.copyOf(order(some.firings())));
        assertTrue(passes(INFERENCE.unweighed(facts)).contains(Pass.WEIGH));
        assertFalse(passes(INFERENCE.unweighed(facts)).contains(Pass.REMEDY));
        List<Firing> dangers = INFERENCE.dangers(facts);
        assertTrue(Pass.gate().containsAll(passes(dangers)), dangers.toString());
        assertEquals(
                whole.of(Stands.class),
                dangers.stream().filter(f -> f.rule().pass() == Pass.DANGER).toList());
    }

    @Test
    @DisplayName("give remedies only for what was concluded: at least possible and not explained by something else")
    void concluded() {
        boolean explained = false;
        for (String pile : List.of(SOGGY, FROZEN, HURT)) {
            Outcome outcome = INFERENCE.run(facts(pile));
            Set<Cause> aside = outcome.of(SetAside.class).stream()
                    .map(f -> ((SetAside) f.result()).cause())
                    .collect(Collectors.toSet());
            explained |= !aside.isEmpty();
            for (Firing firing : outcome.of(Proposes.class)) {
                firing.because().stream()
                        .filter(Concluded.class::isInstance)
                        .map(c -> ((Concluded) c).cause())
                        .forEach(cause -> {
                            assertFalse(aside.contains(cause), cause + " was set aside");
                            assertTrue(outcome.weighed().get(cause).grade().atLeast(Grade.POSSIBLE), cause.id());
                        });
            }
        }
        assertTrue(explained, "something is explained by something else");
    }

    @Test
    @DisplayName("arrange no step that was withheld, but for first aid, which nothing withholds")
    void offered() {
        Outcome outcome = INFERENCE.run(facts(SOGGY));
        Set<Remedy> withheld = outcome.of(Withholds.class).stream()
                .map(f -> ((Withholds) f.result()).remedy())
                .collect(Collectors.toSet());
        assertFalse(withheld.isEmpty());
        List<Object> arranged = new ArrayList<>();
        outcome.of(Precedes.class).forEach(f -> arranged.addAll(f.because()));
        outcome.of(Replaces.class).forEach(f -> arranged.addAll(f.because()));
        assertTrue(arranged.stream().anyMatch(Offered.class::isInstance), arranged.toString());
        withheld.forEach(r -> assertFalse(arranged.toString().contains("Offered[remedy=" + r + "]"), r.id()));
    }

    @Test
    @DisplayName("show a person the quantity and the limit as ground, and no absence")
    void ground() {
        Outcome outcome = INFERENCE.run(facts(SOGGY));
        outcome.firings()
                .forEach(f -> f.because()
                        .forEach(
                                fact -> assertFalse(fact instanceof Placed || fact instanceof HoldsNot, f.toString())));
        Firing wet = fired(outcome.firings(), "WEIGH-1202");
        assertTrue(wet.because().stream().anyMatch(LimitIs.class::isInstance), wet.toString());
        assertTrue(wet.because().stream().anyMatch(Reads.class::isInstance), wet.toString());
        assertEquals(1, wet.degree());
    }

    @Test
    @DisplayName("let a rule hold in the least degree of what it rests on")
    void degree() {
        Outcome near = INFERENCE.run(facts(SOGGY.replace("66", "59")));
        assertEquals(0.25, fired(near.firings(), "WEIGH-1202").degree(), TINY, "a point below a limit of 60");
    }

    @Test
    @DisplayName("weigh a state that holds in part for what needs it, and against it for what needs that it does not")
    void inPart() {
        List<Firing> rather = INFERENCE.unweighed(heldBy(9.5));
        assertEquals(0.75, fired(rather, "WEIGH-406").degree(), TINY, "slowed by winter: cold in part");
        assertEquals(0.25, fired(rather, "WEIGH-405").degree(), TINY, "lacks nitrogen: not cold in part");
        List<Firing> faintly = INFERENCE.unweighed(heldBy(10.5));
        assertEquals(0.25, fired(faintly, "WEIGH-406").degree(), TINY);
        assertEquals(0.75, fired(faintly, "WEIGH-405").degree(), TINY);
        assertFalse(has(INFERENCE.unweighed(heldBy(4)), "WEIGH-405"), "cold for sure");
        assertFalse(has(INFERENCE.unweighed(heldBy(20)), "WEIGH-406"), "warm for sure");
        assertEquals(
                List.of(new Seen(Sign.SQUEEZE_HOLDS, 0), new Seen(Sign.NEVER_HEATED, 0)),
                fired(faintly, "WEIGH-405").because());
    }

    /** Damp enough, never warm, and so cold outdoors beside a limit of the cold season of 10 °C, with an edge of 2 K. */
    private static List<Object> heldBy(double outdoorC) {
        return List.of(
                new Seen(Sign.SQUEEZE_HOLDS, 0),
                new Seen(Sign.NEVER_HEATED, 0),
                new LimitIs(Limit.MEAN_COLD_SEASON, 10),
                new Reads(Reading.OUTDOOR_TEMPERATURE, outdoorC, outdoorC, outdoorC, Reads.Basis.MEASURED));
    }

    @Test
    @DisplayName("let a danger stand only on what rather holds, and go on weighing what holds in part")
    void dangersKnowYesAndNo() {
        assertTrue(has(INFERENCE.dangers(inAShed(50)), "DANGER-212"), "hot for sure");
        assertTrue(has(INFERENCE.dangers(inAShed(46)), "DANGER-212"), "rather hot");
        List<Firing> faint = INFERENCE.unweighed(inAShed(44));
        assertFalse(has(faint, "DANGER-212"), "rather not hot");
        assertEquals(0.3, fired(faint, "WEIGH-701").degree(), TINY);
        assertEquals(0.7, fired(INFERENCE.unweighed(inAShed(46)), "WEIGH-701").degree(), TINY);
    }

    /** In a closed room, and so warm inside beside a limit of 45 °C with an edge of 5 K. */
    private static List<Object> inAShed(double core) {
        return List.of(
                new Seen(Sign.CLOSED_SHED, 0),
                new LimitIs(Limit.CORE_ACTIVE, 45),
                new Reads(Reading.CORE_TEMPERATURE, core, core, core, Reads.Basis.MEASURED));
    }

    @Test
    @DisplayName("leave to the later passes only the states that rather hold")
    void faintStatesAreGone() {
        assertTrue(usesColdSeason(9.5));
        assertFalse(usesColdSeason(10.5));
    }

    private static boolean usesColdSeason(double outdoorC) {
        List<Object> facts = new ArrayList<>(heldBy(outdoorC));
        facts.add(new Seen(Sign.ONLY_BROWNS, 0));
        return INFERENCE.run(facts).of(Proposes.class).stream()
                .anyMatch(f -> f.because().contains(new Holds(Condition.COLD_SEASON)));
    }

    @Test
    @DisplayName("withhold a step for what the table says it does")
    void planned() {
        assertTrue(INFERENCE.run(facts(SOGGY)).firings().stream()
                .filter(f -> f.rule().pass() == Pass.GUARD)
                .anyMatch(f -> f.because().stream().anyMatch(Planned.class::isInstance)));
    }

    @Test
    @DisplayName("read what is known of a recipe by the audit rules")
    void audit() {
        List<Firing> firings = INFERENCE.audit(List.of(
                new LimitIs(Limit.FAS_BAD, 20), new Reads(Reading.FREE_AIR_SPACE, 10, 12, 14, Reads.Basis.ESTIMATED)));
        assertEquals(
                new Judges(Topic.AIR, Mark.WRONG), fired(firings, "AUDIT-301").result());
        assertEquals(EnumSet.of(Pass.AUDIT), passes(firings));
    }

    @Test
    @DisplayName("demand the rules they need")
    void demanded() {
        Inference gate = new Inference(Rulebook.packed(Pass.gate()), TestPile.KNOWLEDGE);
        assertThrows(IllegalStateException.class, () -> gate.run(List.of()));
    }

    private static Firing fired(List<Firing> firings, String rule) {
        return firings.stream()
                .filter(f -> f.rule().id().equals(rule))
                .findFirst()
                .orElseThrow(() -> new AssertionError(rule + " did not fire"));
    }

    private static boolean has(List<Firing> firings, String rule) {
        return firings.stream().anyMatch(f -> f.rule().id().equals(rule));
    }

    @Test
    @DisplayName("say of nothing nothing, and of a recipe only what the audit rules say")
    void nothing() {
        assertEquals(List.of(), INFERENCE.dangers(List.of()));
        assertEquals(EnumSet.of(Pass.DERIVE), passes(INFERENCE.dangers(List.of(new Seen(Sign.SMELLS_SOUR, 0)))));
        assertEquals(List.of(), INFERENCE.audit(List.of(new Seen(Sign.SMOKE, 0))));
        TestPile.KNOWLEDGE
                .causes()
                .values()
                .forEach(c -> assertTrue(
                        INFERENCE.run(List.of()).weighed().get(c.id()).likelihood() < 0.6, c.id() + " out of nothing"));
    }
}
