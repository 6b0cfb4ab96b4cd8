package heapwright.process.heat;

/**
 * The open constants of the model. {@link #standard()} holds the calibrated set; docs/method/heat.md gives source and
 * status of each. Rates are per day at 20 °C with water, air, nitrogen and piece size ideal.
 *
 * @param kinetics decay and heat
 * @param transport conduction, air and vapour
 * @param nitrogen nitrogen released, bound and lost
 * @param acid the acid start
 * @param settling loss of volume
 */
public record Constants(Kinetics kinetics, Transport transport, Nitrogen nitrogen, Acid acid, Settling settling) {

    /**
     * Decay and heat.
     *
     * @param quickPerDay first-order rate of sugars, starch, protein and soft tissue at 20 °C, 1/day
     * @param slowPerDay the same for cellulose-like matter
     * @param ligninPerDay the same for lignin-rich matter and humus
     * @param humusYield share of what decays that stays as humus, 0–0.6; two thirds of consumed carbon leaves (IDAHO)
     * @param oxygenPerKg kg of oxygen per kg of organic matter turned to gas, 1.2–1.5 for plants (derived)
     * @param heatPerKgOxygen J per kg oxygen; 14 MJ (HAUG93, COON68)
     * @param waterPerKg kg of water formed per kg of organic matter turned to gas
     * @param shiftC moves the temperature curve, K; 0 is the calibrated curve
     * @param halfSizeCm piece size at which the surface starts to rule the rate, cm
     * @param mesophiles organisms of the cool and the warm range
     * @param thermophiles organisms of the hot range
     */
    public record Kinetics(
            double quickPerDay,
            double slowPerDay,
            double ligninPerDay,
            double humusYield,
            double oxygenPerKg,
            double heatPerKgOxygen,
            double waterPerKg,
            double shiftC,
            double halfSizeCm,
            Guild mesophiles,
            Guild thermophiles) {
        /** Scales the rates of the quick and the slow pools and sets the shift of the temperature curve, K. */
        public Kinetics varied(double quickTimes, double slowTimes, double newShiftC) {
            return new Kinetics(
                    quickPerDay * quickTimes,
                    slowPerDay * slowTimes,
                    ligninPerDay * slowTimes,
                    humusYield,
                    oxygenPerKg,
                    heatPerKgOxygen,
                    waterPerKg,
                    newShiftC,
                    halfSizeCm,
                    mesophiles,
                    thermophiles);
        }
    }

    /**
     * Organisms of one range of temperature.
     *
     * @param seed their vigour in fresh matter, as a share of a grown population, above 0 to 1
     * @param growthPerDay growth of that vigour where their temperature factor is 1, 1/day
     * @param deathPerDayK2 loss of that vigour per square kelvin above {@code deathFromC}, 1/day·K²
     * @param deathFromC temperature above which they begin to die, °C
     */
    public record Guild(double seed, double growthPerDay, double deathPerDayK2, double deathFromC) {}

    /**
     * Conduction, air and vapour.
     *
     * @param conductivityBase W/m·K of the dry loose skeleton
     * @param conductivityWater W/m·K per unit of water by volume (1 = all water)
     * @param conductivityIce extra W/m·K per unit of that water when frozen
     * @param conductivityDry W/m·K per 1,000 kg/m³ of dry matter
     * @param permeability m² at an air space of 0.40 and pieces of 2.5 cm
     * @param heatRecovery share of the rising air that gives heat and vapour back to the outer shells, 0–1
     * @param crustM depth of the drying crust, m
     * @param soilConductivity W/m·K of the ground
     */
    public record Transport(
            double conductivityBase,
            double conductivityWater,
            double conductivityIce,
            double conductivityDry,
            double permeability,
            double heatRecovery,
            double crustM,
            double soilConductivity) {
        /** Scales conduction and the passage of air. */
        public Transport varied(double conductivityTimes, double permeabilityTimes) {
            return new Transport(
                    conductivityBase * conductivityTimes,
                    conductivityWater * conductivityTimes,
                    conductivityIce * conductivityTimes,
                    conductivityDry * conductivityTimes,
                    permeability * permeabilityTimes,
                    heatRecovery,
                    crustM,
                    soilConductivity);
        }
    }

    /**
     * Nitrogen.
     *
     * @param criticalRatio C:N of decaying matter at which none is set free
     * @param volatilePerDay share of free ammonia lost a day in a strong draught at 20 °C
     * @param nitrifyPerDay share of ammonium bound again a day, at its best temperature
     */
    public record Nitrogen(double criticalRatio, double volatilePerDay, double nitrifyPerDay) {}

    /**
     * The acid start. The acid index runs from 0 (none) to 1 (pH about 4.5).
     *
     * @param consumePerDay first-order loss of acid with air at its best temperature, 1/day
     * @param produced rise of the index per unit of dry matter fermented without air
     */
    public record Acid(double consumePerDay, double produced) {}

    /**
     * Settling.
     *
     * @param exponent volume falls with dry matter to this power
     * @param looseDays days in which a freshly heaped pile settles under its own weight
     */
    public record Settling(double exponent, double looseDays) {}

    /** The calibrated constants. */
    public static Constants standard() {
        return new Constants(
                new Kinetics(
                        0.057,
                        0.0056,
                        0.0003,
                        0.30,
                        1.30,
                        14.0e6,
                        0.55,
                        0.0,
                        5.0,
                        new Guild(0.3, 2.5, 0.03, 43.5),
                        new Guild(0.5, 2.0, 0.2, 55.5)),
                new Transport(0.05, 0.75, 0.75, 0.15, 1.25e-9, 0.5, 0.05, 1.0),
                new Nitrogen(28.0, 10.0, 0.02),
                new Acid(0.15, 8.0),
                new Settling(1.6, 8.0));
    }

    /** This set with other kinetics. */
    public Constants with(Kinetics other) {
        return new Constants(other, transport, nitrogen, acid, settling);
    }

    /** This set with other transport constants. */
    public Constants with(Transport other) {
        return new Constants(kinetics, other, nitrogen, acid, settling);
    }
}
