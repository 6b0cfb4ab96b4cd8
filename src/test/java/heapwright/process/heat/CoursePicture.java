package heapwright.process.heat;

import heapwright.process.heat.PublishedCourse.Half;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A published course drawn beside the model's: the band and the likely core, the air, what was done, and what the source
 * says. All is told by shape and grey, so that it needs no colour; a title and a description say it in words.
 */
public final class CoursePicture {

    /**
     * Eight courses of the half that constants may be set on, so that the other half stays unseen: those with the most
     * readings and of different kinds. The last is one that the model is known to miss.
     */
    public static final List<String> SHOWN = List.of(
            "coarse-green-heap-unturned",
            "manure-and-leaves-after-turning",
            "manure-and-prunings-turned",
            "restacked-manure-in-february",
            "two-hundred-litre-bin-fed-daily",
            "insulated-bin-feed-stops",
            "leafy-windrow-under-tarp",
            "wire-ring-of-a-yard-in-deep-cold");

    private static final int WIDTH = 640;
    private static final int HEIGHT = 340;
    private static final int LEFT = 56;
    private static final int RIGHT = 620;
    private static final int TOP = 20;
    private static final int BOTTOM = 270;
    private static final int COLDEST = -30;
    private static final int HOTTEST = 80;
    private static final int GRID_C = 10;
    /** A span of one figure is drawn at least so thick, px. */
    private static final int LEAST_PX = 4;

    private final PublishedCourse course;
    private final Bands core;
    private final double[] air;
    private final List<Integer> done;
    private final int coldest;

    private CoursePicture(PublishedCourse course) {
        this.course = course;
        Ensemble ensemble = CourseRun.ensemble(course);
        this.core = ensemble.core();
        this.air = ensemble.bands(Day::outdoorC).likely();
        this.done = CourseRun.events(course).stream().map(Event::day).distinct().toList();
        double lowest = Math.min(least(air), least(core.low()));
        this.coldest = Math.max(COLDEST, (int) (GRID_C * Math.floor(Math.min(0, lowest) / GRID_C)));
    }

    /**
     * The picture of a course as SVG, coordinates in whole px.
     *
     * @throws IllegalArgumentException when there is no such course, or it is of the half that is kept out
     */
    public static String of(String id) {
        return new CoursePicture(course(id)).draw();
    }

    /** The same in a sentence, for those who do not see it. */
    public static String words(String id) {
        PublishedCourse course = course(id);
        List<CourseRun.Scored> figures = CourseRun.of(course);
        return "%s, %s m³, %s: the band of the model meets %d of %d published figures."
                .formatted(
                        title(course),
                        String.format(Locale.ROOT, course.volumeM3() < 0.1 ? "%.2f" : "%.1f", course.volumeM3()),
                        course.source().key(),
                        figures.stream().filter(CourseRun.Scored::overlaps).count(),
                        figures.size());
    }

    private static PublishedCourse course(String id) {
        PublishedCourse course = PublishedCourses.all().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no course " + id));
        if (course.half() != Half.SET) {
            throw new IllegalArgumentException(id + " is kept out");
        }
        return course;
    }

