package heapwright.web.view;

import heapwright.web.view.AdviceView.CautionView;
import java.util.List;
import java.util.Optional;

/**
 * A list of the knowledge tables, or what a search found in all of them.
 *
 * @param shelf which list: causes, remedies, materials, cautions, sources, or search
 * @param searched the words searched for
 * @param entries what is in it
 */
public record KnowledgeView(String shelf, String searched, List<Entry> entries) {

    /** An entry: its kind in a word, its address, its name, and a line about it. */
    public record Entry(String kind, String address, String name, String line) {}

    /** A source: key, what it is, how it is known, and its address. */
    public record Source(String key, String what, String known, Optional<String> address) {}

    /** Facts by name. */
    public record Fact(String name, String text) {}

    /**
     * A page about one cause, remedy or material.
     *
     * @param shelf the list it is from
     * @param name its name
     * @param lead the first sentence
     * @param facts what is said of it
     * @param links related pages
     * @param linksTitle what relates them
     * @param cautions what to beware of
     * @param sources keys of its sources
     * @param known how it is known
     */
    public record Article(
            String shelf,
            String name,
            String lead,
            List<Fact> facts,
            List<Entry> links,
            String linksTitle,
            List<CautionView> cautions,
            List<String> sources,
            String known) {}
}
