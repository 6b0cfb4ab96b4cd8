package heapwright.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Takes tables from a shelf one by one and notes every fault, what was there and where each row stands. */
final class TableShelf {

    private final KnowledgeReader.Shelf shelf;
    private final boolean filled;
    private final TableReader reader = new TableReader();
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new HashMap<>();
    private final Set<String> broken = new HashSet<>();

    /**
     * @param filled whether the rows of another base stand in for what is missing or has a fault, so that the rest can
     *     still be looked at
     */
    TableShelf(KnowledgeReader.Shelf shelf, boolean filled) {
        this.shelf = shelf;
        this.filled = filled;
    }

    /** Every fault so far, a line each. */
    List<String> faults() {
        return faults;
    }

    /** How many rows each table that was there has. */
    Map<String, Integer> counts() {
        return counts;
    }

    /** The line of a row by {@link #place}. */
    Map<String, Integer> lines() {
        return lines;
    }

    /** The rows with a fault, by {@link #place}. */
    Set<String> broken() {
        return broken;
    }

    static String place(String file, String id) {
        return file + " " + id;
    }

    /**
     * The rows of a table.
     *
     * @param file its file
     * @param name the name of its list
     * @param maker makes a value of a row
     * @param key what the values are told apart by
     * @param standIn the same table of the other base
     */
    <K, V> Map<K, V> table(String file, String name, Function<Row, V> maker, Function<V, K> key, Map<K, V> standIn) {
        Map<K, V> values = new LinkedHashMap<>();
        try (InputStream in = shelf.open(file)) {
            if (in == null) {
                if (!filled) {
                    faults.add(file + ": the table is missing");
                }
                return standIn;
            }
            List<Row> rows = reader.rows(file, name, in, faults);
            counts.put(file, rows.size());
            if (rows.isEmpty()) {
                faults.add(file + ": no rows under \"" + name + "\"");
                return standIn;
            }
            rows.forEach(row -> take(row, file, maker, key, values));
            if (filled) {
                fill(file, values, standIn);
            }
        } catch (RowFault e) {
            faults.add(e.getMessage());
            return standIn;
        } catch (IOException e) {
            faults.add(file + ": cannot be read: " + e.getMessage());
            return standIn;
        }
        return values;
    }

    private <K, V> void take(Row row, String file, Function<Row, V> maker, Function<V, K> key, Map<K, V> values) {
        String place = place(file, row.id());
        lines.putIfAbsent(place, row.place().line());
        int before = faults.size();
        try {
            V value = row.as(maker);
            if (faults.size() == before && values.put(key.apply(value), value) != null) {
                faults.add(file + ", line " + row.place().line() + ": " + key.apply(value) + " stands twice");
            }
        } catch (RowFault e) {
            faults.add(e.getMessage());
        } catch (IllegalArgumentException | NullPointerException e) {
            // A record may refuse what stands in for a field with a fault; without one it is a figure that cannot be.
            if (faults.size() == before) {
                faults.add(file + ", line " + row.place().line() + ": " + row.id() + " cannot be: " + e.getMessage());
            }
        }
        if (faults.size() > before) {
            broken.add(place);
        }
    }

    /** A row of a fixed set that is not there is a fault; so that the rest can be looked at, another stands in. */
    private <K, V> void fill(String file, Map<K, V> values, Map<K, V> standIn) {
        standIn.forEach((key, row) -> {
            String id = KnowledgeReader.id(key);
            boolean told = lines.containsKey(place(file, id));
            if (key instanceof Enum<?> && !told) {
                faults.add(file + ": no row for " + id);
            }
            if (key instanceof Enum<?> || told || values.isEmpty()) {
                values.putIfAbsent(key, row);
            }
        });
    }
}
