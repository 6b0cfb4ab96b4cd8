package heapwright.web.view;

import heapwright.web.view.CourseView.Dot;
import heapwright.web.view.CourseView.Level;
import heapwright.web.view.CourseView.Tick;
import java.util.List;
import java.util.Optional;

/**
 * Steps to tick, and the course ahead with and without them.
 *
 * @param steps the steps that the model can try
 * @param others names of the steps that it cannot try
 * @param shown what follows from the ticks
 */
public record TrialView(List<StepView> steps, List<String> others, ShownView shown) {

    /** A step to tick: its id, its name, its amount in words, whether it is another way of the step above, whether ticked. */
    public record StepView(String id, String name, String amount, boolean other, boolean ticked) {}

    /**
     * What follows from the ticks.
     *
     * @param told what the steps would do, the answer first
     * @param chart the course ahead
     * @param rows the same as a table, a row a week
     * @param treated whether anything is ticked and reckoned
     * @param premises what the model takes for granted
     */
    public record ShownView(List<String> told, Chart chart, List<Row> rows, boolean treated, List<String> premises) {}

    /**
     * The chart, in the units of its own box.
     *
     * @param title what it shows
     * @param description the same in words
     * @param width width of the box
     * @param height height of the box
     * @param left where the days begin
     * @param right where they end
     * @param top upper edge
     * @param floor lower edge
     * @param levels lines across, with their temperatures
     * @param warm height of the line of a working pile
     * @param freezing height of the line of freezing
     * @param ticks days marked below
     * @param today where today is
     * @param measured where the core was measured
     * @param outdoor outdoors as a line
     * @param without the core left alone
     * @param with the core treated; empty where nothing is ticked
     */
    public record Chart(
            String title,
            String description,
            int width,
            int height,
            int left,
            int right,
            int top,
            int floor,
            List<Level> levels,
            String warm,
            String freezing,
            List<Tick> ticks,
            String today,
            List<Dot> measured,
            String outdoor,
            Curve without,
            Optional<Curve> with) {}

    /** A course: the outline of its band, and its likely line. */
    public record Curve(String band, String line) {}

    /** A day in words. */
    public record Row(String date, String day, String without, String with, String outdoor) {}
}
