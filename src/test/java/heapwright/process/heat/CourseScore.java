package heapwright.process.heat;

import heapwright.process.heat.CourseRun.Scored;
import heapwright.process.heat.PublishedCourse.Half;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How the model does on one half of the published courses.
 *
 * @param figures all figures of the half beside the model's
 */
record CourseScore(List<Scored> figures) {

    CourseScore {
        figures = List.copyOf(figures);
    }

    /** Classes of size, as built; of what is fed later half counts (judgement). */
    enum Size {
        SMALL("under 0.3 m³", 0.3),
        MIDDLE("0.3–1 m³", 1),
        LARGE("1–3 m³", 3),
        FARM("above 3 m³", Double.POSITIVE_INFINITY);

        private final String words;
        private final double below;

        Size(String words, double below) {
            this.words = words;
            this.below = below;
        }

        String words() {
            return words;
        }

        static Size of(PublishedCourse course) {
            double fed = CourseRun.events(course).stream()
                    .filter(Event.Add.class::isInstance)
                    .mapToDouble(e -> ((Event.Add) e).matter().volumeM3())
                    .sum();
            double size = course.volumeM3() + fed / 2;
            for (Size one : values()) {
                if (size < one.below) {
                    return one;
                }
            }
            return FARM;
        }
    }

    /**
     * Figures of one class of size.
     *
     * @param temperatures how many temperatures
     * @param biasK how much warmer the likely course is than published, mean, K
     */
    record Bias(int temperatures, double biasK) {}

    /** Runs all courses on the model as it stands. */
    static Map<Half, CourseScore> today() {
        Map<Half, CourseScore> scores = new EnumMap<>(Half.class);
        List<PublishedCourse> all = PublishedCourses.all();
        for (Half half : Half.values()) {
            scores.put(
                    half,
                    new CourseScore(all.stream()
                            .filter(c -> c.half() == half)
                            .flatMap(c -> CourseRun.of(c).stream())
                            .toList()));
        }
        return scores;
    }

    /** Figures whose published span the band from 10 to 90 in 100 meets. */
    long overlapping() {
        return figures.stream().filter(Scored::overlaps).count();
    }

    /** Figures with a span of two ends. */
    long withMiddle() {
        return figures.stream().filter(s -> s.figure().middle().isPresent()).count();
    }

    /** Figures the middle of whose span lies in the band. */
    long holdingMiddle() {
        return figures.stream().filter(Scored::holdsMiddle).count();
    }

    /** Mean distance of the likely course from the middle of the published span, temperatures only, K. */
    double missK() {
        return temperatures().stream()
                .mapToDouble(s -> Math.abs(s.off()))
                .average()
                .orElseThrow();
    }

    /** The same from the nearer end of the span; 0 within it. */
    double outsideK() {
        return temperatures().stream()
                .mapToDouble(s -> Math.abs(s.miss()))
                .average()
                .orElseThrow();
    }

    /** How many of the figures are temperatures. */
    int temperatureCount() {
        return temperatures().size();
    }

    /** How much too warm the likely course is, by size. */
    Map<Size, Bias> bias() {
        Map<Size, Bias> all = new EnumMap<>(Size.class);
        for (Size size : Size.values()) {
            List<Scored> own = temperatures().stream()
                    .filter(s -> Size.of(s.course()) == size)
                    .toList();
            all.put(
                    size,
                    new Bias(
                            own.size(),
                            own.stream().mapToDouble(Scored::off).average().orElse(Double.NaN)));
        }
        return all;
    }

    private List<Scored> temperatures() {
        return figures.stream().filter(s -> s.figure().what().isTemperature()).toList();
    }
}
