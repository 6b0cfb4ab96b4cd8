package heapwright.process.mend;

import heapwright.process.dose.PileStock;

/**
 * What is in a pile, at likely values. Everything in it adds up, volume too.
 *
 * @param wetKg mass as it is, kg
 * @param waterKg water, kg
 * @param carbonKg carbon that a season reaches, kg
 * @param nitrogenKg nitrogen that comes free with it, kg
 * @param volumeM3 volume as it lies, cubic metres
 */
public record Heap(double wetKg, double waterKg, double carbonKg, double nitrogenKg, double volumeM3) {

    public static Heap of(PileStock stock) {
        return new Heap(
                stock.wetKg().likely(),
                stock.wetKg().likely() * stock.moisturePct().likely() / 100,
                stock.carbonKg().likely(),
                stock.nitrogenKg(),
                stock.volumeM3().likely());
    }

    /** The pile with some of a material added, and the water that it is dissolved in. */
    public Heap with(Offer offer, double kg) {
        return new Heap(
                wetKg + kg * (1 + offer.carrierKg()),
                waterKg + kg * (offer.of().water() + offer.carrierKg()),
                carbonKg + kg * offer.of().carbon(),
                nitrogenKg + kg * offer.of().nitrogen(),
                volumeM3 + kg / offer.densityKgM3());
    }

    public double moisturePct() {
        return 100 * waterKg / wetKg;
    }

    /** C:N, or infinity where there is carbon and no nitrogen. */
    public double carbonToNitrogen() {
        return carbonKg <= 0 ? 0 : carbonKg / nitrogenKg;
    }

    public double densityKgM3() {
        return wetKg / volumeM3;
    }
}
