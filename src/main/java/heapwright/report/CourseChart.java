package heapwright.report;

import heapwright.advice.winter.Factor;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Draws a course as a picture: expected band, measured core, outdoors, what was done, and what held it back as a strip
 * underneath. It says everything in shapes and greys as well, needs nothing from outside, and has a title and a
 * description for screen readers.
 */
public final class CourseChart {

    private static final int WIDTH = 800;
    private static final int HEIGHT = 420;
    private static final int LEFT = 60;
    private static final int RIGHT = 20;
    private static final int TOP = 30;
    private static final int BOTTOM = 290;
    private static final int STRIP = 315;
    private static final int STRIP_HIGH = 26;
    private static final int STEP_C = 10;

    private final Words words;
    private final ModelWords model;

    public CourseChart(Words words) {
        this.words = words;
        this.model = new ModelWords(words);
    }

    /**
     * The picture.
     *
     * @param title what is drawn
     * @param description the same in words
     */
    public String write(CourseView view, String title, String description) {
        double top = STEP_C * Math.ceil(view.highest() / STEP_C);
        double bottom = STEP_C * Math.floor(view.lowest() / STEP_C);
        StringBuilder out = new StringBuilder();
        line(
                out,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
                        + " aria-labelledby=\"chart-title chart-desc\" font-family=\"sans-serif\" font-size=\"12\">",
                WIDTH,
                HEIGHT);
        line(out, "<title id=\"chart-title\">%s</title>", escape(title));
        line(out, "<desc id=\"chart-desc\">%s</desc>", escape(description));
        line(out, "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", WIDTH, HEIGHT);
        grid(out, view, top, bottom);
        band(out, view, top, bottom);
        course(out, view, view.core().likely(), top, bottom, "stroke=\"#444444\" stroke-width=\"2\"");
        course(
                out,
                view,
                view.outdoor(),
                top,
                bottom,
                "stroke=\"#000000\" stroke-width=\"1\" stroke-dasharray=\"2 3\"");
        marks(out, view);
        for (CourseView.Point point : view.measured()) {
            line(
                    out,
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" fill=\"#ffffff\" stroke=\"#000000\" stroke-width=\"2\"/>",
                    x(view, point.day()),
                    y(point.celsius(), top, bottom));
        }
        strip(out, view);
        legend(out, view);
        out.append("</svg>\n");
        return out.toString();
    }

    private static void line(StringBuilder out, String form, Object... places) {
        out.append(String.format(Locale.ROOT, form, places)).append('\n');
    }

    private void grid(StringBuilder out, CourseView view, double top, double bottom) {
        for (double c = bottom; c <= top; c += STEP_C) {
            double y = y(c, top, bottom);
            line(
                    out,
                    "<line x1=\"%d\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"1\"/>",
                    LEFT,
                    y,
                    WIDTH - RIGHT,
                    y,
                    c == 0 ? "#777777" : "#dddddd");
            line(
                    out,
                    "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
                    LEFT - 6,
                    y + 4,
                    escape(words.figures().temperature(c)));
        }
        DateTimeFormatter form =
                DateTimeFormatter.ofPattern("d MMM", words.catalogue().locale());
        int steps = Math.min(6, Math.max(1, view.days() - 1));
        for (int i = 0; i <= steps; i++) {
            int day = (int) Math.round((double) i * (view.days() - 1) / steps);
            LocalDate date = view.first().plusDays(day);
            line(
                    out,
                    "<text x=\"%.1f\" y=\"%d\" text-anchor=\"%s\">%s</text>",
                    x(view, day),
                    BOTTOM + 18,
                    i == 0 ? "start" : i == steps ? "end" : "middle",
                    escape(date.format(form)));
        }
    }

