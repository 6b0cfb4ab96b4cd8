package heapwright.knowledge;

import java.util.List;

/**
 * An equation for the days that every particle must be kept at a temperature: coefficient ÷ 10^(exponent × °C).
 *
 * @param id its id
 * @param name for what stuff it is
 * @param coefficient days
 * @param exponent per °C
 * @param lowestCelsius below this it says nothing
 * @param leastMinutes less time than this is never enough
 * @param sources keys of sources
 * @param known how it is known
 */
public record HeatEquation(
        String id,
        String name,
        double coefficient,
        double exponent,
        double lowestCelsius,
        double leastMinutes,
        List<String> sources,
        Known known) {
    public HeatEquation {
        sources = List.copyOf(sources);
    }
}
