package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.Finding;
import heapwright.advice.fact.Reads;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.report.AdviceJson;
import heapwright.report.Catalogue;
import heapwright.report.JsonText;
import heapwright.report.TextReport;
import heapwright.report.Units;
import heapwright.report.Words;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A pile whose age nobody told is the same pile at every door, and every door says what it took for granted. */
class AssumedAgeTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final Knowledge knowledge = KnowledgeReader.packed();
    private final Advisor advisor = Advisor.packed(knowledge);
    private final Words words = new Words(knowledge, Catalogue.english(), Units.METRIC);

    private Pile read(String document) {
        return new PileReader(knowledge.vocabulary())
                .read("heap.json", document.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
    }

    private Pile ofPage(Map<String, String> about) {
        CheckupAnswers said =
                new CheckupAnswers(Set.of(Sign.CORE_COLD, Sign.SMELLS_SOUR), Set.of(), Set.of(), about, TODAY);
        return read(JsonText.write(AboutPile.document(said, Units.METRIC, "Heap")));
    }

    private static Map<Cause, Double> likelihoods(Advice advice) {
        return advice.findings().stream()
                .collect(java.util.stream.Collectors.toMap(Finding::cause, Finding::likelihood));
    }

    @Test
    void theCommandLineAndThePageTakeTheSameAgeAndGiveTheSameAdvice() {
        Pile file = read("{\"heapwright\":\"pile/1\",\"name\":\"Heap\",\"log\":[{\"date\":\"2026-11-25\","
                + "\"seen\":[\"smells-sour\",\"core-cold\"]}]}");
        Pile page = ofPage(Map.of());
        assertTrue(file.builtAssumed() && page.builtAssumed());
        assertEquals(file.built(), page.built());
        assertEquals(likelihoods(advisor.diagnose(file)), likelihoods(advisor.diagnose(page)));
    }

    @Test
    void theAssumptionIsSaidAndIsNoReport() {
        Advice advice = advisor.diagnose(ofPage(Map.of()));
        String told = "You gave no building date; it is taken as 26 October 2026";
        String text = new TextReport(words, false).write(advice).replaceAll("\\s+", " ");
        assertTrue(text.contains(told), text);
        assertTrue(new AdviceJson(words, "test")
                .document(advice, false)
                .path("builtAssumed")
                .booleanValue());
        Reads age = advice.readings().stream()
                .filter(r -> r.reading() == Reading.AGE)
                .findFirst()
                .orElseThrow();
        assertEquals(new Reads(Reading.AGE, 15, 30, 59, Reads.Basis.ESTIMATED), age);
    }

    @Test
    void anAgeThatIsToldIsTakenAsTold() {
        Pile told = ofPage(Map.of(AboutPile.BUILT, "2"));
        assertFalse(told.builtAssumed());
        Advice advice = advisor.diagnose(told);
        assertFalse(new TextReport(words, false).write(advice).contains("no building date"));
        assertEquals(List.of(), words.assumed(told).stream().toList());
    }
}
