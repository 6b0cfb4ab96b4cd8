package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.season.Season;
import heapwright.advice.season.YearRound;
import heapwright.knowledge.Known;
import heapwright.knowledge.SeasonJob;
import heapwright.knowledge.TimeOfYear;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.process.climate.LocalYear;
import heapwright.process.climate.MonthThird;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
                    assertTrue(FirstPageSize.fits(page), kind + " " + day + "\n" + page);
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

    private static SeasonJob job(TimeOfYear time, SeasonJob.Keeps keeps, String job, String why) {
        return new SeasonJob("any", time, keeps, Set.of(), job, why, List.of("COMMON", "FAO80"), Known.JUDGEMENT);
    }

    /** A year of three times, written by hand. */
    private static YearRound written(LocalYear.Known known, String pile, String why, String toilet, String next) {
        return new YearRound(
                known,
                List.of(
                        new Season(
                                TimeOfYear.BEFORE_FROST,
                                new MonthThird(Month.NOVEMBER, 0),
                                new MonthThird(Month.NOVEMBER, 2),
                                List.of(
                                        job(TimeOfYear.BEFORE_FROST, SeasonJob.Keeps.PILE, pile, why),
                                        job(TimeOfYear.BEFORE_FROST, SeasonJob.Keeps.TOILET, toilet, "It rains in."),
                                        job(TimeOfYear.BEFORE_FROST, SeasonJob.Keeps.PILE, "Wrap it.", "It cools."))),
                        new Season(
                                TimeOfYear.DEEP_WINTER,
                                new MonthThird(Month.DECEMBER, 0),
                                new MonthThird(Month.MARCH, 1),
                                List.of(job(
                                        TimeOfYear.DEEP_WINTER, SeasonJob.Keeps.SCRAPS, next, "Frost bursts them."))),
                        new Season(
                                TimeOfYear.SUMMER,
                                new MonthThird(Month.MARCH, 2),
                                new MonthThird(Month.OCTOBER, 2),
                                List.of(job(TimeOfYear.SUMMER, SeasonJob.Keeps.BEDS, "Mulch.", "It dries.")))));
    }

    private static String first(YearRound year) {
        return report(Units.METRIC).first(year, Optional.empty(), DAY);
    }

    @Test
    @DisplayName("gives the reasons beside what is to be done now, and the next time of the year without them")
    void firstPage() {
        assertEquals(
                """
                What to do round the heap, 30 November 2026

                Before the frost (November)
                - The pile: Turn it. It heats once more.
                - The pile: Wrap it. It cools.
                - A dry toilet: Shut it. It rains in.

                Deep winter (December to mid-March)
                - Kitchen scraps: Go on.

                The rest of the year, with all reasons: heapwright season --full.
                """, first(written(LocalYear.Known.MONTHS, "Turn it.", "It heats once more.", "Shut it.", "Go on.")));
    }

    @Test
    @DisplayName("gives all the year in full, by what each job is for, with what it rests on")
    void fullPage() {
        assertEquals(
                """
                What to do round the heap, 30 November 2026
                By a usual year for the latitude. Go by your own ground and trees where they say
                otherwise.

                Before the frost (November)
                The pile
                - Turn it. It heats once more. [COMMON, FAO80; judgement]
                - Wrap it. It cools. [COMMON, FAO80; judgement]
                A dry toilet
                - Shut it. It rains in. [COMMON, FAO80; judgement]

                Deep winter (December to mid-March)
                Kitchen scraps
                - Go on. Frost bursts them. [COMMON, FAO80; judgement]

                Summer (late March to October)
                The beds
                - Mulch. It dries. [COMMON, FAO80; judgement]

                Local rules come first: on manure, on dry toilets, on what may be spread when.
                """,
                report(Units.METRIC)
                        .full(
                                written(
                                        LocalYear.Known.LATITUDE,
                                        "Turn it.",
                                        "It heats once more.",
                                        "Shut it.",
                                        "Go on."),
                                Optional.empty(),
                                DAY));
    }

    /** A page holds 250 words. */
    @Test
    @DisplayName("leaves away the reasons, then the toilet, then what comes next, and no more than it must")
    void tooFull() {
        String much = "word ".repeat(180).strip();
        String reasons = first(written(LocalYear.Known.MONTHS, "Turn it.", "why ".repeat(240), "Shut it.", "Go on."));
        assertTrue(reasons.contains("- The pile: Turn it.\n") && !reasons.contains("why"), reasons);
        assertTrue(reasons.contains("Shut it.") && !reasons.contains("It rains in."), reasons);
        assertTrue(reasons.contains("Go on."), reasons);
        String toilet = first(written(LocalYear.Known.MONTHS, much, "It heats.", much.replace("w", "t"), "Go on."));
        assertTrue(toilet.contains("word") && !toilet.contains("tord"), toilet);
        assertTrue(toilet.contains("Go on."), toilet);
        String next = first(written(LocalYear.Known.MONTHS, much, "It heats.", "Shut it.", much.replace("w", "t")));
        assertTrue(next.contains("word") && !next.contains("tord") && !next.contains("Deep winter"), next);
        assertTrue(FirstPageSize.fits(reasons) && FirstPageSize.fits(toilet) && FirstPageSize.fits(next));
    }

    @Test
    @DisplayName("of a pile names it, and says where its year is from")
    void ofAPile() {
        Pile pile = TestPile.of("'built': '2026-10-01'");
        SeasonWords said = new SeasonWords(WORDS.get(Units.METRIC));
        assertEquals(pile.name() + ": what to do, 30 November 2026", said.title(Optional.of(pile), DAY));
        YearRound assumed = written(LocalYear.Known.ASSUMED, "a", "b", "c", "d");
        assertEquals(
                List.of(
                        "By a usual year with a cold winter, as the file says nothing of the place. Go by your own"
                                + " ground and trees.",
                        "If the checkup finds something wrong with this pile, do what it says first."),
                said.ground(assumed, Optional.of(pile)));
        assertEquals(
                List.of("By a usual year with a cold winter. If a pile's place is given, its own months are used."),
                said.ground(assumed, Optional.empty()));
    }
}
