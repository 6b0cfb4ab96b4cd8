package heapwright.advice.ready;

import heapwright.knowledge.Limit;
import heapwright.knowledge.Wait;
import heapwright.process.climate.LocalYear;
import heapwright.process.use.PileDays;
import heapwright.process.use.Thaw;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The days that matter for compost.
 *
 * @param curingEnds end of its rest, where that lies ahead
 * @param walnutEnds end of the wait for walnut, where that lies ahead
 * @param manureEnds end of the least wait for horse manure, where that lies ahead
 * @param spreadFrom the first day when the ground is likely open
 * @param yearKnown where the outdoor temperatures behind that day come from
 * @param spreadOn the last day on which it was spread or dug in, where that was noted
 * @param harvestTouchingSoil first harvest of what touches the soil, from the day it was spread or else that first day; only
 *     for what counts as raw
 * @param harvestOthers the same of other crops
 */
public record ReadyDates(
        Optional<LocalDate> curingEnds,
        Optional<LocalDate> walnutEnds,
        Optional<LocalDate> manureEnds,
        LocalDate spreadFrom,
        LocalYear.Known yearKnown,
        Optional<LocalDate> spreadOn,
        Optional<LocalDate> harvestTouchingSoil,
        Optional<LocalDate> harvestOthers) {

    static ReadyDates of(PileDays days, LocalYear year, boolean raw) {
        LocalDate spread = Thaw.first(year, days.today(), days.limit(Limit.MEAN_COLD_SEASON));
        LocalDate dugIn = days.spreadOn().orElse(spread);
        Wait manure = year.mean(days.today()) >= days.limit(Limit.MEAN_COLD_SEASON)
                ? Wait.HORSE_MANURE_SUMMER
                : Wait.HORSE_MANURE_WINTER;
        return new ReadyDates(
                days.curingEnds(),
                Stream.of(Wait.WALNUT_WOOD, Wait.WALNUT_LEAVES)
                        .flatMap(w -> days.ends(w).stream())
                        .max(LocalDate::compareTo),
                days.ends(manure),
                spread,
                year.known(),
                days.spreadOn(),
                harvest(days, Wait.HARVEST_TOUCHING_SOIL, dugIn, raw),
                harvest(days, Wait.HARVEST_OTHERS, dugIn, raw));
    }

    private static Optional<LocalDate> harvest(PileDays days, Wait wait, LocalDate dugIn, boolean raw) {
        return raw ? Optional.of(dugIn.plusDays(days.wait(wait).days())) : Optional.empty();
    }
}
