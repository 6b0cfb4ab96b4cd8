package heapwright.process.mend;

/**
 * So much of one material to add.
 *
 * @param material id of the material, or {@link Offer#WATER}
 * @param kg mass, kg
 * @param litres volume as filled by hand, litres
 * @param parts number of doses it is split into, 1 or more
 */
public record Addition(String material, double kg, double litres, int parts) {}
