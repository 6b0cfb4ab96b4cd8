package heapwright.process.heat;

/**
 * A layer of insulation or cover.
 *
 * @param resistance m²·K/W
 * @param open how far air passes, 0–1
 * @param rainShare share of rain that passes, 0–1
 */
public record Layer(double resistance, double open, double rainShare) {
    public Layer {
        Checks.within("resistance", resistance, 0, 100);
        Checks.within("open", open, 0, 1);
        Checks.within("rainShare", rainShare, 0, 1);
    }

    /** Snow laid or fallen, 200 kg/m³, 0.065 W/m·K (STURM97, from memory). */
    public static Layer snow(double depthM) {
        return new Layer(depthM / snowConductivity(0.2), 0.8, 1);
    }

    /** Loose straw or leaves, 0.06 W/m·K: inside 0.03–0.30 of AHN09. */
    public static Layer straw(double depthM) {
        return new Layer(depthM / 0.06, 0.9, 0.8);
    }

    /** Foam board, 0.035 W/m·K (judgement: usual trade figure). */
    public static Layer foam(double depthM) {
        return new Layer(depthM / 0.035, 0.15, 0.1);
    }

    /** Boards, 0.13 W/m·K (judgement: usual trade figure). */
    public static Layer boards(double depthM) {
        return new Layer(depthM / 0.13, 0.5, 0.2);
    }

    /** Finished compost, half moist, 0.25 W/m·K: inside 0.12–0.81 of AHN09. */
    public static Layer finishedCompost(double depthM) {
        return new Layer(depthM / 0.25, 0.7, 0.7);
    }

    /** A sheet laid loosely: keeps rain off, still air below. */
    public static Layer looseTarp() {
        return new Layer(0.1, 0.5, 0.05);
    }

    /** A sheet sealed all round: hardly any air. */
    public static Layer sealedSheet() {
        return new Layer(0.1, 0.03, 0);
    }

    /** Coarse brush or a pallet below: lets air in, insulates a little. */
    public static Layer brush() {
        return new Layer(0.3, 0.9, 1);
    }

    /**
     * Conductivity of snow, W/m·K, of a density in g/cm³ (STURM97, from memory; 0.01–0.6).
     */
    public static double snowConductivity(double density) {
        return density < 0.156 ? 0.023 + 0.234 * density : 0.138 - 1.01 * density + 3.233 * density * density;
    }
}
