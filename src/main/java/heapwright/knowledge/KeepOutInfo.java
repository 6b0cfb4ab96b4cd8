package heapwright.knowledge;

import java.util.List;
import java.util.Optional;

/**
 * What the table says of one class of stuff that stays out.
 *
 * @param id the class
 * @param name what it is, in plain words
 * @param signs signs that say that it went in
 * @param step what to do when it is already in; empty where nothing is to be done
 * @param nothingForkedThrough whether nothing may be forked, turned or fed in while it is in
 * @param staysTainted whether the batch stays what it is after the stuff has been taken out
 * @param sources keys of sources
 * @param known how it is known
 */
public record KeepOutInfo(
        KeepOutClass id,
        String name,
        List<Sign> signs,
        Optional<Remedy> step,
        boolean nothingForkedThrough,
        boolean staysTainted,
        List<String> sources,
        Known known) {
    public KeepOutInfo {
        signs = List.copyOf(signs);
        sources = List.copyOf(sources);
    }
}
