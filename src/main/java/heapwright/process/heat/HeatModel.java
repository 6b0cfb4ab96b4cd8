package heapwright.process.heat;

import java.util.ArrayList;
import java.util.List;

/** Runs the model. Pure: the same input gives the same course. */
public final class HeatModel {
    private HeatModel() {}

    /**
     * The course of a pile.
     *
     * @param start the pile on day 0; of one that stands already, day 0 is as it stands
     * @param weather the weather from day 0; past its end its last day stands
     * @param events what is done, in any order
     * @param days length of the run, 1–3,650
     * @param constants usually {@link Constants#standard()}
     */
    public static Course run(PileState start, Weather weather, List<Event> events, int days, Constants constants) {
        return run(start, weather, events, days, constants, Run.SHELLS);
    }

    /** As {@link #run(PileState, Weather, List, int, Constants)} with a chosen number of shells, 3–64. */
    public static Course run(
            PileState start, Weather weather, List<Event> events, int days, Constants constants, int shells) {
        Checks.within("days", days, 1, 3650);
        Checks.within("shells", shells, 3, 64);
        Run run = new Run(start, weather, events, constants, shells);
        List<Day> all = new ArrayList<>(days);
        for (int d = 0; d < days; d++) {
            if (d == 0 && start.stage().standing()) {
                run.stand();
            } else {
                run.live();
            }
            all.add(run.read());
        }
        return new Course(all, run.tally.close(run.s));
    }
}
