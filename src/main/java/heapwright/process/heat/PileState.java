package heapwright.process.heat;

/**
 * A pile on one day.
 *
 * @param lengthM length, m
 * @param widthM width, m; height follows from the volume
 * @param matter what it is made of
 * @param coreC temperature at the core, °C, −40 to 80
 * @param skinC temperature at the skin, °C, −40 to 80; between them it falls with the square of the way out
 * @param envelope what is round it
 * @param stage how far it has settled and its microbes have grown
 */
public record PileState(
        double lengthM, double widthM, Matter matter, double coreC, double skinC, Envelope envelope, Stage stage) {
    public PileState {
        Checks.above("lengthM", lengthM, 0);
        Checks.above("widthM", widthM, 0);
        Checks.within("coreC", coreC, -40, 80);
        Checks.within("skinC", skinC, -40, 80);
    }

    /** A pile just heaped. */
    public PileState(double lengthM, double widthM, Matter matter, double coreC, double skinC, Envelope envelope) {
        this(lengthM, widthM, matter, coreC, skinC, envelope, Stage.fresh());
    }

    /** A pile of a square footprint, as high as wide, all at one temperature. */
    public static PileState cube(Matter matter, double temperatureC, Envelope envelope) {
        double side = Math.cbrt(matter.volumeM3());
        return new PileState(side, side, matter, temperatureC, temperatureC, envelope);
    }

    /** Height, m. */
    public double heightM() {
        return matter.volumeM3() / (lengthM * widthM);
    }

    /** This pile with other matter. */
    public PileState with(Matter other) {
        return new PileState(lengthM, widthM, other, coreC, skinC, envelope, stage);
    }

    /** This pile, losing so many times the heat that its size and covers would have it lose. */
    public PileState losing(double times) {
        Stage other = new Stage(stage.loose(), stage.vigour(), stage.rate(), times, stage.missK());
        return new PileState(lengthM, widthM, matter, coreC, skinC, envelope, other);
    }

    /** This pile in another envelope. */
    public PileState with(Envelope other) {
        return new PileState(lengthM, widthM, matter, coreC, skinC, other, stage);
    }
}
