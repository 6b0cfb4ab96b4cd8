package heapwright.process.heat;

/**
 * A body of compostable matter, thoroughly mixed.
 *
 * @param dryKg dry matter, kg, more than 0
 * @param waterKg water, kg, 0 or more
 * @param quickShare share of dry matter that decays quickly (sugars, starch, protein, soft tissue), 0–1
 * @param slowShare share that decays slowly (cellulose-like), 0–1
 * @param ligninShare share that hardly decays (lignin-rich), 0–1; what is left over is ash
 * @param nitrogenKg all nitrogen, kg
 * @param mineralNitrogenKg part of it that is ammonium or urea, kg
 * @param volumeM3 volume as heaped, m³, more than 0
 * @param pieceCm usual piece size, cm, more than 0
 * @param acidIndex 0 (none) to 1 (pH about 4.5), see docs/method/heat.md
 */
public record Matter(
        double dryKg,
        double waterKg,
        double quickShare,
        double slowShare,
        double ligninShare,
        double nitrogenKg,
        double mineralNitrogenKg,
        double volumeM3,
        double pieceCm,
        double acidIndex) {
    /** Carbon as a share of organic matter (VS/1.8 gives 0.55; plants 0.45–0.60). */
    static final double CARBON_SHARE = 0.5;

    public Matter {
        Checks.above("dryKg", dryKg, 0);
        Checks.within("waterKg", waterKg, 0, 1e6);
        Checks.within("quickShare", quickShare, 0, 1);
        Checks.within("slowShare", slowShare, 0, 1);
        Checks.within("ligninShare", ligninShare, 0, 1);
        Checks.within("quickShare + slowShare + ligninShare", quickShare + slowShare + ligninShare, 0, 1 + 1e-9);
        Checks.within("nitrogenKg", nitrogenKg, 0, 1e5);
        Checks.within("mineralNitrogenKg", mineralNitrogenKg, 0, nitrogenKg);
        Checks.above("volumeM3", volumeM3, 0);
        Checks.above("pieceCm", pieceCm, 0);
        Checks.within("acidIndex", acidIndex, 0, 1);
    }

    /**
     * Matter of a volume, by the figures a gardener can estimate.
     *
     * @param volumeM3 volume, m³
     * @param densityKgM3 wet bulk density, kg/m³
     * @param moisture water as a share of wet mass, 0 to below 1
     * @param quickShare see {@link Matter}
     * @param slowShare see {@link Matter}
     * @param ligninShare see {@link Matter}
     * @param carbonToNitrogen C:N of the mix, more than 0
     * @param pieceCm piece size, cm
     */
    public static Matter of(
            double volumeM3,
            double densityKgM3,
            double moisture,
            double quickShare,
            double slowShare,
            double ligninShare,
            double carbonToNitrogen,
            double pieceCm) {
        Checks.within("moisture", moisture, 0, 0.99);
        Checks.above("carbonToNitrogen", carbonToNitrogen, 0);
        double wet = volumeM3 * densityKgM3;
        double dry = wet * (1 - moisture);
        double nitrogen = dry * (quickShare + slowShare + ligninShare) * CARBON_SHARE / carbonToNitrogen;
        return new Matter(dry, wet - dry, quickShare, slowShare, ligninShare, nitrogen, 0, volumeM3, pieceCm, 0.2);
    }

    /** Water as a share of wet mass. */
    public double moisture() {
        return waterKg / (waterKg + dryKg);
    }

    /** The same matter with another acid index. */
    public Matter withAcid(double index) {
        return new Matter(
                dryKg,
                waterKg,
                quickShare,
                slowShare,
                ligninShare,
                nitrogenKg,
                mineralNitrogenKg,
                volumeM3,
                pieceCm,
                index);
    }

    /** The same matter with another piece size, cm. */
    public Matter withPieces(double cm) {
        return new Matter(
                dryKg,
                waterKg,
                quickShare,
                slowShare,
                ligninShare,
                nitrogenKg,
                mineralNitrogenKg,
                volumeM3,
                cm,
                acidIndex);
    }

    /** The same matter with another amount of nitrogen, kg. */
    public Matter withNitrogen(double kg) {
        return new Matter(
                dryKg,
                waterKg,
                quickShare,
                slowShare,
                ligninShare,
                kg,
                mineralNitrogenKg,
                volumeM3,
                pieceCm,
                acidIndex);
    }

    /** The same dry matter at another moisture, as share of wet mass, and another volume, m³. */
    public Matter withWater(double moisture, double volume) {
        return new Matter(
                dryKg,
                dryKg * moisture / (1 - moisture),
                quickShare,
                slowShare,
                ligninShare,
                nitrogenKg,
                mineralNitrogenKg,
                volume,
                pieceCm,
                acidIndex);
    }
}
