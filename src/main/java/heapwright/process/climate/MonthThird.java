package heapwright.process.climate;

import java.time.LocalDate;
import java.time.Month;

/**
 * A third of a month, as people tell times of the year: early, mid or late.
 *
 * @param month the month
 * @param third 0 to the 10th, 1 to the 20th, 2 from then on
 */
public record MonthThird(Month month, int third) {

    /** How many there are in a year. */
    public static final int IN_A_YEAR = 36;

    private static final int IN_A_MONTH = 3;
    private static final int DAYS = 10;

    /** Any year that is no leap year: only month and day count. */
    private static final int YEAR = 2001;

    public MonthThird {
        if (third < 0 || third >= IN_A_MONTH) {
            throw new IllegalArgumentException("a third of a month is 0, 1 or 2, but is " + third);
        }
    }

    /** The third that a day lies in. */
    public static MonthThird of(LocalDate day) {
        return new MonthThird(day.getMonth(), Math.min((day.getDayOfMonth() - 1) / DAYS, IN_A_MONTH - 1));
    }

    /** The one so many thirds later, round the year. */
    public MonthThird plus(int thirds) {
        int at = Math.floorMod((month.getValue() - 1) * IN_A_MONTH + third + thirds, IN_A_YEAR);
        return new MonthThird(Month.of(at / IN_A_MONTH + 1), at % IN_A_MONTH);
    }

    /** A day in its middle. */
    LocalDate middle() {
        return LocalDate.of(YEAR, month, third * DAYS + DAYS / 2);
    }
}
