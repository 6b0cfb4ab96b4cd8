package heapwright.process.heat;

/**
 * What came and went in a run. Heat in J above liquid water at 0 °C, masses in kg. With {@code held} for what the pile
 * holds at start and end:
 *
 * <pre>
 * heat:  held end = held start + released + brought − conducted − aired
 * water: held end = held start + formed + brought − vapour − drained
 * dry:   held end = held start + brought − lost
 * nitrogen: held end = held start + brought − gas − drained
 * </pre>
 *
 * @param heatStart heat held at the start
 * @param heatEnd heat held at the end
 * @param heatReleased by decay
 * @param heatBrought with rain, water, material and snow, less what drained or was lost while the pile stood open
 * @param heatConducted out through skin and ground
 * @param heatAired out with air and vapour
 * @param waterStart water held at the start
 * @param waterEnd water held at the end
 * @param waterFormed by decay
 * @param waterBrought with rain, water, material and snow
 * @param waterVapour gone as vapour
 * @param waterDrained run off
 * @param dryStart dry matter at the start
 * @param dryEnd dry matter at the end
 * @param dryBrought with material
 * @param dryLost as gas
 * @param nitrogenStart nitrogen at the start
 * @param nitrogenEnd nitrogen at the end
 * @param nitrogenBrought with material and feeds
 * @param nitrogenGas lost as ammonia
 * @param nitrogenDrained lost with water that ran off
 */
public record Ledger(
        double heatStart,
        double heatEnd,
        double heatReleased,
        double heatBrought,
        double heatConducted,
        double heatAired,
        double waterStart,
        double waterEnd,
        double waterFormed,
        double waterBrought,
        double waterVapour,
        double waterDrained,
        double dryStart,
        double dryEnd,
        double dryBrought,
        double dryLost,
        double nitrogenStart,
        double nitrogenEnd,
        double nitrogenBrought,
        double nitrogenGas,
        double nitrogenDrained) {
    /** Heat not accounted for, as a share of all heat that moved. */
    public double heatGap() {
        double gap = heatEnd - heatStart - heatReleased - heatBrought + heatConducted + heatAired;
        return gap / Math.max(1, Math.abs(heatStart) + Math.abs(heatReleased) + Math.abs(heatBrought));
    }

    /** Water not accounted for, as a share of all water. */
    public double waterGap() {
        double gap = waterEnd - waterStart - waterFormed - waterBrought + waterVapour + waterDrained;
        return gap / Math.max(1e-9, waterStart + waterFormed + waterBrought);
    }

    /** Dry matter not accounted for, as a share of all dry matter. */
    public double dryGap() {
        return (dryEnd - dryStart - dryBrought + dryLost) / (dryStart + dryBrought);
    }

    /** Nitrogen not accounted for, as a share of all nitrogen. */
    public double nitrogenGap() {
        double gap = nitrogenEnd - nitrogenStart - nitrogenBrought + nitrogenGas + nitrogenDrained;
        return gap / Math.max(1e-9, nitrogenStart + nitrogenBrought);
    }
}
