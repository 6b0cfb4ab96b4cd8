package heapwright.process.heat;

/**
 * The pile at the end of a day.
 *
 * @param day counted from 0
 * @param coreC temperature of the innermost shell, °C
 * @param midC mean over the volume, °C
 * @param skinC temperature of the outermost shell, °C
 * @param outdoorC outdoor temperature, °C
 * @param iceShare frozen share of all water, 0–1
 * @param coreIceShare frozen share of the water in the core, 0–1
 * @param moistureCore water as a share of wet mass in the core
 * @param moistureMean the same for the pile
 * @param oxygenCore percent by volume in the core
 * @param airSpaceCore air-filled share of the volume in the core
 * @param phCore pH in the core (an index, see docs/method/heat.md)
 * @param carbonToNitrogen C:N of the whole pile
 * @param volumeM3 volume
 * @param heightM height
 * @param massKg wet mass
 * @param dryKg dry matter
 * @param foodLeftShare quick and slow matter left, as a share of all that went in
 * @param nitrogenLostShare nitrogen lost, as a share of all that went in
 * @param heatW heat released over the last step, W
 * @param respiration what a damp, airy sample at 37 °C would breathe, mg CO2-C per g organic matter and day
 */
public record Day(
        int day,
        double coreC,
        double midC,
        double skinC,
        double outdoorC,
        double iceShare,
        double coreIceShare,
        double moistureCore,
        double moistureMean,
        double oxygenCore,
        double airSpaceCore,
        double phCore,
        double carbonToNitrogen,
        double volumeM3,
        double heightM,
        double massKg,
        double dryKg,
        double foodLeftShare,
        double nitrogenLostShare,
        double heatW,
        double respiration) {}
