package heapwright.advice.fact;

/**
 * The last full turn, where the core was measured before and after it.
 *
 * @param daysAgo days since it
 * @param coreFell how much cooler the core is by the last reading than before it, kelvin
 * @param outdoorC the coldest air that was measured in the days about it; NaN where none was
 * @param frostSeen whether frost was told of in the days about it
 */
public record Turned(int daysAgo, double coreFell, double outdoorC, boolean frostSeen) {}
