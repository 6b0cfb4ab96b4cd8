package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heapwright.advice.Advice;
import heapwright.advice.TestPile;
import heapwright.advice.audit.Audit;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Pile;
import heapwright.web.view.AdviceView;
import heapwright.web.view.AdviceViews;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same alarm on every door, whatever else the recipe and the record say (common practice, no source). */
@DisplayName("Every door, while a danger stands,")
class DangerDoorsTest {

    private static final Knowledge KNOWLEDGE = TestPile.KNOWLEDGE;
    private static final Words WORDS = new Words(KNOWLEDGE, Catalogue.english(), Units.METRIC);

    private static final String SMOKE = "'seen': ['smoke', 'soggy', 'smells-sour']";
    private static final String BURNT = "'seen': ['smells-burnt'], 'measured': {'core': {'value': 55, 'unit': 'C'}}";
    private static final String ASH = "'seen': ['ash-or-lime', 'core-hot', 'soggy']";
    private static final String ALARM = "'seen': ['co-alarm', 'dark-crumbly']";

    @ParameterizedTest
    @ValueSource(strings = {SMOKE, BURNT, ASH, ALARM})
    @DisplayName("leads with it and tells nobody to open, wet, feed or turn the pile or to look inside")
    void doors(String noted) throws Exception {
        Pile pile = pile(noted);
        Advice advice = TestPile.ADVISOR.advise(pile);
        String headline = new HeadlineText(WORDS).of(advice);
        assertTrue(headline.startsWith("DANGER: "), headline);
        Map<String, String> doors = new LinkedHashMap<>();
        doors.put("text", new TextReport(WORDS, false).write(advice));
        doors.put("why", new WhyReport(WORDS, false).write(advice));
        doors.put(
                "outlook",
                new OutlookReport(WORDS, false).alarmed(pile, advice.alarm().orElseThrow()));
        Audit audit = TestPile.ADVISOR.audit(pile, OptionalDouble.empty()).orElseThrow();
        doors.put("audit", new AuditReport(WORDS, false).write(audit));
        doors.put("first page", new FirstPage(WORDS, false).write(advice));
        doors.put("first page of why", new FirstPageOfWhy(WORDS, false).write(advice));
        doors.put(
                "first page of outlook",
                new FirstPageOfOutlook(WORDS, false)
                        .alarmed(pile, advice.alarm().orElseThrow()));
        doors.put("first page of audit", new FirstPageOfAudit(WORDS, false).write(audit));
        String json = new AdviceJson(WORDS, "test").write(advice, false);
        AdviceView page = new AdviceViews(WORDS).view(advice);
        doors.forEach((door, text) -> {
            List<String> lines = text.lines().toList();
            assertTrue(lines.get(1).startsWith("DANGER: "), door + " begins with " + lines.subList(0, 2));
            assertEquals(List.of(), sendsIn(text), door);
        });
        assertEquals(List.of(), sendsIn(json), "json");
        assertEquals(List.of(), sendsIn(page.toString()), "page");
        assertEquals(headline, page.headline());
        assertTrue(page.danger());
        JsonNode document = new ObjectMapper().readTree(json);
        assertEquals(headline, document.get("headline").asText());
        assertEquals(
                advice.alarm().orElseThrow().dangers().size(),
                document.get("dangers").size());
        assertEquals(headline, new AuditReport(WORDS, false).headline(audit));
        assertTrue(audit.proposal().isEmpty(), "no plan is proposed");
    }

    @Test
    @DisplayName("names what waits only below the line")
    void waits() {
        Advice advice = TestPile.ADVISOR.advise(pile(SMOKE));
        String text = new TextReport(WORDS, false).write(advice);
        String cause = KNOWLEDGE.causes().get(advice.whenSafe().get(0).cause()).name();
        int line = text.indexOf("\nWhen it is safe\n");
        assertTrue(line > 0, text);
        assertTrue(text.indexOf(cause) > line, text);
    }

    @Test
    @DisplayName("puts what must not be used before finished compost")
    void headlineOrder() {
        Advice advice = TestPile.ADVISOR.advise(TestPile.seen("dark-crumbly smells-earthy treated-wood", ""));
        String headline = new HeadlineText(WORDS).of(advice);
        assertTrue(headline.startsWith("Must not be used. "), headline);
    }

    private static Pile pile(String noted) {
        return TestPile.of(
                "'built': '2026-10-31', 'recipe': [{'material': 'leaves-mixed', 'amount': 20, 'unit': 'bucket'},"
                        + " {'material': 'kitchen-scraps', 'amount': 12, 'unit': 'kg'}], 'log': [{'date': '2026-11-21', "
                        + noted
                        + "}]");
    }

    /** Names of steps that disturb a pile, and how-tos of questions that mean opening it, in what a door says. */
    private static List<String> sendsIn(String said) {
        String text = said.replaceAll("\\s+", " ");
        return Stream.concat(
                        KNOWLEDGE.remedies().values().stream()
                                .filter(r -> r.does().disturbs())
                                .map(r -> r.name()),
                        KNOWLEDGE.signs().values().stream()
                                .filter(s -> s.where() == SignInfo.Where.INSIDE)
                                .map(SignInfo::how))
                .filter(s -> s.length() > 12)
                .filter(text::contains)
                .toList();
    }
}
