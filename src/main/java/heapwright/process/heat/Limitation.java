package heapwright.process.heat;

/**
 * The factor that holds decay back most on a day.
 *
 * @param factor which
 * @param value what is left of the rate by this factor alone, 0–1
 */
public record Limitation(LimitingFactor factor, double value) {}
