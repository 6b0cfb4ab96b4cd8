package heapwright.process.use;

import heapwright.process.climate.LocalYear;
import java.time.LocalDate;

/** When the ground bears spreading, by a usual year of the place; the hand in the soil knows better. */
public final class Thaw {

    /** Below this mean of the day the ground freezes (judgement). */
    private static final double FREEZES_C = 0;

    private static final int DAYS = 366;

    /** From one day to the next the mean rises in spring; two weeks show it. */
    private static final int TREND_DAYS = 14;

    private Thaw() {}

    /**
     * The first day from a day on when the ground is likely open: in autumn while it does not freeze yet, in spring once
     * the mean of the day has reached that above which a month counts as mild.
     *
     * @param mildC that mean, °C
     */
    public static LocalDate first(LocalYear year, LocalDate day, double mildC) {
        boolean falling = year.mean(day.plusDays(TREND_DAYS)) < year.mean(day);
        if (year.mean(day) >= mildC || falling && year.mean(day) > FREEZES_C) {
            return day;
        }
        return day.datesUntil(day.plusDays(DAYS))
                .filter(d -> year.mean(d) >= mildC)
                .findFirst()
                .orElse(day);
    }
}
