package heapwright.process.sanitation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** How the days of a record are counted: to the safe side, by judgement; the rules ask for a reading a day. */
@DisplayName("The heat of a record")
class HeatRecordTest {

    @Test
    @DisplayName("counts the days that were read hot and the unread ones between two hot readings, and the turns")
    void counts() {
        Stretch stretch = only("2026-03-01: 56", "2026-03-03: 60 turned", "2026-03-04: 55", "2026-03-06: 50");
        assertEquals(4, stretch.days().size());
        assertEquals(1, stretch.turns().size());
    }

    @Test
    @DisplayName("is broken by a cooler reading and by days without one")
    void broken() {
        assertEquals(List.of(1, 2), sizes("2026-03-01: 56", "2026-03-02: 54", "2026-03-03: 56", "2026-03-04: 56"));
        assertEquals(List.of(1, 1), sizes("2026-03-01: 56", "2026-03-05: 56"));
    }

    @Test
    @DisplayName("gives a single reading no hours, and none across a turn")
    void hours() {
        assertEquals(0, only("2026-03-01: 70").hours());
        assertEquals(72, only("2026-03-01: 70", "2026-03-04: 70").hours());
        assertEquals(
                24,
                only("2026-03-01: 70", "2026-03-02: 70 turned", "2026-03-03: 70")
                        .hours());
    }

    @Test
    @DisplayName("takes 131 °F for 55 °C, which the rules of the United States print for it")
    void fahrenheit() {
        Pile pile = TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', 'log': [{'date': '2026-03-01', "
                + "'measured': {'core': {'value': 131, 'unit': 'F'}}}]");
        assertEquals(1, HeatRecord.of(pile).at(55).total());
    }

    @Test
    @DisplayName("counts no unread day on which it was turned or watered")
    void disturbed() {
        Pile pile = TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', 'log': ["
                + "{'date': '2026-03-01', 'measured': {'core': {'value': 60, 'unit': 'C'}}},"
                + "{'date': '2026-03-02', 'done': ['turned-fully']},"
                + "{'date': '2026-03-03', 'measured': {'core': {'value': 60, 'unit': 'C'}}}]");
        assertEquals(2, HeatRecord.of(pile).at(55).total());
        assertEquals(0, HeatRecord.of(pile).at(55).hours());
    }

    @Test
    @DisplayName("counts a day that a logger read through by its lowest reading, not by its warmest")
    void lowestOfTheDay() {
        assertEquals(List.of(1, 1), readThrough("60 56", "60 54", "60 57"));
        assertEquals(List.of(3), readThrough("60 56", "60 55", "60 57"));
        assertEquals(24, spans("60 56", "58 55").get(0).hours());
        assertEquals(55, spans("60 56", "58 55").get(0).lowestC());
    }

    @Test
    @DisplayName("neither counts the day of a turn on which a logger told a dip, nor ends the row there")
    void dipOfATurn() {
        assertEquals(List.of(2), readThrough("60 56", "60 35 turned", "60 57"));
        assertEquals(List.of(1, 1), readThrough("60 56", "50 35 turned", "60 57"), "it did not get hot again that day");
        assertEquals(List.of(1, 1), readThrough("60 56", "60 35", "60 57"), "nobody turned it");
        assertEquals(
                1,
                HeatRecord.of(read("60 56", "60 35 turned", "60 57"))
                        .at(55)
                        .stretches()
                        .get(0)
                        .turns()
                        .size());
    }

    private static List<Integer> readThrough(String... days) {
        return HeatRecord.of(read(days)).at(55).stretches().stream()
                .map(s -> s.days().size())
                .toList();
    }

    private static List<HeatRecord.Span> spans(String... days) {
        return HeatRecord.of(read(days)).spans();
    }

    /** Days from the first of March on: the highest and the lowest core, and whether it was turned. */
    private static Pile read(String... days) {
        StringBuilder log = new StringBuilder();
        for (int i = 0; i < days.length; i++) {
            log.append(i == 0 ? "" : ",")
                    .append("{'date': '2026-03-0")
                    .append(i + 1)
                    .append("', 'measured': {'core': {'value': ")
                    .append(days[i], 0, 2)
                    .append(", 'unit': 'C'}, 'coreLowest': {'value': ")
                    .append(days[i], 3, 5)
                    .append(", 'unit': 'C'}}")
                    .append(days[i].endsWith("turned") ? ", 'done': ['turned-fully']" : "")
                    .append("}");
        }
        return TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', 'log': [" + log + "]");
    }

    @Test
    @DisplayName("is none where nothing was hot, and what comes after the day of advice does not count")
    void none() {
        assertEquals(List.of(), sizes("2026-03-01: 54"));
        assertEquals(
                List.of(),
                HeatRecord.of(of("2026-03-01: 60")
                                .with(
                                        "Heap",
                                        LocalDate.of(2026, 2, 28),
                                        List.of(),
                                        of("2026-03-01: 60").log()))
                        .at(55)
                        .stretches());
    }

    private static Stretch only(String... days) {
        List<Stretch> all = HeatRecord.of(of(days)).at(55).stretches();
        assertEquals(1, all.size());
        return all.get(0);
    }

    private static List<Integer> sizes(String... days) {
        return HeatRecord.of(of(days)).at(55).stretches().stream()
                .map(s -> s.days().size())
                .toList();
    }

    private static Pile of(String... days) {
        StringBuilder log = new StringBuilder();
        for (String day : days) {
            String done = day.endsWith("turned") ? ", 'done': ['turned-fully']" : "";
            log.append(log.isEmpty() ? "" : ",")
                    .append("{'date': '")
                    .append(day, 0, 10)
                    .append("', 'measured': {'core': {'value': ")
                    .append(day, 12, 14)
                    .append(", 'unit': 'C'}}")
                    .append(done)
                    .append("}");
        }
        return TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', 'log': [" + log + "]");
    }
}
