package heapwright.web.view;

import heapwright.advice.winter.Factor;
import heapwright.report.CourseView.Held;
import heapwright.report.ModelWords;
import heapwright.report.Words;
import heapwright.web.view.CourseView.Strip;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** Draws what held a pile back as a strip below its days. A letter tells a factor; the shade only parts neighbours. */
final class Strips {

    /** Upper edge and height of the strip, and how much longer it makes the chart. */
    private static final int TOP = 338;

    private static final int HIGH = 22;
    static final int ROOM = 32;

    /** A letter needs so much width. */
    private static final double LETTER = 15;

    private static final double NARROWEST = 0.5;
    /** Letters must stand out on the darkest shade: ink on a card that is inked to a third has a contrast above 4.5. */
    private static final double DARKEST = 0.3;

    private final Words words;
    private final ModelWords model;
    private final DateTimeFormatter day;

    Strips(Words words) {
        this.words = words;
        this.model = new ModelWords(words);
        this.day = DateTimeFormatter.ofPattern("d MMM", words.catalogue().locale());
    }

    static Strip none() {
        return new Strip(List.of(), "");
    }

    Strip of(heapwright.report.CourseView course, Scale scale) {
        List<CourseView.Held> held = new ArrayList<>();
        for (Held one : course.strip()) {
            LocalDate from = course.first().plusDays(one.from());
            LocalDate to = course.first().plusDays(one.to());
            double left = Double.parseDouble(scale.x(from));
            double right = Math.min(Scale.RIGHT, Double.parseDouble(scale.x(to.plusDays(1))));
            if (right - left >= NARROWEST) {
                held.add(new CourseView.Held(
                        Scale.place(left),
                        TOP,
                        Scale.place(right - left),
                        HIGH,
                        shade(one.factor()),
                        right - left < LETTER ? "" : model.letter(one.factor()),
                        words.text(
                                "web.course.held",
                                from.format(day),
                                to.format(day),
                                words.word("factor", one.factor()))));
            }
        }
        return held.isEmpty() ? none() : new Strip(List.copyOf(held), model.letters(course.strip()));
    }

    private static String shade(Factor factor) {
        int last = Factor.values().length - 1;
        return factor == Factor.NONE ? "0" : Scale.share(DARKEST * (1 + factor.ordinal()) / (1 + last));
    }
}
