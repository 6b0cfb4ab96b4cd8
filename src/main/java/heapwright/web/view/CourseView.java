package heapwright.web.view;

import java.util.List;

/**
 * The course of a pile: a chart in the units of its own box, and the same as a table.
 *
 * @param title what it shows
 * @param description what is to be seen in it, in a sentence or two
 * @param width width of the box
 * @param height height of the box
 * @param left where the days begin
 * @param right where they end
 * @param levels lines across, with their temperatures
 * @param freezing height of the line of freezing
 * @param ticks days marked below
 * @param band where the core of a healthy pile of the kind would lie, as an outline; empty where the model cannot say
 * @param core the core as a line
 * @param outdoor outdoors as a line
 * @param coreDots where the core was measured
 * @param outdoorDots where outdoors was measured
 * @param events what was done, put in and smelt
 * @param strip what held it back most, stretch by stretch; empty where the model cannot say
 * @param rows the table
 */
public record CourseView(
        String title,
        String description,
        int width,
        int height,
        int left,
        int right,
        List<Level> levels,
        String freezing,
        List<Tick> ticks,
        String band,
        String core,
        String outdoor,
        List<Dot> coreDots,
        List<Dot> outdoorDots,
        List<Event> events,
        Strip strip,
        List<Row> rows) {

    /** The same with the last rows of the table only; the chart stays whole. */
    public CourseView latest(int most) {
        return new CourseView(
                title,
                description,
                width,
                height,
                left,
                right,
                levels,
                freezing,
                ticks,
                band,
                core,
                outdoor,
                coreDots,
                outdoorDots,
                events,
                strip,
                rows.subList(Math.max(0, rows.size() - most), rows.size()));
    }

    /** A line across at a height, with its temperature. */
    public record Level(String y, String text) {}

    /** A day marked below. */
    public record Tick(String x, String text) {}

    /** A measured point with what it says. */
    public record Dot(String x, String y, String says) {}

    /** Something that happened: its place, its kind, and what it was. */
    public record Event(String x, String y, Kind kind, String says) {}

    /**
     * A strip below the days.
     *
     * @param held its stretches
     * @param letters what their letters stand for
     */
    public record Strip(List<Held> held, String letters) {}

    /**
     * A stretch of a strip.
     *
     * @param x where it begins
     * @param y its upper edge
     * @param width how wide it is
     * @param height how high
     * @param shade how dark, 0 to 1
     * @param letter the factor's letter; empty where there is no room for it
     * @param says from when to when, and what
     */
    public record Held(String x, int y, String width, int height, String shade, String letter, String says) {
        /** The middle, for the letter. */
        public String middle() {
            return Scale.place(Double.parseDouble(x) + Double.parseDouble(width) / 2);
        }
    }

    /** A day of the record in words. */
    public record Row(
            String date, String day, long age, String core, String outdoor, String noticed, String done, String note) {}

    /** What can happen to a pile. */
    public enum Kind {
        TURNED,
        ADDED,
        SMELT
    }

    public boolean measured() {
        return !coreDots.isEmpty() || !outdoorDots.isEmpty();
    }
}
