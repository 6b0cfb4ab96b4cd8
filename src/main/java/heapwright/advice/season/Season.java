package heapwright.advice.season;

import heapwright.knowledge.SeasonJob;
import heapwright.knowledge.TimeOfYear;
import heapwright.process.climate.MonthThird;
import java.util.List;

/**
 * A stretch of the year of one kind, and what there is to do in it.
 *
 * @param time what time of the year it is
 * @param from its first third of a month
 * @param to its last, which may be the first
 * @param jobs what there is to do, in the order of the table
 */
public record Season(TimeOfYear time, MonthThird from, MonthThird to, List<SeasonJob> jobs) {
    public Season {
        jobs = List.copyOf(jobs);
    }
}
