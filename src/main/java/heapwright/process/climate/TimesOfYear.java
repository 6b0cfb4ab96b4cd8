package heapwright.process.climate;

import heapwright.knowledge.TimeOfYear;
import java.time.Month;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The time of the year that each third of a month is at a place, by its mean and by whether the year is getting warmer. The
 * marks are 0 and 10 °C, at which the weather services of Sweden and Finland let winter and summer begin, and 5 °C, at which
 * they let the growing season begin (published, seen as quoted).
 */
public final class TimesOfYear {

    private static final double FROST = 0;
    private static final double GROWTH = 5;
    private static final double WARM = 10;

    private final LocalYear year;
    private final MonthThird coldest;

    public TimesOfYear(LocalYear year) {
        this.year = year;
        MonthThird first = new MonthThird(Month.JANUARY, 0);
        this.coldest = IntStream.range(0, MonthThird.IN_A_YEAR)
                .mapToObj(first::plus)
                .min(Comparator.comparingDouble(this::mean))
                .orElseThrow();
    }

    /** The time of the year that a third of a month is. */
    public TimeOfYear of(MonthThird third) {
        double mean = mean(third);
        if (mean < FROST) {
            return TimeOfYear.DEEP_WINTER;
        }
        if (mean >= WARM) {
            return TimeOfYear.SUMMER;
        }
        if (warming(third)) {
            return mean < GROWTH ? TimeOfYear.THAW : TimeOfYear.SPRING;
        }
        return mean < GROWTH ? TimeOfYear.BEFORE_FROST : TimeOfYear.AUTUMN;
    }

    private double mean(MonthThird third) {
        return year.mean(third.middle());
    }

    /** In the half year after the coldest days. */
    private boolean warming(MonthThird third) {
        return IntStream.range(0, MonthThird.IN_A_YEAR / 2)
                .anyMatch(i -> coldest.plus(i).equals(third));
    }
}