    private static String title(PublishedCourse course) {
        String words = course.id().replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private String draw() {
        StringBuilder out = new StringBuilder();
        line(
                out,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" font-family=\"sans-serif\""
                        + " font-size=\"13\">",
                WIDTH,
                HEIGHT);
        line(out, "<title>%s</title>", title(course));
        line(out, "<desc>%s Black: published. Grey: the model.</desc>", words(course.id()));
        line(out, "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", WIDTH, HEIGHT);
        grid(out);
        line(out, "<polygon points=\"%s\" fill=\"#d0d0d0\"/>", path(core.low()) + " " + backwards(core.high()));
        line(out, "<polyline points=\"%s\" fill=\"none\" stroke=\"#707070\" stroke-width=\"2\"/>", path(core.likely()));
        line(out, "<polyline points=\"%s\" fill=\"none\" stroke=\"#707070\" stroke-dasharray=\"2 4\"/>", path(air));
        for (int day : done) {
            line(out, "<path d=\"M%d %dv-8\" stroke=\"#000000\" stroke-width=\"2\"/>", x(day), BOTTOM);
        }
        course.figures().forEach(f -> published(out, f));
        legend(out);
        out.append("</svg>\n");
        return out.toString();
    }

    private void grid(StringBuilder out) {
        for (int c = coldest; c <= HOTTEST; c += GRID_C) {
            String grey = c == 0 ? "#808080" : "#e4e4e4";
            line(out, "<path d=\"M%d %dH%d\" stroke=\"%s\"/>", LEFT, y(c), RIGHT, grey);
            line(
                    out,
                    "<text x=\"%d\" y=\"%d\" text-anchor=\"end\">%s °C</text>",
                    LEFT - 6,
                    y(c) + 4,
                    String.valueOf(c).replace('-', '−'));
        }
        int step = Math.max(1, (int) Math.ceil(course.days() / 6.0));
        for (int day = 0; day <= course.days(); day += step) {
            String words = day == 0 ? "day 0" : String.valueOf(day);
            line(out, "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">%s</text>", x(day), BOTTOM + 18, words);
        }
    }

    /** A figure as the box of what fits the source: a temperature of a day, of a stretch, or the day of a temperature. */
    private void published(StringBuilder out, PublishedFigure f) {
        switch (f.what()) {
            case CORE_ON_DAY -> box(out, x(f.day()) - 3, x(f.day()) + 3, y(f.most()), y(f.least()), "#000000");
            case LOWEST_CORE, HIGHEST_CORE -> box(out, x(f.day()), x(f.to()), y(f.most()), y(f.least()), "none");
            case PEAK -> box(out, LEFT, RIGHT, y(f.most()), y(f.least()), "none");
            case DAY_AT -> box(out, x(f.least()), x(f.most()), y(f.celsius()) - 3, y(f.celsius()) + 3, "#000000");
            default -> {
                // Shares left and days over a temperature are no points of a course of temperatures.
            }
        }
    }

    private void box(StringBuilder out, int left, int right, int top, int bottom, String fill) {
        line(
                out,
                "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\" stroke=\"#000000\" stroke-width=\"2\"%s/>",
                left,
                top,
                Math.max(LEAST_PX, right - left),
                Math.max(LEAST_PX, bottom - top),
                fill,
                fill.equals("none") ? " stroke-dasharray=\"6 4\"" : "");
    }

    private void legend(StringBuilder out) {
        int y = BOTTOM + 52;
        line(out, "<rect x=\"56\" y=\"%d\" width=\"24\" height=\"12\" fill=\"#d0d0d0\"/>", y - 10);
        line(out, "<path d=\"M56 %dh24\" stroke=\"#707070\" stroke-width=\"2\"/>", y - 4);
        line(out, "<text x=\"86\" y=\"%d\">model: core</text>", y);
        line(out, "<path d=\"M176 %dh24\" stroke=\"#707070\" stroke-dasharray=\"2 4\"/>", y - 4);
        line(out, "<text x=\"206\" y=\"%d\">air</text>", y);
        line(out, "<rect x=\"246\" y=\"%d\" width=\"6\" height=\"12\"/>", y - 10);
        line(out, "<text x=\"258\" y=\"%d\">published</text>", y);
        line(
                out,
                "<rect x=\"336\" y=\"%d\" width=\"24\" height=\"12\" fill=\"none\" stroke=\"#000000\""
                        + " stroke-width=\"2\" stroke-dasharray=\"6 4\"/>",
                y - 10);
        line(out, "<text x=\"366\" y=\"%d\">peak or stretch</text>", y);
        line(out, "<path d=\"M480 %dv-8\" stroke=\"#000000\" stroke-width=\"2\"/>", y - 1);
        line(out, "<text x=\"488\" y=\"%d\">something done</text>", y);
    }

    private String path(double[] celsius) {
        StringBuilder points = new StringBuilder();
        for (int d = 0; d < celsius.length; d++) {
            points.append(x(d + 1)).append(',').append(y(celsius[d])).append(' ');
        }
        return points.toString().strip();
    }

    private String backwards(double[] celsius) {
        List<String> points = List.of(path(celsius).split(" "));
        return java.util.stream.IntStream.range(0, points.size())
                .mapToObj(i -> points.get(points.size() - 1 - i))
                .collect(Collectors.joining(" "));
    }

    private int x(double day) {
        double within = Math.max(0, Math.min(course.days(), day));
        return (int) Math.round(LEFT + (RIGHT - LEFT) * within / course.days());
    }

    private int y(double celsius) {
        double within = Math.max(coldest, Math.min(HOTTEST, celsius));
        return (int) Math.round(BOTTOM - (BOTTOM - TOP) * (within - coldest) / (HOTTEST - coldest));
    }

    private static double least(double[] values) {
        return java.util.Arrays.stream(values).min().orElse(0);
    }

    private static void line(StringBuilder out, String form, Object... places) {
        out.append(String.format(Locale.ROOT, form, places)).append('\n');
    }
}
