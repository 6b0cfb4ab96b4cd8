package heapwright.process.heat;

import heapwright.process.heat.CourseRun.Scored;
import heapwright.process.heat.CourseScore.Bias;
import heapwright.process.heat.PublishedCourse.Half;
import heapwright.process.heat.PublishedCourse.Source;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What docs/method/heat.md says of the published courses. Of the half kept out it gives totals and sources alone. */
public final class CoursePaper {
    private CoursePaper() {}

    /** The made part of the section. */
    public static String text() {
        Map<Half, CourseScore> today = CourseScore.today();
        List<PublishedCourse> all = PublishedCourses.all();
        return totals(today, all)
                + "\nMean bias of the likely course by size, K (number of temperatures):\n\n"
                + biases(today)
                + "\n`set`, figure by figure. Days count from the day of building.\n\n"
                + details(today.get(Half.SET))
                + "\nSources of `set`:\n\n"
                + sources(all, Half.SET)
                + "\nSources of `kept`:\n\n"
                + sources(all, Half.KEPT);
    }

    private static String totals(Map<Half, CourseScore> today, List<PublishedCourse> all) {
        StringBuilder table = new StringBuilder("| | `set` | `kept` |\n|---|---|---|\n");
        row(table, "sources", h -> "" + named(all, h).size());
        row(table, "courses", h -> "" + all.stream().filter(c -> c.half() == h).count());
        row(table, "figures", h -> "" + today.get(h).figures().size());
        row(
                table,
                "of these from memory",
                h -> ""
                        + today.get(h).figures().stream()
                                .filter(s -> s.course().source().fromMemory())
                                .count());
        row(
                table,
                "of these from diaries and trade pages",
                h -> ""
                        + today.get(h).figures().stream()
                                .filter(s -> Set.of("diary", "trade")
                                        .contains(s.course().source().type()))
                                .count());
        row(
                table,
                "spans the band meets",
                h -> today.get(h).overlapping() + " of "
                        + today.get(h).figures().size());
        row(
                table,
                "middles the band holds",
                h -> today.get(h).holdingMiddle() + " of " + today.get(h).withMiddle());
        row(table, "temperatures", h -> "" + today.get(h).temperatureCount());
        row(
                table,
                "mean miss of the likely course from the middle, K",
                h -> shown(today.get(h).missK(), 1));
        row(
                table,
                "the same from the nearer end of the span, K",
                h -> shown(today.get(h).outsideK(), 1));
        return table.toString();
    }

    private static void row(StringBuilder table, String what, java.util.function.Function<Half, String> cell) {
        table.append("| ")
                .append(what)
                .append(" | ")
                .append(cell.apply(Half.SET))
                .append(" | ")
                .append(cell.apply(Half.KEPT))
                .append(" |\n");
    }

    private static String biases(Map<Half, CourseScore> today) {
        StringBuilder table = new StringBuilder("| size | `set` | `kept` |\n|---|---|---|\n");
        for (CourseScore.Size size : CourseScore.Size.values()) {
            row(table, size.words(), h -> {
                Bias bias = today.get(h).bias().get(size);
                return bias.temperatures() == 0
                        ? "–"
                        : (bias.biasK() > 0 ? "+" : "") + shown(bias.biasK(), 1) + " (" + bias.temperatures() + ")";
            });
        }
        return table.toString();
    }

    private static String details(CourseScore set) {
        StringBuilder table = new StringBuilder(
                "| course | kind | source | m³ | figure | published | model 10 – 50 – 90 | meets |\n|---|---|---|---|---|---|---|---|\n");
        for (Scored s : set.figures()) {
            PublishedCourse c = s.course();
            PublishedFigure f = s.figure();
            int digits = f.unit().equals("share") ? 2 : 0;
            table.append("| ")
                    .append(c.id().replace('-', ' '))
                    .append(" | ")
                    .append(c.kind().words())
                    .append(" | ")
                    .append(c.source().key())
                    .append(" | ")
                    .append(volume(c.volumeM3()))
                    .append(" | ")
                    .append(f.words())
                    .append(" | ")
                    .append(span(f, digits))
                    .append(" | ")
                    .append(shown(s.model().low(), digits))
                    .append(" – ")
                    .append(shown(s.model().likely(), digits))
                    .append(" – ")
                    .append(shown(s.model().high(), digits))
                    .append(" | ")
                    .append(s.overlaps() ? "yes" : "**no**")
                    .append(" |\n");
        }
        return table.toString();
    }

    private static String volume(double cubicMetres) {
        return shown(cubicMetres, cubicMetres < 0.1 ? 3 : cubicMetres < 10 ? 1 : 0);
    }

    private static String span(PublishedFigure f, int digits) {
        if (f.low() == null) {
            return "≤ " + shown(f.high(), digits);
        }
        if (f.high() == null) {
            return "≥ " + shown(f.low(), digits);
        }
        String low = shown(f.low(), digits);
        String high = shown(f.high(), digits);
        return low.equals(high) ? low : low + "–" + high;
    }

    private static String sources(List<PublishedCourse> all, Half half) {
        return named(all, half).stream()
                .map(s -> "- " + s.key() + ": " + s.by() + (s.year() == null ? "" : ", " + s.year()) + ", " + s.title()
                        + ", " + s.address() + " (" + s.type() + ", " + s.known() + ")\n")
                .collect(Collectors.joining());
    }

    private static Set<Source> named(List<PublishedCourse> all, Half half) {
        return all.stream()
                .filter(c -> c.half() == half)
                .map(PublishedCourse::source)
                .sorted(java.util.Comparator.comparing(Source::key))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static String shown(double figure, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", figure).replace('-', '−');
    }
}
