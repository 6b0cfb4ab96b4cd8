package heapwright.advice.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.SeasonJob;
import heapwright.knowledge.TimeOfYear;
import heapwright.pile.Container;
import heapwright.pile.Place;
import heapwright.process.climate.LocalYear;
import heapwright.process.climate.MonthThird;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The round of the year")
class YearRoundTest {

    private static final LocalDate NOVEMBER = LocalDate.of(2026, 11, 30);

    private static YearRound year(Place place, Container.Kind kind, LocalDate day) {
        return YearRound.of(place, kind, day, TestPile.KNOWLEDGE);
    }

    private static Set<String> jobs(Container.Kind kind, TimeOfYear time) {
        return year(Place.unknown(), kind, NOVEMBER).seasons().stream()
                .filter(s -> s.time() == time)
                .flatMap(s -> s.jobs().stream())
                .map(SeasonJob::id)
                .collect(Collectors.toSet());
    }

    @Test
    @DisplayName("begins with the time that the day lies in, and covers each third of a month once")
    void whole() {
        for (LocalDate day = NOVEMBER; day.isBefore(NOVEMBER.plusYears(1)); day = day.plusDays(1)) {
            YearRound year = year(Place.unknown(), Container.Kind.UNKNOWN, day);
            Set<MonthThird> covered = new HashSet<>();
            for (Season season : year.seasons()) {
                MonthThird third = season.from();
                assertTrue(covered.add(third), day + " " + third);
                while (!third.equals(season.to())) {
                    third = third.plus(1);
                    assertTrue(covered.add(third), day + " " + third);
                }
            }
            assertEquals(MonthThird.IN_A_YEAR, covered.size());
            Season first = year.seasons().get(0);
            MonthThird third = first.from();
            while (!third.equals(MonthThird.of(day))) {
                assertFalse(third.equals(first.to()), day + " lies outside " + first);
                third = third.plus(1);
            }
        }
    }

    @Test
    @DisplayName("has every time of the year where the winter is cold, in order")
    void cold() {
        YearRound year = year(Place.unknown(), Container.Kind.UNKNOWN, NOVEMBER);
        assertEquals(LocalYear.Known.ASSUMED, year.known());
        assertEquals(
                List.of(
                        TimeOfYear.BEFORE_FROST,
                        TimeOfYear.DEEP_WINTER,
                        TimeOfYear.THAW,
                        TimeOfYear.SPRING,
                        TimeOfYear.SUMMER,
                        TimeOfYear.AUTUMN),
                year.seasons().stream().map(Season::time).toList());
    }

    @Test
    @DisplayName("is one long summer where it is never cool")
    void warm() {
        Place place = new Place(
                OptionalDouble.empty(),
                Place.Climate.UNKNOWN,
                OptionalDouble.empty(),
                Collections.nCopies(12, 26.0),
                List.of());
        List<Season> seasons = year(place, Container.Kind.UNKNOWN, NOVEMBER).seasons();
        assertEquals(1, seasons.size());
        assertEquals(TimeOfYear.SUMMER, seasons.get(0).time());
        assertEquals(seasons.get(0).from(), seasons.get(0).to().plus(1), "a whole year, and not a day more");
    }

    @ParameterizedTest
    @EnumSource(Container.Kind.class)
    @DisplayName("has something to do for every kind of pile at every time")
    void something(Container.Kind kind) {
        for (Season season : year(Place.unknown(), kind, NOVEMBER).seasons()) {
            assertFalse(season.jobs().isEmpty(), kind + " " + season.time());
        }
    }

    /** What one kind of pile is told must not be told to another that cannot do it. */
    @Test
    @DisplayName("tells each kind its own: a bin that is fed, a heap, a box of worms")
    void kinds() {
        assertTrue(jobs(Container.Kind.FED_BIN, TimeOfYear.DEEP_WINTER).contains("winter-fed-bin"));
        assertFalse(jobs(Container.Kind.FED_BIN, TimeOfYear.DEEP_WINTER).contains("winter-leave-shut"));
        assertTrue(jobs(Container.Kind.OPEN_HEAP, TimeOfYear.AUTUMN).contains("autumn-build"));
        assertFalse(jobs(Container.Kind.TUMBLER, TimeOfYear.AUTUMN).contains("autumn-build"));
        assertTrue(jobs(Container.Kind.WORM_BIN, TimeOfYear.DEEP_WINTER).contains("winter-worms"));
        assertFalse(jobs(Container.Kind.BOKASHI, TimeOfYear.DEEP_WINTER).contains("winter-snow"));
        assertFalse(jobs(Container.Kind.WORM_BIN, TimeOfYear.SPRING).contains("spring-scraps"));
        assertFalse(jobs(Container.Kind.WORM_BIN, TimeOfYear.BEFORE_FROST).contains("frost-last-turn"));
    }

    /** What comes out of a dry toilet goes on no bed for food, at no time (WHO 2006 and common practice). */
    @Test
    @DisplayName("sends nothing from a dry toilet to beds for food")
    void toilet() {
        List<SeasonJob> toilet = TestPile.KNOWLEDGE.season().values().stream()
                .filter(j -> j.keeps() == SeasonJob.Keeps.TOILET)
                .toList();
        assertTrue(toilet.stream().anyMatch(j -> j.job().contains("Never on food beds")));
        assertTrue(toilet.stream().anyMatch(j -> j.job().contains("two years")));
    }
}
