package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.TestPile;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.pile.Pile;
import heapwright.report.Catalogue;
import heapwright.report.HarvestDays;
import heapwright.report.Units;
import heapwright.report.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The calendar of a pile")
class FollowUpsTest {

    private static final Instant WRITTEN = Instant.parse("2027-05-20T08:00:00Z");

    private final Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);

    private static Pile spread() {
        return new Casebook(TestPile.KNOWLEDGE)
                .below(Path.of("cases", "ready")).stream()
                        .filter(c -> c.file().contains("harvest-waits-from-the-day-it-was-spread"))
                        .map(Case::pile)
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    @DisplayName("holds the day to look again and the first days of harvest, each once")
    void harvest() {
        Advice advice = TestPile.ADVISOR.advise(spread());
        String calendar = new String(new FollowUps(words).calendar(advice, WRITTEN), StandardCharsets.UTF_8);
        List<String> days =
                calendar.lines().filter(l -> l.startsWith("DTSTART")).toList();
        assertTrue(days.contains("DTSTART;VALUE=DATE:20270804") && days.contains("DTSTART;VALUE=DATE:20270903"));
        assertEquals(days.stream().distinct().toList(), days);
        assertTrue(calendar.contains("SUMMARY:First harvest after compost"), calendar);
        assertTrue(days.size() > 2, "and the day to look again");
    }

    @Test
    @DisplayName("tells no day of harvest that is past, nor one where nothing raw was spread")
    void none() {
        Advice advice = TestPile.ADVISOR.diagnose(spread());
        HarvestDays days = new HarvestDays(words);
        assertEquals(2, days.ahead(advice, LocalDate.of(2027, 8, 3)).size());
        assertEquals(1, days.ahead(advice, LocalDate.of(2027, 8, 4)).size());
        assertEquals(0, days.ahead(advice, LocalDate.of(2027, 9, 3)).size());
        Advice other = TestPile.ADVISOR.diagnose(
                TestPile.of("'built': '2026-08-20', 'asOf': '2027-05-20', 'recipe': [{'material': 'leaves-mixed',"
                        + " 'amount': 30, 'unit': 'bucket'}], 'log': [{'date': '2027-05-06', 'done': ['spread']}]"));
        assertFalse(other.alarm().isPresent());
        assertTrue(days.ahead(other, LocalDate.of(2027, 5, 20)).isEmpty());
    }
}
