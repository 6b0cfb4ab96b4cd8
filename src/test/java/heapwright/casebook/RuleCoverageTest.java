package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.audit.Judgement;
import heapwright.advice.engine.Firing;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Rulebook;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The rules")
class RuleCoverageTest {

    @Test
    @DisplayName("each fire in at least one case")
    void everyRuleFires() {
        Set<String> fired = JudgedCases.all().stream()
                .flatMap(j -> Stream.concat(
                        j.advice().outcome().firings().stream(),
                        j.audit().stream().flatMap(a -> a.judgements().stream()).map(Judgement::firing)))
                .filter(Firing::rather)
                .map(f -> f.rule().id())
                .collect(Collectors.toSet());
        TreeMap<String, String> silent = Rulebook.packed().rules().stream()
                .filter(r -> !fired.contains(r.id()))
                .collect(Collectors.toMap(RuleInfo::id, RuleInfo::name, (a, b) -> a, TreeMap::new));
        String told = silent.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining("\n"));
        assertEquals("", told, silent.size() + " rules that fire in no case");
    }
}
