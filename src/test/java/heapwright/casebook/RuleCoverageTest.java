package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.Advisor;
import heapwright.advice.audit.Judgement;
import heapwright.advice.engine.Firing;
import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.KnowledgeReader;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("The rules and the rows of evidence")
@Tag("thorough")
class RuleCoverageTest {

    /** The rules that join rows to facts: what they say is told as said by the row, so {@code RowsTest} holds them. */
    private static final Pattern JOINS = Pattern.compile("WEIGH-50\\d\\d");

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
        TreeMap<String, String> silent = Advisor.packed(KnowledgeReader.packed()).rules().stream()
                .filter(r -> !JOINS.matcher(r.id()).matches())
                .filter(r -> !fired.contains(r.id()))
                .collect(Collectors.toMap(RuleInfo::id, RuleInfo::name, (a, b) -> a, TreeMap::new));
        String told = silent.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .collect(Collectors.joining("\n"));
        assertEquals("", told, silent.size() + " rules and rows that fire in no case");
    }
}