    private static void band(StringBuilder out, CourseView view, double top, double bottom) {
        StringBuilder points = new StringBuilder();
        for (int d = 0; d < view.days(); d++) {
            point(points, x(view, d), y(view.core().high()[d], top, bottom));
        }
        for (int d = view.days() - 1; d >= 0; d--) {
            point(points, x(view, d), y(view.core().low()[d], top, bottom));
        }
        line(
                out,
                "<polygon points=\"%s\" fill=\"#cccccc\" fill-opacity=\"0.7\"/>",
                points.toString().strip());
    }

    private static void course(
            StringBuilder out, CourseView view, double[] course, double top, double bottom, String stroke) {
        StringBuilder points = new StringBuilder();
        for (int d = 0; d < view.days(); d++) {
            point(points, x(view, d), y(course[d], top, bottom));
        }
        line(
                out,
                "<polyline points=\"%s\" fill=\"none\" %s/>",
                points.toString().strip(),
                stroke);
    }

    private static void point(StringBuilder points, double x, double y) {
        points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x, y));
    }

    private void marks(StringBuilder out, CourseView view) {
        for (CourseView.Mark mark : view.marks()) {
            double x = x(view, mark.day());
            boolean turned = mark.kind() == CourseView.Kind.TURNED;
            line(
                    out,
                    "<line x1=\"%.1f\" y1=\"%d\" x2=\"%.1f\" y2=\"%d\" stroke=\"#000000\" stroke-width=\"1\"%s/>",
                    x,
                    TOP,
                    x,
                    BOTTOM,
                    turned ? "" : " stroke-dasharray=\"6 4\"");
            line(out, "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>", x, TOP - 6, turned ? "T" : "+");
        }
    }

    private void strip(StringBuilder out, CourseView view) {
        for (CourseView.Held held : view.strip()) {
            double from = x(view, held.from() - 0.5);
            double to = x(view, held.to() + 0.5);
            String grey = grey(held.factor());
            line(
                    out,
                    "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\" fill=\"%s\" stroke=\"#000000\""
                            + " stroke-width=\"0.5\"/>",
                    from,
                    STRIP,
                    Math.max(0.5, to - from),
                    STRIP_HIGH,
                    grey);
            if (to - from > 14) {
                line(
                        out,
                        "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\" fill=\"%s\">%s</text>",
                        (from + to) / 2,
                        STRIP + 18,
                        dark(held.factor()) ? "#ffffff" : "#000000",
                        escape(model.letter(held.factor())));
            }
        }
    }

    private void legend(StringBuilder out, CourseView view) {
        text(out, STRIP + 48, model.letters(view.strip()));
        text(out, STRIP + 68, words.text(view.measured().isEmpty() ? "chart.legend-ahead" : "chart.legend"));
        text(out, STRIP + 88, words.text("model.aid-short"));
    }

    private static void text(StringBuilder out, int y, String said) {
        line(out, "<text x=\"%d\" y=\"%d\">%s</text>", LEFT, y, escape(said));
    }

    private static boolean dark(Factor factor) {
        return factor.ordinal() % 2 == 1 && factor != Factor.NONE;
    }

    /** Neighbours in the list of factors differ clearly. */
    private static String grey(Factor factor) {
        if (factor == Factor.NONE) {
            return "#ffffff";
        }
        int shade = dark(factor) ? 0x30 + 8 * factor.ordinal() : 0x90 + 8 * factor.ordinal();
        return String.format(Locale.ROOT, "#%02x%02x%02x", shade, shade, shade);
    }

    private static double x(CourseView view, double day) {
        double span = Math.max(1, view.days() - 1);
        double x = LEFT + day / span * (WIDTH - LEFT - RIGHT);
        return Math.max(LEFT, Math.min(WIDTH - RIGHT, x));
    }

    private static double y(double celsius, double top, double bottom) {
        return BOTTOM - (celsius - bottom) / (top - bottom) * (BOTTOM - TOP);
    }

    private static String escape(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> {
                    if (c >= 0x20 && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF)) {
                        safe.appendCodePoint(c);
                    }
                }
            }
        });
        return safe.toString();
    }
}
