package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advisor;
import heapwright.advice.engine.Pass;
import heapwright.advice.fact.Speaks;
import heapwright.casebook.RuleHolds.Hold;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("What holds a rule")
@Tag("thorough")
class RuleHoldsTest {

    private static final Path DEMO = Path.of("cases", "demo");

    private final Knowledge knowledge = KnowledgeReader.packed();
    private final Advisor advisor = Advisor.packed(knowledge);

    @Test
    @DisplayName("is a case that agrees with all rules and fails without this one")
    void heldByCaseThatFailsWithout() {
        List<Case> demo = new Casebook(knowledge).below(DEMO);
        List<Hold> holds = new RuleHolds(advisor, demo).of(r -> r.pass() == Pass.REMEDY);
        List<Hold> held = holds.stream().filter(h -> h.holder().isPresent()).toList();
        assertFalse(held.isEmpty(), "the demo cases ask for steps, so some remedy rule must be held");
        Hold one = held.get(0);
        assertFalse(Verdict.of(
                        one.holder().orElseThrow(), advisor.without(one.rule().id()))
                .agrees());
        assertTrue(one.firesIn() > 0);
    }

    @Test
    @DisplayName("is nothing where no case asks, and a rule that fires nowhere is told as such")
    void unheldWithoutCases() {
        List<Hold> holds = new RuleHolds(advisor, List.of()).of(r -> r.pass() == Pass.GUARD);
        Set<String> guards = advisor.rules().stream()
                .filter(r -> r.pass() == Pass.GUARD)
                .map(r -> r.id())
                .collect(Collectors.toSet());
        assertEquals(guards, holds.stream().map(h -> h.rule().id()).collect(Collectors.toSet()));
        assertTrue(holds.stream().allMatch(h -> h.holder().isEmpty() && h.firesIn() == 0));
    }

    @Test
    @DisplayName("cannot be asked of a rule that is not there")
    void unknownRule() {
        assertThrows(IllegalArgumentException.class, () -> advisor.without("GUARD-0"));
        assertThrows(IllegalArgumentException.class, () -> knowledge.without("WEIGH-0"));
    }

    @Test
    @DisplayName("is told of rows of evidence too, one by one: without it the row is silent and the others speak on")
    void rows() {
        Case salt = new Casebook(knowledge)
                .below(Path.of("cases", "practice")).stream()
                        .filter(c -> spoken(c, advisor).size() > 1)
                        .findFirst()
                        .orElseThrow();
        Set<String> with = spoken(salt, advisor);
        String dropped = with.iterator().next();
        Set<String> without = spoken(salt, advisor.without(dropped));
        assertFalse(without.contains(dropped));
        with.remove(dropped);
        assertEquals(with, without);
        List<Case> turns = new Casebook(knowledge)
                .below(Path.of("cases", "practice")).stream()
                        .filter(c -> c.file().startsWith("three-turns"))
                        .toList();
        List<Hold> holds = new RuleHolds(advisor, turns).of(r -> r.pass() == Pass.WEIGH);
        assertTrue(holds.stream().anyMatch(h -> h.holder().isPresent()));
        assertTrue(holds.stream()
                .map(h -> h.rule().id())
                .collect(Collectors.toSet())
                .containsAll(knowledge.evidence().stream().map(Evidence::id).toList()));
    }

    @Test
    @DisplayName("of a row is found without trying the cases whose advice it cannot change")
    void triesWhatCanChange() {
        List<Case> cases = new Casebook(knowledge)
                .below(Path.of("cases", "practice")).stream()
                        .filter(c -> c.file().startsWith("three-"))
                        .toList();
        Set<String> held = new TreeSet<>();
        for (Case one : cases) {
            if (Verdict.of(one, advisor).agrees()) {
                spoken(one, advisor).stream()
                        .filter(row -> !Verdict.of(one, advisor.without(row)).agrees())
                        .forEach(held::add);
            }
        }
        assertFalse(held.isEmpty());
        assertEquals(
                held,
                new RuleHolds(advisor, cases)
                        .of(r -> r.pass() == Pass.WEIGH).stream()
                                .filter(h -> h.holder().isPresent())
                                .map(h -> h.rule().id())
                                .collect(Collectors.toCollection(TreeSet::new)));
    }

    private static Set<String> spoken(Case tested, Advisor advisor) {
        return advisor.diagnose(tested.pile()).outcome().of(Speaks.class).stream()
                .map(f -> f.rule().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
