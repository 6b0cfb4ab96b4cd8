package heapwright.knowledge;

import java.util.List;

/**
 * How long to wait.
 *
 * @param id what for
 * @param name the same in words
 * @param days how long at least, days
 * @param toDays how long at most, days
 * @param materials ids of materials that ask for it; none where it is not asked for by a material
 * @param note what others say
 * @param sources keys of sources
 * @param known how it is known
 */
public record WaitInfo(
        Wait id,
        String name,
        int days,
        int toDays,
        List<String> materials,
        String note,
        List<String> sources,
        Known known) {
    public WaitInfo {
        materials = List.copyOf(materials);
        sources = List.copyOf(sources);
    }
}
