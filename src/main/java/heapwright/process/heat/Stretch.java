package heapwright.process.heat;

/**
 * Days over which one factor held the pile back most.
 *
 * @param from first day
 * @param to last day
 * @param factor the factor, by the recipe and the state the measurements imply
 * @param value mean of what it left of the rate, 0–1
 * @param rateBias rate the measurements imply against that the recipe implies, 1 when they agree
 * @param colderThanHealthy mean kelvin by which the core was colder than that of a healthy pile
 */
public record Stretch(
        int from, int to, LimitingFactor factor, double value, double rateBias, double colderThanHealthy) {
    /** Whether the recipe as told does not explain the slowness: something not told holds it back. */
    public boolean unexplained() {
        return rateBias < 0.6;
    }
}
