package heapwright.process.heat;

/**
 * How unsure the inputs and constants are: half-widths of an even spread round the likely value. Widths are judgement
 * unless the caller knows better (measured moisture is surer than guessed moisture).
 *
 * @param moisture points of moisture, as a share (0.05 = 5 points)
 * @param density share of bulk density
 * @param quick share of the quick pool
 * @param nitrogen share of the nitrogen
 * @param pieces share of the piece size
 * @param rates share of the decay rates
 * @param curveC shift of the temperature curve, K
 * @param conductivity share of conduction
 * @param permeability factor by which the passage of air may be more or less, above 1
 * @param airC outdoor temperature throughout, K
 * @param unrestC day-to-day unrest of the weather, K
 */
public record Spread(
        double moisture,
        double density,
        double quick,
        double nitrogen,
        double pieces,
        double rates,
        double curveC,
        double conductivity,
        double permeability,
        double airC,
        double unrestC) {
    /** For a recipe from tables and a forecast from monthly means. */
    public static Spread usual() {
        return new Spread(0.08, 0.25, 0.50, 0.30, 0.5, 0.9, 7, 0.40, 5, 3.0, 4.5);
    }

    /** For a pile measured by its keeper and a course of weather already known. */
    public static Spread measured() {
        return new Spread(0.03, 0.08, 0.20, 0.15, 0.2, 0.30, 3, 0.20, 2, 0.3, 0);
    }

    /** No spread at all: every sample is the likely one. */
    public static Spread none() {
        return new Spread(0, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0);
    }
}
