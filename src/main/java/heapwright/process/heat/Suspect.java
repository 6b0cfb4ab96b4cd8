package heapwright.process.heat;

/**
 * How well one supposed fault explains the measured core temperatures, everything else as told.
 *
 * @param factor the fault; NONE is the pile as told
 * @param missK root mean square miss of the measurements, K
 */
public record Suspect(LimitingFactor factor, double missK) {}
