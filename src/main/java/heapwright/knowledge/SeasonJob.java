package heapwright.knowledge;

import heapwright.pile.Container;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What there is to do at one time of the year.
 *
 * @param id its id
 * @param time when
 * @param keeps what one must keep for it to matter
 * @param kinds the kinds of pile it is for; none where it is for all
 * @param job what to do
 * @param why why, in a sentence
 * @param sources keys of sources
 * @param known how it is known
 */
public record SeasonJob(
        String id,
        TimeOfYear time,
        Keeps keeps,
        Set<Container.Kind> kinds,
        String job,
        String why,
        List<String> sources,
        Known known) {

    /** What a grower keeps beside, or in, the garden. */
    public enum Keeps implements Id {
        PILE,
        SCRAPS,
        LEAVES,
        BEDS,
        TOILET
    }

    public SeasonJob {
        kinds = Set.copyOf(kinds);
        sources = List.copyOf(sources);
    }

    /** Whether it is for a pile of this kind. */
    public boolean fits(Container.Kind kind) {
        return kinds.isEmpty() || kinds.contains(kind);
    }

    /** The same in other words, for instance in other units. */
    public SeasonJob reworded(UnaryOperator<String> wording) {
        return new SeasonJob(id, time, keeps, kinds, wording.apply(job), wording.apply(why), sources, known);
    }
}
