package heapwright.process.heat;

/**
 * How well one supposed fault, in its best-fitting degree, explains the measured core temperatures, everything else
 * being well. Faults that keep a pile from ever warming look alike to a thermometer: other signs must tell them apart.
 *
 * @param factor the fault; NONE is the pile as told
 * @param missK root mean square miss of the measurements, K
 */
public record Suspect(LimitingFactor factor, double missK) {}
