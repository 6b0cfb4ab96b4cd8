package heapwright.web.view;

import java.util.List;

/**
 * What the page of the heat ledger shows.
 *
 * @param address the address of the pile
 * @param title its title
 * @param told the whole in a few sentences
 * @param levels the days at each temperature
 * @param between the days from one turn to the next
 * @param rules each rule beside the record
 * @param here what may be in this pile
 * @param others what else there is
 */
public record HeatView(
        String address,
        String title,
        List<String> told,
        List<String> levels,
        List<String> between,
        List<RuleRow> rules,
        List<FateView> here,
        List<FateView> others) {

    /** One rule: what it is called, asks, and how far the core gets; what else it asks and who says so. */
    public record RuleRow(String name, String asks, String core, String also) {}

    /** One weed, pest or disease: what is to be thought of it, who tried what, and what to do then. */
    public record FateView(String name, String verdict, List<String> trials, String then) {}
}
