package heapwright.knowledge;

import heapwright.pile.Closest;
import java.util.Collection;
import java.util.List;

/** Checks that what a row names by its key is there. */
final class References {

    private final Knowledge knowledge;
    private final List<String> faults;

    /** @param faults takes what is not there, a line each */
    References(Knowledge knowledge, List<String> faults) {
        this.knowledge = knowledge;
        this.faults = faults;
    }

    /** A row names a source or more, all of them known. */
    void sources(String where, Collection<String> keys) {
        if (keys.isEmpty()) {
            faults.add(
                    where + ": names no source. Allowed: one key of sources.json or more. Example: [\"JUDGEMENT\"].");
        }
        keys.forEach(key -> known(where, "the source", key, knowledge.sources().keySet(), "a key of sources.json"));
    }

    /** All materials that a row names are known. */
    void materials(String where, Collection<String> ids) {
        ids.forEach(id -> known(where, "the material", id, knowledge.materials().keySet(), "an id of materials.json"));
    }

    private void known(String where, String kind, String key, Collection<String> all, String allowed) {
        if (!all.contains(key)) {
            faults.add(where + ": found " + kind + " \"" + key + "\". Allowed: " + allowed + "."
                    + Closest.to(key, all)
                            .map(near -> " Did you mean \"" + near + "\"?")
                            .orElse(""));
        }
    }
}
