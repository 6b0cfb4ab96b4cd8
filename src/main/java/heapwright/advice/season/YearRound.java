package heapwright.advice.season;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.SeasonJob;
import heapwright.knowledge.TimeOfYear;
import heapwright.pile.Container;
import heapwright.pile.Place;
import heapwright.process.climate.LocalYear;
import heapwright.process.climate.MonthThird;
import heapwright.process.climate.TimesOfYear;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A year of one place, from a day on.
 *
 * @param known where the warmth of the months is known from
 * @param seasons its times, the one that is now first; where it never leaves one, that alone
 */
public record YearRound(LocalYear.Known known, List<Season> seasons) {
    public YearRound {
        seasons = List.copyOf(seasons);
    }

    /** The year of a place from a day on, with the jobs that a pile of this kind asks for. */
    public static YearRound of(Place place, Container.Kind kind, LocalDate day, Knowledge knowledge) {
        LocalYear year = LocalYear.of(place);
        TimesOfYear times = new TimesOfYear(year);
        List<Season> seasons = new ArrayList<>();
        MonthThird from = MonthThird.of(day);
        from = from.plus(-same(times, from, -1));
        for (int passed = 0; passed < MonthThird.IN_A_YEAR; ) {
            int more = same(times, from, 1);
            TimeOfYear time = times.of(from);
            seasons.add(new Season(time, from, from.plus(more), jobs(time, kind, knowledge)));
            passed += more + 1;
            from = from.plus(more + 1);
        }
        return new YearRound(year.known(), seasons);
    }

    /** How many thirds before or after one are of the same time of the year. */
    private static int same(TimesOfYear times, MonthThird third, int step) {
        int more = 0;
        while (more < MonthThird.IN_A_YEAR - 1 && times.of(third.plus(step * (more + 1))) == times.of(third)) {
            more++;
        }
        return more;
    }

    private static List<SeasonJob> jobs(TimeOfYear time, Container.Kind kind, Knowledge knowledge) {
        return knowledge.season().values().stream()
                .filter(job -> job.time() == time && job.fits(kind))
                .toList();
    }
}
