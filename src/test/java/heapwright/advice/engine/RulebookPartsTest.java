package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Supports;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Known;
import heapwright.knowledge.Origin;
import heapwright.knowledge.Sign;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The rulebook")
class RulebookPartsTest {

    private static final Rulebook ALL = TestPile.ADVISOR.rulebook();

    private static RuleInfo rule(String id) {
        return ALL.rules().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
    }

    @Test
    @DisplayName("tells its rules in order of id, with what each says of itself")
    void rules() {
        List<String> ids = ALL.rules().stream().map(RuleInfo::id).toList();
        assertEquals(ids.stream().sorted().toList(), ids);
        assertEquals(ids.size(), Set.copyOf(ids).size());
        RuleInfo streams = rule("WEIGH-401");
        assertEquals("too much water: water streams from a squeezed handful", streams.name());
        assertEquals(Pass.WEIGH, streams.pass());
        assertEquals(Strength.DECISIVE, streams.strength());
        assertEquals(Known.FROM_MEMORY, streams.evidence());
        assertEquals("RYNK92", streams.source());
        assertEquals("More water is there than the stuff can hold.", streams.rationale());
    }

    @Test
    @DisplayName("loads the passes that are asked for, and no more")
    void parts() {
        Rulebook gate = Rulebook.packed(Pass.gate());
        assertEquals(
                ALL.rules().stream()
                        .filter(r -> Pass.gate().contains(r.pass()))
                        .toList(),
                gate.rules());
        gate.demand(Pass.DANGER);
        IllegalStateException fault = assertThrows(IllegalStateException.class, () -> gate.demand(Pass.WEIGH));
        assertTrue(fault.getMessage().contains("weigh"), fault.getMessage());
        assertEquals(EnumSet.of(Pass.DERIVE, Pass.DANGER), Pass.gate());
        assertThrows(IllegalStateException.class, () -> Rulebook.packed(EnumSet.noneOf(Pass.class)));
        assertFalse(Pass.checkup().contains(Pass.AUDIT));
        assertEquals(Pass.values().length - 1, Pass.checkup().size());
    }

    @Test
    @DisplayName("without one rule fires all the others")
    void without() {
        List<Seen> streams = List.of(new Seen(Sign.SQUEEZE_STREAMS, 0));
        List<String> all = fired(ALL, streams);
        List<String> fewer = fired(ALL.without("WEIGH-401"), streams);
        assertTrue(all.contains("WEIGH-401"), all.toString());
        assertFalse(fewer.contains("WEIGH-401"), fewer.toString());
        assertTrue(fewer.contains("WEIGH-408"), fewer.toString());
        assertEquals(ALL.rules(), ALL.without("WEIGH-401").rules());
        ALL.without("WEIGH-401").demand(Pass.WEIGH);
        assertThrows(IllegalArgumentException.class, () -> ALL.without("WEIGH-0"));
    }

    private static List<String> fired(Rulebook rulebook, List<?> facts) {
        return new Inference(rulebook, TestPile.KNOWLEDGE)
                .unweighed(facts).stream().map(f -> f.rule().id()).toList();
    }

    @Test
    @DisplayName("joins two firings of a rule into one with both grounds, in the better degree")
    void joined() {
        Object result = new Supports(Cause.TOO_WET, Origin.SQUEEZE);
        Firing one = new Firing(rule("WEIGH-401"), List.of("b"), result, 0.4);
        Firing other = new Firing(rule("WEIGH-401"), List.of("a", "b"), result, 0.7);
        assertEquals(new Firing(rule("WEIGH-401"), List.of("a", "b"), result, 0.7), one.with(other));
        assertEquals(new Firing(rule("WEIGH-401"), List.of("a", "b"), result, 0.7), other.with(one));
        assertFalse(one.rather());
        assertTrue(other.rather());
        assertEquals(1, new Firing(rule("WEIGH-401"), List.of("b"), result).degree());
    }
}
