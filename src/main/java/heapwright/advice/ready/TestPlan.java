package heapwright.advice.ready;

import heapwright.knowledge.HomeTestInfo;
import java.time.LocalDate;

/**
 * A home test that would tell more, with its days.
 *
 * @param test the test
 * @param start the day to begin
 * @param from the first day to read it
 * @param to the last
 * @param again whether it came out badly before
 */
public record TestPlan(HomeTestInfo test, LocalDate start, LocalDate from, LocalDate to, boolean again) {

    static TestPlan of(HomeTestInfo test, LocalDate start, boolean again) {
        return new TestPlan(test, start, start.plusDays(test.fromDays()), start.plusDays(test.toDays()), again);
    }
}
