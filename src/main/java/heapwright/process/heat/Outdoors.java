package heapwright.process.heat;

/**
 * The weather of one day, with what follows from it.
 *
 * @param airC air temperature, °C
 * @param groundC ground temperature, °C
 * @param airHeat heat of the outdoor air with its vapour, J per kg of dry air
 * @param vapourHeat the vapour's part of it
 * @param airWater kg of water per kg of dry air
 */
record Outdoors(double airC, double groundC, double airHeat, double vapourHeat, double airWater) {
    /** Usual outdoor humidity in the cold half of the year (judgement). */
    private static final double HUMIDITY = 0.85;

    static Outdoors of(double airC, double groundC) {
        double vapour = HUMIDITY * Curves.vapourHeat(airC);
        return new Outdoors(airC, groundC, Curves.AIR_J_K * airC + vapour, vapour, HUMIDITY * Curves.water(airC));
    }
}
