package heapwright.web.view;

import java.util.List;

/**
 * What the page of the seasons shows.
 *
 * @param address the address of the pile; empty where it is for any
 * @param title its title
 * @param ground what the months stand on
 * @param times the times of the year, the one that is now first
 */
public record SeasonView(String address, String title, List<String> ground, List<TimeView> times) {

    /**
     * A time of the year.
     *
     * @param span its name and months
     * @param groups what there is to do, by what it is for
     */
    public record TimeView(String span, List<GroupView> groups) {}

    /**
     * What there is to do for one thing.
     *
     * @param name the pile, the scraps and so on
     * @param jobs what to do and why
     */
    public record GroupView(String name, List<JobView> jobs) {}

    /**
     * One job.
     *
     * @param job what to do
     * @param why why
     * @param rests what that rests on
     */
    public record JobView(String job, String why, String rests) {}
}
