package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Rulebook;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.KnowledgeReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

@DisplayName("The pages of knowledge")
class KnowledgePagesTest {

    private static final Path FOLDER = Path.of("docs", "knowledge");

    @TestFactory
    @DisplayName("say what tables and rules say")
    Stream<DynamicTest> inStep() {
        Map<String, String> pages = new KnowledgePages().all();
        assertNotEquals(Map.of(), pages);
        return pages.entrySet().stream()
                .map(p -> DynamicTest.dynamicTest(
                        p.getKey(), () -> Papers.hold(FOLDER.resolve(p.getKey()), p.getValue())));
    }

    @Test
    @DisplayName("find the text of every rule")
    void everyRule() {
        assertEquals(
                Rulebook.packed().rules().stream().map(RuleInfo::id).toList(),
                RuleText.all().stream().map(RuleText::id).sorted().toList());
    }

    @Tag("thorough")
    @Test
    @DisplayName("name every row of evidence and every rule of a checkup somewhere")
    void everyRuleIsShown() {
        String all = String.join("\n", new KnowledgePages().all().values());
        List<String> told = Rulebook.packed().rules().stream()
                .filter(r -> switch (r.pass()) {
                    case DANGER, REMEDY, GUARD, ARRANGE -> true;
                    case DERIVE, WEIGH, CONCLUDE, AUDIT -> false;
                })
                .map(RuleInfo::id)
                .toList();
        List<String> rows =
                KnowledgeReader.packed().evidence().stream().map(Evidence::id).toList();
        List<String> lost = Stream.concat(told.stream(), rows.stream())
                .filter(id -> !all.contains(id))
                .toList();
        assertEquals(List.of(), lost);
    }
}
