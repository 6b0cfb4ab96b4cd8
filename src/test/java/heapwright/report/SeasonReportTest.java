package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.season.Season;
import heapwright.advice.season.YearRound;
import heapwright.knowledge.SeasonJob;
import heapwright.knowledge.TimeOfYear;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.process.climate.MonthThird;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What there is to do in each season")
class SeasonReportTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);

    private static final Map<Units, Words> WORDS = new EnumMap<>(Map.of(
            Units.METRIC, new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC),
            Units.US, new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.US)));

    private static SeasonReport report(Units units) {
        return new SeasonReport(WORDS.get(units), false);
    }

    private static YearRound year(Units units, Container.Kind kind, LocalDate day) {
        return YearRound.of(Place.unknown(), kind, day, WORDS.get(units).knowledge());
    }

    @Test
    @DisplayName("fits one page on any day, for any kind of pile, in either units")
    void fits() {
        for (Container.Kind kind : Container.Kind.values()) {
            for (int third = 0; third < 36; third++) {
                LocalDate day = LocalDate.of(2026, third / 3 + 1, third % 3 * 10 + 5);
                for (Units units : Units.values()) {
                    String page = report(units).first(year(units, kind, day), Optional.empty(), day);
                    assertTrue(Leaf.fits(page), kind + " " + day + "\n" + page);
                }
            }
        }
    }

    @Test
    @DisplayName("says on the first page what to do now, with the months")
    void now() {
        String page =
                report(Units.METRIC).first(year(Units.METRIC, Container.Kind.UNKNOWN, DAY), Optional.empty(), DAY);
        assertTrue(page.contains("Before the frost (November)"), page);
        assertTrue(page.contains("Wrap it: 20–30 cm of straw"), page);
        assertFalse(page.contains("hotbed"), page);
    }

    @Test
    @DisplayName("tells every job in full with its reason and source, in one's own units")
    void full() {
        Map<Units, String> pages = new EnumMap<>(Units.class);
        for (Units units : Units.values()) {
            StringBuilder all = new StringBuilder();
            for (Container.Kind kind : Container.Kind.values()) {
                all.append(report(units)
                        .full(year(units, kind, DAY), Optional.empty(), DAY)
                        .replaceAll("\\s+", " "));
            }
            pages.put(units, all.toString());
        }
        for (SeasonJob job : TestPile.KNOWLEDGE.season().values()) {
            assertTrue(pages.get(Units.METRIC).contains(job.job() + " " + job.why()), job.id());
            assertTrue(pages.get(Units.METRIC).contains("[" + String.join(", ", job.sources()) + ";"), job.id());
        }
        assertTrue(pages.get(Units.US).contains(" in of straw"), "inches");
        assertFalse(pages.get(Units.US).matches(".*(°C| cm\\b|metre).*"), "metric measures in US units");
    }

    @ParameterizedTest
    @CsvSource({
        "APRIL, 0, APRIL, 1, 'The thaw (early to mid-April)'",
        "APRIL, 1, APRIL, 2, 'The thaw (mid- to late April)'",
        "APRIL, 0, APRIL, 2, 'The thaw (April)'",
        "APRIL, 2, APRIL, 2, 'The thaw (late April)'",
        "MARCH, 2, APRIL, 1, 'The thaw (late March to mid-April)'",
        "MARCH, 0, APRIL, 2, 'The thaw (March to April)'"
    })
    @DisplayName("names months as people say them")
    void months(Month from, int first, Month to, int last, String said) {
        Season season = new Season(TimeOfYear.THAW, new MonthThird(from, first), new MonthThird(to, last), List.of());
        assertEquals(said, new SeasonWords(WORDS.get(Units.METRIC)).span(season));
    }

    @Test
    @DisplayName("sends the owner of a pile to the checkup first")
    void checkupFirst() {
        Pile pile = TestPile.of("'built': '2026-10-01'");
        YearRound year = year(Units.METRIC, Container.Kind.OPEN_HEAP, DAY);
        assertTrue(report(Units.METRIC).first(year, Optional.of(pile), DAY).contains("do what it says first"));
    }
}
