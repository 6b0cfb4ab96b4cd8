package heapwright.process.heat;

import java.util.List;

/**
 * All that a course of the model follows from.
 *
 * @param start the pile on day 0
 * @param weather the weather from day 0
 * @param events what is done
 * @param marks what is known of its water, acid and size on some days
 * @param days length, 1 or more
 */
public record Setup(PileState start, Weather weather, List<Event> events, List<StateMark> marks, int days) {

    public Setup {
        events = List.copyOf(events);
        marks = List.copyOf(marks);
    }

    /** The course at the likely figures, not fitted to any reading. */
    public Course course() {
        return Retrace.of(this, List.of(), Constants.standard()).course();
    }

    public Setup with(PileState other) {
        return new Setup(other, weather, events, marks, days);
    }

    public Setup with(Matter matter) {
        return with(start.with(matter));
    }

    public Setup in(Weather other) {
        return new Setup(start, other, events, marks, days);
    }

    public Setup doing(List<Event> other) {
        return new Setup(start, weather, other, marks, days);
    }

    public Setup marked(List<StateMark> other) {
        return new Setup(start, weather, events, other, days);
    }
}
