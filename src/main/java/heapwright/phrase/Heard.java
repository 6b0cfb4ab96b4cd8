package heapwright.phrase;

import heapwright.knowledge.Sign;
import java.util.List;

/**
 * What a few words about a pile mean.
 *
 * @param said the words
 * @param meant what they can mean, the nearest first: one when it is certain, several when the person has to choose, none
 *     when nothing was understood
 * @param denied whether the words say that it is not so
 * @param all whether the words mean all of these at once, as "no smell" does; of none, that there is nothing to note
 */
public record Heard(String said, List<Sign> meant, boolean denied, boolean all) {
    public Heard {
        meant = List.copyOf(meant);
    }

    /** Whether the words can be noted without asking back. */
    public boolean certain() {
        return all || meant.size() == 1;
    }
}
