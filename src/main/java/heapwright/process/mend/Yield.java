package heapwright.process.mend;

import heapwright.knowledge.Known;
import heapwright.knowledge.Trait;
import heapwright.process.dose.PileStock;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Mixture;

/**
 * What a pile will give when it is finished. Ranges from practice and extension pages; coarse on purpose.
 *
 * @param litres volume of finished compost, litres
 * @param kgWet its mass, kg
 * @param coversM2 area it covers 2.5 cm deep, square metres
 * @param nitrogenKg nitrogen in it, kg
 * @param phosphorusKg phosphorus in it, kg
 * @param potassiumKg potassium in it, kg
 * @param nutrientsKnown how the nutrients are known
 */
public record Yield(
        Band litres,
        Band kgWet,
        Band coversM2,
        Band nitrogenKg,
        Band phosphorusKg,
        Band potassiumKg,
        Known nutrientsKnown) {

    /** What a pile is mostly made of. */
    public enum Kind {
        /** Kitchen and garden mix: 30 to 50 % of the volume is left (SASK08, published). */
        MIXED(0.30, 0.40, 0.50),
        /** Manure: 50 to 70 % is left (a conservation district, published). */
        MANURE(0.50, 0.60, 0.70),
        /** Leaves and yard trimmings: 25 to 50 % is left (CSUDEN, published). */
        YARD(0.25, 0.38, 0.50);

        private final Band left;

        Kind(double low, double likely, double high) {
            this.left = new Band(low, likely, high);
        }

        /** What a mixture is mostly made of. */
        public static Kind of(Mixture mixture) {
            if (mixture.sharePct(Trait.MANURE) > MOSTLY_PCT) {
                return MANURE;
            }
            return mixture.sharePct(Trait.KITCHEN) > 0 ? MIXED : YARD;
        }

        /** What is left of so much fresh stuff, cubic metres. */
        public Band left(Band freshM3) {
            return product(freshM3, left);
        }
    }

    private static final double MOSTLY_PCT = 50;

    /** Wet density of finished compost, kg per cubic metre: 500 to 900 (AGNEW03, quoted). */
    private static final Band DENSITY = new Band(500, 650, 900);

    /** A covering layer of one inch, metres (UMNEXT, published). */
    private static final double LAYER_M = 0.025;

    /** Nitrogen kept: losses of 0.5 % (GOT56 at C:N 30, from memory) to 62 % (EKL00, published abstract). */
    private static final Band NITROGEN_KEPT = new Band(0.38, 0.70, 0.99);

    /** Dry share of finished compost (judgement: moisture 35 to 55 %). */
    private static final double DRY = 0.55;

    /** Phosphorus and potassium, share of dry mass (from memory; no source table was found). */
    private static final Band PHOSPHORUS = new Band(0.002, 0.004, 0.010);

    private static final Band POTASSIUM = new Band(0.004, 0.010, 0.020);

    /**
     * @param freshM3 volume of the pile when it was built, cubic metres
     * @param stock what went in
     * @param kind what it is mostly made of
     */
    public static Yield of(Band freshM3, PileStock stock, Kind kind) {
        Band volume = kind.left(freshM3);
        Band wet = product(volume, DENSITY);
        Band dry = wet.times(DRY);
        return new Yield(
                volume.times(1000),
                wet,
                volume.times(1 / LAYER_M),
                NITROGEN_KEPT.times(stock.nitrogenKg()),
                product(dry, PHOSPHORUS),
                product(dry, POTASSIUM),
                Known.FROM_MEMORY);
    }

    private static Band product(Band one, Band other) {
        return new Band(one.low() * other.low(), one.likely() * other.likely(), one.high() * other.high());
    }
}
