package heapwright.process.heat;

/**
 * The open constants of the model. {@link #standard()} holds the calibrated set; docs/method/heat.md gives source and
 * status of each. Rates are per day at 20 °C with water, air, nitrogen and piece size ideal.
 *
 * @param kinetics decay and heat
 * @param reach how much of the food organisms can get at
 * @param transport conduction, air and vapour
 * @param nitrogen nitrogen released, bound and lost
 * @param acid the acid start
 * @param settling loss of volume
 */
public record Constants(
        Kinetics kinetics, Reach reach, Transport transport, Nitrogen nitrogen, Acid acid, Settling settling) {

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
     * @param hotOnSlow how fast the organisms of the hot range work on slow and lignin-rich matter, against quick, 0–1
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
            double hotOnSlow,
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
                    hotOnSlow,
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
     * @param least their vigour that outlives any heat, as spores and in cooler pockets, above 0 to 1
     */
    public record Guild(double seed, double growthPerDay, double deathPerDayK2, double deathFromC, double least) {}

    /**
     * How much of the food lies within reach. The rest is inside clumps and matted layers, in pockets without air or
     * water: it comes within reach little by little, and by turning.
     *
     * @param fresh share within reach in a pile just mixed, above 0 to 1
     * @param perDay share of the rest that comes within reach a day
     * @param turned share of the rest that one turn brings within reach, 0–1
     */
    public record Reach(double fresh, double perDay, double turned) {}

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
                        0.061,
                        0.0125,
                        0.00016,
                        0.30,
                        1.30,
                        14.0e6,
                        0.55,
                        0.0,
                        5.0,
                        0.22,
                        new Guild(0.53, 0.81, 0.019, 44.5, 0.1),
                        new Guild(0.8, 1.5, 0.29, 55.5, 0.003)),
                new Reach(0.65, 0.011, 0.5),
                new Transport(0.03, 0.75, 0.75, 0.15, 5.6e-10, 0.5, 0.05, 1.0),
                new Nitrogen(28.0, 10.0, 0.02),
                new Acid(0.15, 8.0),
                new Settling(1.6, 8.0));
    }

    /** This set with other kinetics. */
    public Constants with(Kinetics other) {
        return new Constants(other, reach, transport, nitrogen, acid, settling);
    }

    /** This set with other transport constants. */
    public Constants with(Transport other) {
        return new Constants(kinetics, reach, other, nitrogen, acid, settling);
    }
}
