package heapwright.phrase;

import heapwright.knowledge.Sign;
import java.util.List;

/**
 * What a few words about a pile mean.
 *
 * @param said the words
 * @param meant what they can mean, the nearest first; all of it where it is certain, else what the person has to choose
 *     from; none when nothing was understood
 * @param denied whether the words say that it is not so
 * @param certain whether it can be noted without asking back; of none, that there is nothing to note
 * @param left words that what is meant leaves out and that may tell of something else; never of what is certain
 */
public record PhraseMeaning(String said, List<Sign> meant, boolean denied, boolean certain, List<String> left) {
    public PhraseMeaning {
        meant = List.copyOf(meant);
        left = List.copyOf(left);
        if (certain && !left.isEmpty()) {
            throw new IllegalArgumentException("left of \"" + said + "\" and yet certain: " + left);
        }
    }

    static PhraseMeaning certainly(String said, List<Sign> meant, boolean denied) {
        return new PhraseMeaning(said, meant, denied, true, List.of());
    }

    static PhraseMeaning choice(String said, List<Sign> meant, boolean denied, List<String> left) {
        return new PhraseMeaning(said, meant, denied, false, left);
    }

    /** The same, to be asked about. */
    PhraseMeaning doubted() {
        return choice(said, meant, denied, left);
    }
}
