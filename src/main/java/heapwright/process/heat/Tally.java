package heapwright.process.heat;

/** The running sums behind a {@link Ledger}. */
final class Tally {
    double heatReleased;
    double heatBrought;
    double heatConducted;
    double heatAired;
    double waterFormed;
    double waterBrought;
    double waterVapour;
    double waterDrained;
    double dryBrought;
    double dryLost;
    double nitrogenBrought;
    double nitrogenGas;
    double nitrogenDrained;
    /** Food for the quick and slow pools brought since the start, kg. */
    double foodBrought;

    final double heatStart;
    final double waterStart;
    final double dryStart;
    final double nitrogenStart;
    final double foodStart;

    Tally(Shells s) {
        heatStart = Shells.sum(s.heat);
        waterStart = Shells.sum(s.water);
        dryStart = dry(s);
        nitrogenStart = nitrogen(s);
        foodStart = food(s);
    }

    Tally(Tally o) {
        heatReleased = o.heatReleased;
        heatBrought = o.heatBrought;
        heatConducted = o.heatConducted;
        heatAired = o.heatAired;
        waterFormed = o.waterFormed;
        waterBrought = o.waterBrought;
        waterVapour = o.waterVapour;
        waterDrained = o.waterDrained;
        dryBrought = o.dryBrought;
        dryLost = o.dryLost;
        nitrogenBrought = o.nitrogenBrought;
        nitrogenGas = o.nitrogenGas;
        nitrogenDrained = o.nitrogenDrained;
        foodBrought = o.foodBrought;
        heatStart = o.heatStart;
        waterStart = o.waterStart;
        dryStart = o.dryStart;
        nitrogenStart = o.nitrogenStart;
        foodStart = o.foodStart;
    }

    static double dry(Shells s) {
        return Shells.sum(s.quick) + Shells.sum(s.slow) + Shells.sum(s.lignin) + Shells.sum(s.ash);
    }

    static double food(Shells s) {
        return Shells.sum(s.quick) + Shells.sum(s.slow);
    }

    static double nitrogen(Shells s) {
        return Shells.sum(s.nitrogenFood) + Shells.sum(s.nitrogenHumus) + Shells.sum(s.ammonium);
    }

    Ledger close(Shells s) {
        return new Ledger(
                heatStart,
                Shells.sum(s.heat),
                heatReleased,
                heatBrought,
                heatConducted,
                heatAired,
                waterStart,
                Shells.sum(s.water),
                waterFormed,
                waterBrought,
                waterVapour,
                waterDrained,
                dryStart,
                dry(s),
                dryBrought,
                dryLost,
                nitrogenStart,
                nitrogen(s),
                nitrogenBrought,
                nitrogenGas,
                nitrogenDrained);
    }
}
