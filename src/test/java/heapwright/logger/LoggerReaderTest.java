package heapwright.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.logger.LoggerDays.Day;
import heapwright.logger.LoggerDays.Named;
import heapwright.logger.LoggerDays.What;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as loggers and spreadsheets write them; their forms are common practice, no source. */
class LoggerReaderTest {

    private static final LocalDate BUILT = LocalDate.of(2026, 11, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static LoggerDays read(String file) {
        return read(file, Optional.empty(), Optional.empty());
    }

    private static LoggerDays read(String file, Optional<ZoneId> zone, Optional<Boolean> dayFirst) {
        return new LoggerReader(new LoggerSettings(zone, dayFirst, false, BUILT, TODAY))
                .read(file.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<What, Named> named(LoggerDays days) {
        return days.named().stream().collect(Collectors.toMap(Named::what, n -> n));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Time;Core °C;Outside °C\n2026-11-20 06:00;41,5;-3\n2026-11-20 18:00;44,0;1\n",
                "\uFEFF\"Date Time\",\"Heap (°F)\",\"Air (°F)\"\r\n11/20/2026 6:00 AM,106.7,26.6\r\n11/20/2026 6:00 PM,111.2,33.8\r\n",
                "sep=;\nPlot 3\n\nDate;Time;Compost temp;Ambient temp;Humidity %\n20.11.2026;06:00;41,5;-3;80\n20.11.2026;18:00;44;1;70\n",
                "timestamp\tcore_c\toutdoor_c\n2026-11-20T06:00:00+02:00\t41.5\t−3\n2026-11-20T18:00:00+02:00\t44\t1\n",
                "\"Date Time, GMT+02:00\",\"Probe, °C\",\"Outdoor, °C\"\n\"20 Nov 2026 06:00\",\"41,5\",-3\n\"20 Nov 2026 18:00\",44,1\n"
            })
    void manyFormsTellTheSameDay(String file) {
        LoggerDays days = read(file);
        assertEquals(1, days.days().size());
        Day day = days.days().get(0);
        assertEquals(LocalDate.of(2026, 11, 20), day.date());
        assertEquals(44, day.coreC().orElseThrow(), 0.01, "the warmest of the day");
        assertEquals(41.5, day.lowestC().orElseThrow(), 0.01, "the coolest of the day");
        assertEquals(-1, day.outdoorC().orElseThrow(), 0.01, "the mean of the day");
        assertEquals(2, day.rows());
        assertTrue(
                days.named().stream().noneMatch(n -> n.what() != What.GAP),
                days.named().toString());
    }

    @Test
    void timesInUniversalTimeAskWhereThePileStands() {
        String file = "time,core temp\n2026-11-20T22:30Z,40\n2026-11-21T10:00Z,44\n";
        assertTrue(
                assertThrows(LoggerFault.class, () -> read(file)).getMessage().contains("--zone"));
        List<Day> days = read(file, Optional.of(ZoneId.of("Europe/Helsinki")), Optional.empty())
                .days();
        assertEquals(
                List.of(LocalDate.of(2026, 11, 21)),
                days.stream().map(Day::date).toList(),
                "after midnight there");
        String epoch = "epoch,core\n1763677800,40\n";
        assertThrows(LoggerFault.class, () -> read(epoch));
    }

    @Test
    void anOffsetInTheTimeIsHonoured() {
        String file = "time,core\n2026-11-20T23:30+02:00,40\n";
        assertEquals(LocalDate.of(2026, 11, 20), read(file).days().get(0).date());
        assertEquals(
                LocalDate.of(2026, 11, 21),
                read(file, Optional.of(ZoneId.of("Asia/Tokyo")), Optional.empty())
                        .days()
                        .get(0)
                        .date());
    }

    @Test
    void daysThatCanBeReadTwoWaysAreAskedFor() {
        String open = "date,core\n03/11/2026,40\n04/11/2026,41\n";
        assertTrue(
                assertThrows(LoggerFault.class, () -> read(open)).getMessage().contains("--dates"));
        assertEquals(
                LocalDate.of(2026, 11, 3),
                read(open, Optional.empty(), Optional.of(true)).days().get(0).date());
        assertEquals(
                LocalDate.of(2026, 11, 13),
                read("date,core\n11/13/2026,40\n").days().get(0).date());
    }

    @Test
    void whatIsLeftOutIsNamedWithItsLine() {
        LoggerDays days = read("""
                time;core
                2026-10-30 12:00;50
                2026-11-02 12:00;50
                2026-11-02 13:00;
                2026-11-02 14:00;-127
                2026-11-02 15:00;51
                2026-11-02 16:00;85
                2026-11-02 17:00;51
                nonsense;51
                2026-11-02 17:00;52
                2026-11-02 18:00;52;3
                2026-11-02 16:30;52
                2026-11-04 12:00;54
                2026-12-04 12:00;54
                """);
        Map<What, Named> named = named(days);
        assertEquals("2", named.get(What.BEFORE).where());
        assertEquals("4", named.get(What.NO_FIGURE).where());
        assertEquals("5", named.get(What.IMPOSSIBLE).where());
        assertEquals("7", named.get(What.JUMP).where());
        assertEquals("9", named.get(What.NO_STAMP).where());
        assertEquals("10", named.get(What.TWICE).where());
        assertEquals("11", named.get(What.TOO_MANY_CELLS).where());
        assertEquals("12", named.get(What.OUT_OF_ORDER).where());
        assertEquals("14", named.get(What.FUTURE).where());
        assertEquals("2026-11-02 17:00 – 2026-11-04 12:00", named.get(What.GAP).where());
        assertEquals(52, days.days().get(0).coreC().orElseThrow(), "the slip of 85 °C does not count");
    }

    @Test
    void columnsThatNobodyCanTellApartAreAskedFor() {
        LoggerFault fault = assertThrows(LoggerFault.class, () -> read("time,temp 1,temp 2\n2026-11-20 12:00,40,3\n"));
        assertTrue(fault.getMessage().contains("temp 1, temp 2"));
        assertThrows(LoggerFault.class, () -> read("just words\n"));
        assertThrows(LoggerFault.class, () -> read("time,humidity\n2026-11-20 12:00,40\n"));
        assertEquals(
                1, read("time,temp,humidity\n2026-11-20 12:00,40,3\n").days().size());
    }

    @Test
    void aHundredThousandRowsComeToTheirDays() {
        StringBuilder file = new StringBuilder("time;core;outside\n");
        LocalDateTime at = LocalDateTime.of(2015, 1, 1, 0, 0);
        for (int i = 0; i < 100_000; i++) {
            file.append(at.plusHours(i)).append(';').append(40 + i % 24).append(",5;-3\n");
        }
        LoggerDays days = new LoggerReader(
                        new LoggerSettings(Optional.empty(), Optional.empty(), false, at.toLocalDate(), TODAY))
                .read(file.toString().getBytes(StandardCharsets.UTF_8));
        assertEquals(100_000, days.rows());
        assertEquals(4167, days.days().size());
        assertTrue(days.days().stream().limit(4166).allMatch(d -> d.coreC().orElseThrow() == 63.5));
        assertEquals(List.of(), days.named());
    }
}
