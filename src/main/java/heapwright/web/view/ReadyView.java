package heapwright.web.view;

import java.util.List;

/**
 * What the page on ripeness and use shows.
 *
 * @param address the address of the pile
 * @param title its title
 * @param headline the verdict and how sure it is
 * @param told what is said with it
 * @param reasons what holds it back
 * @param results how home tests came out
 * @param plans the tests worth doing, with their days
 * @param tests every test: what it is called, needs, how it goes and is read
 * @param left how much there is
 * @param may the uses it may go to
 * @param mayNot the others
 * @param dates the days that matter
 */
public record ReadyView(
        String address,
        String title,
        String headline,
        List<String> told,
        List<ReasonView> reasons,
        List<String> results,
        List<String> plans,
        List<TestView> tests,
        String left,
        List<UseView> may,
        List<UseView> mayNot,
        List<String> dates) {

    /** A reason, what to do then, and who says so. */
    public record ReasonView(String text, boolean danger) {}

    /** A test: its name, what it needs and tells, how it goes, how it is read, and who says so. */
    public record TestView(String name, boolean planned, String needs, String how, String readings, String rests) {}

    /** A use with its amount, what it covers, and what else is said of it. */
    public record UseView(String line, String note) {}
}
