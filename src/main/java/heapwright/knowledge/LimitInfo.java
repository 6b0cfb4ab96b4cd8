package heapwright.knowledge;

import java.util.List;

/**
 * What the table of limits says of one limit.
 *
 * @param id the limit
 * @param name its name
 * @param value the figure in force unless a pile file replaces it
 * @param unit its unit
 * @param lowest the lowest figure a person may set
 * @param highest the highest figure a person may set
 * @param sources keys of sources
 * @param known how it is known
 * @param spread what the sources say and where they differ
 */
public record LimitInfo(
        Limit id,
        String name,
        double value,
        String unit,
        double lowest,
        double highest,
        List<String> sources,
        Known known,
        String spread) {}
