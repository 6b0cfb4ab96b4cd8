package heapwright.web.view;

import heapwright.web.view.AdviceView.CautionView;
import java.util.List;
import java.util.Optional;

/**
 * A list of the knowledge tables, the search in all of them, or what it found.
 *
 * @param shelf which list: causes, remedies, materials, cautions, sources, or search
 * @param searched the words searched for
 * @param count how many entries there are in all groups
 * @param groups what is in it
 */
public record KnowledgeView(String shelf, String searched, int count, List<Group> groups) {

    public KnowledgeView {
        groups = List.copyOf(groups);
    }

    /** A list in groups. */
    public static KnowledgeView of(String shelf, String searched, List<Group> groups) {
        int count = groups.stream().mapToInt(g -> g.entries().size()).sum();
        return new KnowledgeView(shelf, searched, count, groups);
    }

    /** Entries under one name, folded away; without a name they are shown at once. */
    public record Group(String name, List<Entry> entries) {
        public Group {
            entries = List.copyOf(entries);
        }
    }

    /** An entry: its kind in a word, its address, its name, a line about it, and other names by which it is found. */
    public record Entry(String kind, String address, String name, String line, String also) {
        /** Without its line, for a list of all there is. */
        public Entry brief() {
            return new Entry(kind, address, name, "", also);
        }
    }

    /** Cautions under one name. */
    public record Cautions(String name, List<CautionView> cautions) {
        public Cautions {
            cautions = List.copyOf(cautions);
        }
    }

    /** Sources under one name. */
    public record Sources(String name, List<Source> sources) {
        public Sources {
            sources = List.copyOf(sources);
        }
    }

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
