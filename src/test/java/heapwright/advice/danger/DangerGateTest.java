package heapwright.advice.danger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Stands;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo.Severity;
import heapwright.knowledge.Danger;
import heapwright.knowledge.DangerInfo;
import heapwright.knowledge.Known;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Strength;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The danger gate")
class DangerGateTest {

    private static final Map<Danger, DangerInfo> TABLE = TestPile.KNOWLEDGE.dangers();
    private static final DangerGate GATE = new DangerGate(TestPile.KNOWLEDGE);

    private static Firing says(String rule, Object result) {
        return new Firing(
                new RuleInfo(rule, rule, Pass.DANGER, Strength.STRONG, Known.JUDGEMENT, "JUDGEMENT", "So it is."),
                List.of(),
                result);
    }

    private static Firing stands(Danger danger) {
        return says("DANGER-" + danger, new Stands(danger));
    }

    private static Alarm alarm(Firing... firings) {
        return GATE.alarm(List.of(), List.of(firings)).orElseThrow();
    }

    private static List<Remedy> steps(Alarm alarm) {
        return alarm.steps().stream().map(Alarm.AlarmStep::remedy).toList();
    }

    private static List<Danger> dangers(Alarm alarm) {
        return alarm.dangers().stream().map(d -> d.info().id()).toList();
    }

    @Test
    @DisplayName("is open while no danger stands, whatever else the rules say")
    void open() {
        assertTrue(GATE.alarm(List.of(), List.of()).isEmpty());
        assertTrue(GATE.alarm(
                        List.of(new Seen(Sign.SMOKE, 0)),
                        List.of(says(
                                "REMEDY-1",
                                new Proposes(
                                        Remedy.CALL_FIRE_SERVICE,
                                        TABLE.get(Danger.FIRE).cause()))))
                .isEmpty());
    }

    @ParameterizedTest
    @EnumSource(Danger.class)
    @DisplayName("tells of one danger what the table has")
    void one(Danger danger) {
        Alarm alarm = alarm(stands(danger));
        DangerInfo info = TABLE.get(danger);
        assertEquals(List.of(danger), dangers(alarm));
        assertEquals(info.steps(), steps(alarm));
        alarm.steps().forEach(s -> assertEquals(danger, s.against().info().id()));
        assertEquals(info.asks(), alarm.asks());
        assertEquals(Set.copyOf(info.cautions()), Set.copyOf(alarm.cautions()));
        assertEquals(info.cautions().size(), alarm.cautions().size());
    }

    @Test
    @DisplayName("tells the gravest first, whatever the order in which rules spoke")
    void gravestFirst() {
        List<Firing> all = new ArrayList<>(
                Arrays.stream(Danger.values()).map(DangerGateTest::stands).toList());
        Collections.reverse(all);
        assertEquals(
                List.of(Danger.values()), dangers(GATE.alarm(List.of(), all).orElseThrow()));
    }

    @Test
    @DisplayName("gives all the rules by which a danger stands as its ground, in order of id")
    void grounds() {
        Alarm alarm = alarm(
                says("DANGER-30", new Stands(Danger.FIRE)),
                says("DANGER-10", new Stands(Danger.FIRE)),
                says("DANGER-20", new Stands(Danger.FIRE)));
        assertEquals(
                List.of("DANGER-10", "DANGER-20", "DANGER-30"),
                alarm.dangers().get(0).because().stream()
                        .map(f -> f.rule().id())
                        .toList());
    }

    @Test
    @DisplayName("keeps a pile closed: what would open it for a lesser danger waits")
    void closed() {
        Alarm alarm = alarm(stands(Danger.WASPS), stands(Danger.HEAT));
        assertTrue(TABLE.get(Danger.WASPS).closes());
        assertFalse(TABLE.get(Danger.HEAT).closes());
        assertEquals(TABLE.get(Danger.WASPS).steps(), steps(alarm));
        assertEquals(List.of(Danger.WASPS, Danger.HEAT), dangers(alarm), "it is told of all the same");
        assertEquals(TABLE.get(Danger.HEAT).steps(), steps(alarm(stands(Danger.HEAT))));
    }

    @Test
    @DisplayName("lets fire take the place of the steps of what it overrules, and of nothing else")
    void overruled() {
        Alarm alarm = alarm(stands(Danger.FIRE), stands(Danger.GAS), stands(Danger.EMBERS), stands(Danger.WASTE));
        List<Remedy> expected = new ArrayList<>(TABLE.get(Danger.FIRE).steps());
        expected.addAll(TABLE.get(Danger.WASTE).steps());
        assertEquals(expected, steps(alarm));
    }

    @Test
    @DisplayName("says a step that two dangers share once, for the graver")
    void shared() {
        Alarm alarm = alarm(stands(Danger.CARBON_MONOXIDE), stands(Danger.GAS));
        assertEquals(List.of(Remedy.LEAVE_AND_AIR_SHED), steps(alarm));
        assertEquals(
                Danger.CARBON_MONOXIDE, alarm.steps().get(0).against().info().id());
    }

    @Test
    @DisplayName("gives of the steps of a danger only those that fit what was answered, in the table's order")
    void fitting() {
        List<Remedy> aid = TABLE.get(Danger.HURT).steps();
        Alarm alarm = alarm(
                stands(Danger.HURT),
                says("REMEDY-2", new Proposes(aid.get(4), TABLE.get(Danger.HURT).cause())),
                says("REMEDY-1", new Proposes(aid.get(2), TABLE.get(Danger.HURT).cause())));
        assertEquals(List.of(aid.get(2), aid.get(4)), steps(alarm));
    }

    @Test
    @DisplayName("tells the gravest caution first, and each once")
    void cautions() {
        Alarm alarm =
                alarm(Arrays.stream(Danger.values()).map(DangerGateTest::stands).toArray(Firing[]::new));
        List<Severity> severities = alarm.cautions().stream()
                .map(c -> TestPile.KNOWLEDGE.cautions().get(c).severity())
                .toList();
        assertEquals(severities.stream().sorted().toList(), severities);
        assertTrue(Set.copyOf(severities).size() > 1, "there are some of each kind: " + severities);
        Set<Caution> all = TABLE.values().stream()
                .flatMap(d -> d.cautions().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(List.copyOf(all), alarm.cautions().stream().sorted().toList());
    }

    @Test
    @DisplayName("does not ask again what was answered, yes or no, nor the same twice")
    void asks() {
        List<Firing> both = List.of(stands(Danger.CARBON_MONOXIDE), stands(Danger.GAS));
        Alarm alarm = GATE.alarm(List.of(new Seen(Sign.SMOKE, 0), new Denied(Sign.GLOW, 0), "no answer"), both)
                .orElseThrow();
        assertEquals(List.of(Sign.CO_ALARM, Sign.SMELLS_BURNT, Sign.AIRED), alarm.asks());
    }
}
