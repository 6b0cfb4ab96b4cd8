package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Known;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Strength;
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
        RuleInfo foul = rule("DERIVE-307");
        assertEquals("foul gas: it smells of rotten eggs", foul.name());
        assertEquals(Pass.DERIVE, foul.pass());
        assertEquals(Strength.STRONG, foul.strength());
        assertEquals(Known.PUBLISHED, foul.evidence());
        assertEquals("MPCA", foul.source());
        assertEquals("That is the smell of hydrogen sulphide.", foul.rationale());
    }

    @Test
    @DisplayName("loads the passes that are asked for, and no more")
    void parts() {
        Rulebook gate = Rulebook.packed(Pass.gate());
        assertEquals(
                ALL.rules().stream().filter(r -> Pass.gate().contains(r.pass())).toList(), gate.rules());
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
        List<Seen> smells = List.of(new Seen(Sign.SMELLS_ROTTEN_EGG, 0), new Seen(Sign.SMELLS_AMMONIA, 0));
        List<String> all = fired(ALL, smells);
        List<String> fewer = fired(ALL.without("DERIVE-307"), smells);
        assertTrue(all.contains("DERIVE-307"), all.toString());
        assertFalse(fewer.contains("DERIVE-307"), fewer.toString());
        assertTrue(fewer.contains("DERIVE-306"), fewer.toString());
        assertEquals(ALL.rules(), ALL.without("DERIVE-307").rules());
        ALL.without("DERIVE-307").demand(Pass.WEIGH);
        assertThrows(IllegalArgumentException.class, () -> ALL.without("WEIGH-0"));
    }

    private static List<String> fired(Rulebook rulebook, List<?> facts) {
        return new Inference(rulebook, TestPile.KNOWLEDGE)
                .unweighed(facts).stream().map(f -> f.rule().id()).toList();
    }

    @Test
    @DisplayName("joins two firings of a rule into one with both grounds, in the better degree")
    void joined() {
        Object result = new SetAside(Cause.TOO_WET);
        Firing one = new Firing(rule("DERIVE-307"), List.of("b"), result, 0.4);
        Firing other = new Firing(rule("DERIVE-307"), List.of("a", "b"), result, 0.7);
        assertEquals(new Firing(rule("DERIVE-307"), List.of("a", "b"), result, 0.7), one.with(other));
        assertEquals(new Firing(rule("DERIVE-307"), List.of("a", "b"), result, 0.7), other.with(one));
        assertFalse(one.rather());
        assertTrue(other.rather());
        assertEquals(1, new Firing(rule("DERIVE-307"), List.of("b"), result).degree());
    }
}
