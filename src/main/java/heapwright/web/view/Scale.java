package heapwright.web.view;

import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.process.heat.Bands;
import heapwright.report.Words;
import heapwright.web.view.CourseView.Level;
import heapwright.web.view.CourseView.Tick;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Places days and temperatures in the box of a chart. */
final class Scale {

    static final int WIDTH = 460;
    static final int HEIGHT = 340;
    static final int LEFT = 56;
    static final int RIGHT = WIDTH - 20;
    static final int TOP = 14;
    static final int FLOOR = 242;

    /** The shortest span that is drawn, days: a pile of two days would else look like a whole course. */
    private static final int SHORTEST = 14;

    private static final int[] DAY_STEPS = {1, 2, 7, 14, 28, 56, 112};
    private static final int MOST_TICKS = 5;
    private static final int STEP_C = 10;
    private static final int LOW_C = -10;
    private static final int HIGH_C = 50;

    private final LocalDate first;
    private final long days;
    private final int lowC;
    private final int highC;

    /**
     * A scale from one day to another.
     *
     * @param lowest lowest temperature that must have a place, °C
     * @param highest highest, °C
     */
    Scale(LocalDate first, LocalDate last, double lowest, double highest) {
        this.first = first;
        days = Math.max(SHORTEST, ChronoUnit.DAYS.between(first, last));
        lowC = Math.min(LOW_C, down(lowest));
        highC = -down(-highest);
    }

    /** A scale for the record of a pile, and the band where a healthy pile of the kind would lie. */
    static Scale of(Pile pile, Optional<Bands> band) {
        LocalDate told =
                band.map(b -> pile.built().plusDays(b.high().length - 1L)).orElse(pile.asOf());
        LocalDate last = Stream.concat(
                        Stream.of(pile.asOf(), told), pile.log().stream().map(Entry::date))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        double[] all = pile.log().stream()
                .flatMapToDouble(
                        e -> DoubleStream.concat(e.measured().coreC().stream(), e.measured().outdoorC().stream()))
                .toArray();
        double bandHigh =
                band.map(b -> Arrays.stream(b.high()).max().orElse(HIGH_C)).orElse((double) HIGH_C);
        return new Scale(
                pile.built(),
                last,
                DoubleStream.of(all).min().orElse(LOW_C),
                Math.max(bandHigh, DoubleStream.of(all).max().orElse(HIGH_C)));
    }

    private static int down(double celsius) {
        return (int) Math.floor(celsius / STEP_C) * STEP_C;
    }

    String x(LocalDate day) {
        double share = Math.max(0, (double) ChronoUnit.DAYS.between(first, day) / days);
        return place(LEFT + share * (RIGHT - LEFT));
    }

    String y(double celsius) {
        return place(FLOOR - (celsius - lowC) / (highC - lowC) * (FLOOR - TOP));
    }

    /** A figure a day as the points of a line. */
    String line(double[] course, LocalDate from) {
        return IntStream.range(0, course.length)
                .mapToObj(d -> point(from.plusDays(d), course[d]))
                .collect(Collectors.joining(" "));
    }

    /** The outline of a band: along its upper edge, then back along the lower. */
    String band(Bands bands, LocalDate from) {
        int all = bands.low().length;
        return line(bands.high(), from) + " "
                + IntStream.range(0, all)
                        .map(d -> all - 1 - d)
                        .mapToObj(d -> point(from.plusDays(d), bands.low()[d]))
                        .collect(Collectors.joining(" "));
    }

    private String point(LocalDate date, double celsius) {
        return x(date) + "," + y(celsius);
    }

    /** The lines across with their temperatures. */
    List<Level> levels(Words words) {
        List<Level> levels = new ArrayList<>();
        for (int c = lowC; c <= highC; c += STEP_C) {
            levels.add(new Level(y(c), words.figures().temperature(c)));
        }
        return levels;
    }

    /** The days marked below, written in a form. */
    List<Tick> ticks(DateTimeFormatter form) {
        return tickDays().stream().map(d -> new Tick(x(d), d.format(form))).toList();
    }

    private List<LocalDate> tickDays() {
        int step = DAY_STEPS[0];
        for (int wider : DAY_STEPS) {
            step = wider;
            if (days / step < MOST_TICKS) {
                break;
            }
        }
        List<LocalDate> ticks = new ArrayList<>();
        for (long day = 0; day <= days; day += step) {
            ticks.add(first.plusDays(day));
        }
        return ticks;
    }

    static String share(double part) {
        return String.format(Locale.ROOT, "%.2f", part);
    }

    static String place(double units) {
        return String.format(Locale.ROOT, "%.1f", units);
    }
}
