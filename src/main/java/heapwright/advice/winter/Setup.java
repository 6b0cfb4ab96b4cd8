package heapwright.advice.winter;

import heapwright.process.heat.Constants;
import heapwright.process.heat.Course;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Retrace;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
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
record Setup(PileState start, Weather weather, List<Event> events, List<StateMark> marks, int days) {

    Setup {
        events = List.copyOf(events);
        marks = List.copyOf(marks);
    }

    /** The course at the likely figures, not fitted to any reading. */
    Course course() {
        return Retrace.of(start, weather, events, List.of(), marks, days, Constants.standard())
                .course();
    }

    Setup with(PileState other) {
        return new Setup(other, weather, events, marks, days);
    }

    Setup with(Matter matter) {
        return with(start.with(matter));
    }

    Setup in(Weather other) {
        return new Setup(start, other, events, marks, days);
    }

    Setup doing(List<Event> other) {
        return new Setup(start, weather, other, marks, days);
    }

    Setup marked(List<StateMark> other) {
        return new Setup(start, weather, events, other, days);
    }
}
