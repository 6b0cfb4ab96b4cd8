package heapwright.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a look through tables found.
 *
 * @param faults every fault of every table, a line each, with its file as it stands in a folder
 * @param counts how many rows each table has that was there, by its file
 * @param knowledge the tables, with shipped ones for those that were not there; empty when there are faults
 */
public record Inspection(List<String> faults, Map<String, Integer> counts, Optional<Knowledge> knowledge) {

    /** The table that a fault begins with, by the name under which the reader knows it. */
    private static final Pattern TABLE = Pattern.compile("^[a-z-]+\\.json\\b");

    public Inspection {
        faults = faults.stream()
                .map(fault -> TABLE.matcher(fault).replaceFirst(KnowledgeFolder.shown("$0")))
                .distinct()
                .toList();
        counts = Map.copyOf(counts);
    }
}
