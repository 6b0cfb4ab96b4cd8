package heapwright.pile;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The words of which names are made, and how many names have each: a rare word tells more. */
final class NameWords {

    private static final double ROUNDING = 1e-9;

    private final Map<String, Set<String>> byName = new LinkedHashMap<>();
    private final Map<String, Integer> names = new HashMap<>();

    NameWords(Collection<String> all) {
        for (String name : all) {
            Set<String> stems = new HashSet<>(Stems.of(name));
            byName.put(name, stems);
            stems.forEach(stem -> names.merge(stem, 1, Integer::sum));
        }
    }

    boolean knowsAll(Collection<String> stems) {
        return names.keySet().containsAll(stems);
    }

    /** The names in which all these words stand. */
    List<String> holding(Collection<String> stems) {
        return byName.entrySet().stream()
                .filter(e -> !stems.isEmpty() && e.getValue().containsAll(stems))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The names that share most of these words, the rarer the more; none where no word is shared. */
    List<String> sharing(Collection<String> stems) {
        double most = byName.values().stream()
                .mapToDouble(n -> shared(n, stems))
                .max()
                .orElse(0);
        return most <= 0
                ? List.of()
                : byName.entrySet().stream()
                        .filter(e -> shared(e.getValue(), stems) >= most - ROUNDING)
                        .map(Map.Entry::getKey)
                        .toList();
    }

    private double shared(Set<String> name, Collection<String> stems) {
        return stems.stream()
                .distinct()
                .filter(name::contains)
                .mapToDouble(stem -> Math.log(1 + byName.size() / (double) names.get(stem)))
                .sum();
    }
}
