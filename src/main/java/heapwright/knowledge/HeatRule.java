package heapwright.knowledge;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A published rule for how hot compost must be for how long.
 *
 * @param id its id
 * @param name what it is called here
 * @param method what kind of composting it is for
 * @param needs what it asks, any one of which is enough
 * @param also what else it asks, in words
 * @param sources keys of sources
 * @param known how it is known
 */
public record HeatRule(
        String id, String name, Method method, List<Need> needs, String also, List<String> sources, Known known) {
    public HeatRule {
        needs = List.copyOf(needs);
        sources = List.copyOf(sources);
    }

    /** The same with its sentence put another way. */
    HeatRule reworded(UnaryOperator<String> wording) {
        return new HeatRule(id, name, method, needs, wording.apply(also), sources, known);
    }

    /** What kind of composting a rule is for. */
    public enum Method implements Id {
        /** A heap that is turned. */
        TURNED,
        /** Any that gets all of the material hot. */
        ANY,
        /** A closed vessel. */
        VESSEL,
        /** A heap left standing under an insulating cover, with air blown through. */
        COVERED
    }

    /**
     * One way to meet a rule.
     *
     * @param celsius the least temperature
     * @param days the fewest days; part of a day for hours
     * @param turns the fewest full turns in those days
     * @param daysApart the fewest days from one turn to the next
     * @param hotDaysBefore the fewest hot days before each turn
     * @param inARow whether the days must follow each other
     */
    public record Need(double celsius, double days, int turns, int daysApart, int hotDaysBefore, boolean inARow) {}
}
