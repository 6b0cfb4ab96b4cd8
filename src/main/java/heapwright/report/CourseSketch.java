package heapwright.report;

import heapwright.advice.winter.Factor;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Draws a course in letters, at most 80 wide, with what held it back as a strip underneath. */
final class CourseSketch {

    private static final int WIDEST = 64;
    private static final int STEP_C = 10;
    private static final char BAND = ':';
    private static final char OUTDOORS = '.';
    private static final char MEASURED = 'O';

    private final Words words;
    private final ModelWords model;

    CourseSketch(Words words) {
        this.words = words;
        this.model = new ModelWords(words);
    }

    /** The lines of the sketch, the legend last. */
    List<String> lines(CourseView view) {
        int width = Math.max(2, Math.min(WIDEST, view.days()));
        int top = (int) Math.ceil(view.highest() / STEP_C);
        int bottom = (int) Math.floor(view.lowest() / STEP_C);
        List<String> lines = new ArrayList<>();
        for (int row = top; row >= bottom; row--) {
            lines.add(row(view, row, width));
        }
        char[] marks = blank(width);
        view.marks().forEach(m -> marks[column(view, m.day(), width)] = m.kind() == CourseView.Kind.TURNED ? 'T' : '+');
        if (new String(marks).isBlank()) {
            lines.add(" ".repeat(8) + "+" + "-".repeat(width));
        } else {
            lines.add(label(words.text("sketch.done")) + "|" + new String(marks).stripTrailing());
        }
        lines.add(strip(view, width));
        lines.add(dates(view, width));
        lines.addAll(legend(view));
        return lines;
    }

    private static char[] blank(int width) {
        char[] all = new char[width];
        Arrays.fill(all, ' ');
        return all;
    }

    private String row(CourseView view, int row, int width) {
        char[] cells = blank(width);
        for (int column = 0; column < width; column++) {
            int day = day(view, column, width);
            if (row >= at(view.core().low()[day]) && row <= at(view.core().high()[day])) {
                cells[column] = BAND;
            }
            if (row == at(view.outdoor()[day])) {
                cells[column] = OUTDOORS;
            }
        }
        for (CourseView.Point point : view.measured()) {
            if (row == at(point.celsius())) {
                cells[column(view, point.day(), width)] = MEASURED;
            }
        }
        String scale = words.figures().temperature((double) row * STEP_C);
        return label(scale) + "|" + new String(cells).stripTrailing();
    }

    private static String label(String text) {
        return " ".repeat(Math.max(0, 7 - text.length())) + text + " ";
    }

    private static int at(double celsius) {
        return (int) Math.round(celsius / STEP_C);
    }

    private static int day(CourseView view, int column, int width) {
        return (int) Math.round((double) column * (view.days() - 1) / (width - 1));
    }

    private static int column(CourseView view, int day, int width) {
        return view.days() == 1
                ? 0
                : (int) Math.round((double) Math.min(day, view.days() - 1) * (width - 1) / (view.days() - 1));
    }

    private String strip(CourseView view, int width) {
        StringBuilder strip = new StringBuilder();
        for (int column = 0; column < width; column++) {
            strip.append(letter(view.factor(day(view, column, width))));
        }
        return label(words.text("sketch.held")) + "|" + strip;
    }

    private char letter(Factor factor) {
        return model.letter(factor).charAt(0);
    }

    private String dates(CourseView view, int width) {
        DateTimeFormatter form =
                DateTimeFormatter.ofPattern("d MMM yyyy", words.catalogue().locale());
        LocalDate last = view.first().plusDays(view.days() - 1L);
        String from = view.first().format(form);
        String to = last.format(form);
        return " ".repeat(9) + from + " ".repeat(Math.max(1, width - from.length() - to.length())) + to;
    }

    private List<String> legend(CourseView view) {
        List<String> lines = new ArrayList<>();
        lines.add(words.text(view.measured().isEmpty() ? "sketch.legend-ahead" : "sketch.legend"));
        lines.add(model.letters(view.strip()));
        return lines;
    }
}
