package heapwright.process.heat;

/**
 * What lies between the pile and the weather. Resistances in m²·K/W, on top of the outdoor film; open shares from 0
 * (sealed) to 1 (air passes freely).
 *
 * @param topResistance layers on the top
 * @param sideResistance layers round the sides
 * @param groundResistance layers below, on top of the soil itself
 * @param topOpen how far air leaves through the top
 * @param sideOpen how far air enters and leaves through the sides
 * @param groundOpen how far air enters from below (brush or pallet 1, soil about 0.2)
 * @param rainShare share of rain and snow that falls on the pile itself
 * @param shelter 0 (full wind) to 1 (no wind)
 */
public record Envelope(
        double topResistance,
        double sideResistance,
        double groundResistance,
        double topOpen,
        double sideOpen,
        double groundOpen,
        double rainShare,
        double shelter) {
    public Envelope {
        Checks.within("topResistance", topResistance, 0, 100);
        Checks.within("sideResistance", sideResistance, 0, 100);
        Checks.within("groundResistance", groundResistance, 0, 100);
        Checks.within("topOpen", topOpen, 0, 1);
        Checks.within("sideOpen", sideOpen, 0, 1);
        Checks.within("groundOpen", groundOpen, 0, 1);
        Checks.within("rainShare", rainShare, 0, 1);
        Checks.within("shelter", shelter, 0, 1);
    }

    /** A bare heap on soil in the open. */
    public static Envelope bare() {
        return new Envelope(0, 0, 0, 1, 1, 0.2, 1, 0.3);
    }

    /** A bin of slats or boards with gaps. */
    public static Envelope slatted() {
        return new Envelope(0, 0.1, 0, 1, 0.7, 0.2, 1, 0.5);
    }

    /** This envelope with a layer laid on the top. */
    public Envelope topped(Layer layer) {
        return new Envelope(
                topResistance + layer.resistance(),
                sideResistance,
                groundResistance,
                topOpen * layer.open(),
                sideOpen,
                groundOpen,
                rainShare * layer.rainShare(),
                shelter);
    }

    /** This envelope with a layer round the sides. */
    public Envelope wrapped(Layer layer) {
        return new Envelope(
                topResistance,
                sideResistance + layer.resistance(),
                groundResistance,
                topOpen,
                sideOpen * layer.open(),
                groundOpen,
                rainShare,
                Math.max(shelter, 1 - layer.open()));
    }

    /** This envelope with a layer below. */
    public Envelope bedded(Layer layer) {
        return new Envelope(
                topResistance,
                sideResistance,
                groundResistance + layer.resistance(),
                topOpen,
                sideOpen,
                Math.max(groundOpen, layer.open()),
                rainShare,
                shelter);
    }

    /**
     * How far the draught from below and the sides to the top is open, 0–1: inlet and outlet in series. Weights are
     * judgement.
     */
    double draught() {
        double in = 0.6 * sideOpen + 0.4 * groundOpen;
        double out = 0.7 * topOpen + 0.3 * sideOpen;
        return in + out == 0 ? 0 : 2 * in * out / (in + out);
    }

    /** Air passage of the whole skin, 0–1, for diffusion and drying. */
    double skinOpen() {
        return 0.6 * sideOpen + 0.3 * topOpen + 0.1 * groundOpen;
    }
}
