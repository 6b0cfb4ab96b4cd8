package heapwright.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a look through tables found.
 *
 * @param faults every fault of every table, a line each
 * @param counts how many rows each table has that was there, by its file
 * @param knowledge the tables, with shipped ones for those that were not there; empty when there are faults
 */
public record Inspection(List<String> faults, Map<String, Integer> counts, Optional<Knowledge> knowledge) {

    public Inspection {
        faults = List.copyOf(faults);
        counts = Map.copyOf(counts);
    }
}
