package heapwright.process.heat;

/** The state of a run: one figure a shell, core first. Mutable, owned by one run, never shared. */
final class Shells {
    /** J/kg·K of dry matter, water and ice (HAUG93 for 1.05 and 4.19, from memory; ice: physics). */
    static final double DRY_J_K = 1050;

    static final double WATER_J_K = 4190;
    private static final double ICE_J_K = 2100;
    /** Heat of melting, J/kg (physics). */
    static final double MELT_J = 3.337e5;
    /** Shell edges at the power 0.6 of their rank: a small core, a thin skin (judgement). */
    private static final double SPACING = 1.8;
    /** Nitrogen of a kg of lignin-rich matter, against that of a kg of food: wood is poor in it (judgement). */
    private static final double LIGNIN_NITROGEN = 0.3;
    /** Number of quantities a shell, for {@link #copyTo}. */
    static final int QUANTITIES = 14;

    final int n;
    /** Heat, J, above all water liquid at 0 °C. */
    final double[] heat;

    final double[] water;
    final double[] quick;
    final double[] slow;
    final double[] lignin;
    final double[] ash;
    /** Nitrogen in what still decays, in humus and lignin, and as ammonium, kg. */
    final double[] nitrogenFood;

    final double[] nitrogenHumus;
    final double[] ammonium;
    final double[] acid;
    final double[] volume;
    /** How far the organisms of the cool and warm range have grown, 0–1. */
    final double[] mesophiles;

    /** How far those of the hot range have grown, 0–1. */
    final double[] thermophiles;

    /** Share of the food that organisms can get at, 0–1. */
    final double[] reach;

    /** Percent of oxygen: quasi-steady, kept as the next first guess. */
    final double[] oxygen;

    final double[] temperature;
    /** Frozen share of the water, 0–1. */
    final double[] ice;
    /** Share of the volume that will still settle under its own weight; one for the pile. */
    double loose;

    double pieceCm;
    final double length;
    final double width;
    /** Snow lying on top, kg/m². */
    double snow;

    Envelope envelope;

    Shells(PileState start, int n, Constants c) {
        this.n = n;
        heat = new double[n];
        water = new double[n];
        quick = new double[n];
        slow = new double[n];
        lignin = new double[n];
        ash = new double[n];
        nitrogenFood = new double[n];
        nitrogenHumus = new double[n];
        ammonium = new double[n];
        acid = new double[n];
        volume = new double[n];
        mesophiles = new double[n];
        thermophiles = new double[n];
        reach = new double[n];
        oxygen = new double[n];
        temperature = new double[n];
        ice = new double[n];
        length = start.lengthM();
        width = start.widthM();
        envelope = start.envelope();
        Matter m = start.matter();
        pieceCm = m.pieceCm();
        loose = start.stage().loose();
        Vigour grown = start.stage().vigour().orElse(Vigour.fresh(c));
        for (int i = 0; i < n; i++) {
            double inner = (double) i / n;
            double outer = (i + 1.0) / n;
            double share = Math.pow(outer, SPACING) - Math.pow(inner, SPACING);
            add(i, m, share);
            acid[i] = m.acidIndex();
            mesophiles[i] = grown.mesophiles();
            thermophiles[i] = grown.thermophiles();
            reach[i] = grown.reach();
            oxygen[i] = 18;
            heat[i] = heatAt(start.coreC() + (start.skinC() - start.coreC()) * way(i, n), dry(i), water[i]);
        }
        derive();
    }

    /** How far the middle of a shell is on the way from the core (0) to the skin (1), as temperatures go. */
    private static double way(int i, int n) {
        double out = Math.pow((i + 0.5) / n, SPACING / 3);
        return (out * out) / Math.pow((n - 0.5) / n, SPACING / 1.5);
    }

    /** The warmth of the core with which the innermost shell of a pile has a temperature, °C. */
    static double coreC(double innermostC, double skinC, int n) {
        double way = way(0, n);
        return (innermostC - skinC * way) / (1 - way);
    }

    Shells(Shells other) {
        n = other.n;
        heat = new double[n];
        water = new double[n];
        quick = new double[n];
        slow = new double[n];
        lignin = new double[n];
        ash = new double[n];
        nitrogenFood = new double[n];
        nitrogenHumus = new double[n];
        ammonium = new double[n];
        acid = new double[n];
        volume = new double[n];
        mesophiles = new double[n];
        thermophiles = new double[n];
        reach = new double[n];
        oxygen = new double[n];
        temperature = new double[n];
        ice = new double[n];
        length = other.length;
        width = other.width;
        copy(other);
    }

    /** Takes over the state of other shells of the same number and ground. */
    void copy(Shells other) {
        System.arraycopy(other.heat, 0, heat, 0, n);
        System.arraycopy(other.water, 0, water, 0, n);
        System.arraycopy(other.quick, 0, quick, 0, n);
        System.arraycopy(other.slow, 0, slow, 0, n);
        System.arraycopy(other.lignin, 0, lignin, 0, n);
        System.arraycopy(other.ash, 0, ash, 0, n);
        System.arraycopy(other.nitrogenFood, 0, nitrogenFood, 0, n);
        System.arraycopy(other.nitrogenHumus, 0, nitrogenHumus, 0, n);
        System.arraycopy(other.ammonium, 0, ammonium, 0, n);
        System.arraycopy(other.acid, 0, acid, 0, n);
        System.arraycopy(other.volume, 0, volume, 0, n);
        System.arraycopy(other.mesophiles, 0, mesophiles, 0, n);
        System.arraycopy(other.thermophiles, 0, thermophiles, 0, n);
        System.arraycopy(other.reach, 0, reach, 0, n);
        System.arraycopy(other.oxygen, 0, oxygen, 0, n);
        System.arraycopy(other.temperature, 0, temperature, 0, n);
        System.arraycopy(other.ice, 0, ice, 0, n);
        loose = other.loose;
        pieceCm = other.pieceCm;
        snow = other.snow;
        envelope = other.envelope;
    }

    /** Adds a share of matter to a shell, without its heat and acid. */
    void add(int i, Matter m, double share) {
        double dry = m.dryKg() * share;
        water[i] += m.waterKg() * share;
        quick[i] += dry * m.quickShare();
        slow[i] += dry * m.slowShare();
        lignin[i] += dry * m.ligninShare();
        ash[i] += dry * Math.max(0, 1 - m.quickShare() - m.slowShare() - m.ligninShare());
        double rich = m.quickShare() + m.slowShare();
        double weighed = rich + LIGNIN_NITROGEN * m.ligninShare();
        double bound = (m.nitrogenKg() - m.mineralNitrogenKg()) * share;
        double food = weighed > 0 ? rich / weighed : 0;
        nitrogenFood[i] += bound * food;
        nitrogenHumus[i] += bound * (1 - food);
        ammonium[i] += m.mineralNitrogenKg() * share;
        volume[i] += m.volumeM3() * share;
    }

    double organic(int i) {
        return quick[i] + slow[i] + lignin[i];
    }

    double dry(int i) {
        return quick[i] + slow[i] + lignin[i] + ash[i];
    }

    double nitrogen(int i) {
        return nitrogenFood[i] + nitrogenHumus[i] + ammonium[i];
    }

    /** Temperatures and ice from heat, by the enthalpy form. */
    void derive() {
        for (int i = 0; i < n; i++) {
            deriveOne(i, dry(i) * DRY_J_K);
        }
    }

    private void deriveOne(int i, double dryCapacity) {
        double h = heat[i];
        double melt = MELT_J * water[i];
        if (h >= 0) {
            temperature[i] = h / (dryCapacity + water[i] * WATER_J_K);
            ice[i] = 0;
        } else if (h > -melt) {
            temperature[i] = 0;
            ice[i] = -h / melt;
        } else {
            temperature[i] = (h + melt) / (dryCapacity + water[i] * ICE_J_K);
            ice[i] = 1;
        }
    }

    /** Temperature of a heat content; what is liquid or frozen warms by so many kelvin per joule. */
    static double temperatureOf(double heat, double perJouleLiquid, double melt, double perJouleFrozen) {
        return heat >= 0 ? heat * perJouleLiquid : heat > -melt ? 0 : (heat + melt) * perJouleFrozen;
    }

    /** Kelvin per joule at a heat content; 0 while ice and water stand together. */
    static double slopeOf(double heat, double perJouleLiquid, double melt, double perJouleFrozen) {
        return heat >= 0 ? perJouleLiquid : heat > -melt ? 0 : perJouleFrozen;
    }

    static double liquidCapacity(double dry, double water) {
        return dry * DRY_J_K + water * WATER_J_K;
    }

    static double frozenCapacity(double dry, double water) {
        return dry * DRY_J_K + water * ICE_J_K;
    }

    /** Heat content of matter at a temperature: all ice below 0 °C, all water at and above. */
    static double heatAt(double celsius, double dry, double water) {
        return celsius >= 0
                ? celsius * liquidCapacity(dry, water)
                : celsius * frozenCapacity(dry, water) - MELT_J * water;
    }

    static double sum(double[] all) {
        double sum = 0;
        for (double each : all) {
            sum += each;
        }
        return sum;
    }

    /** The quantities of a shell in a fixed order, for a general integrator. */
    double[][] quantities() {
        return new double[][] {
            heat,
            water,
            quick,
            slow,
            lignin,
            ash,
            nitrogenFood,
            nitrogenHumus,
            ammonium,
            acid,
            volume,
            mesophiles,
            thermophiles,
            reach
        };
    }

    void copyTo(double[] y) {
        double[][] all = quantities();
        for (int k = 0; k < QUANTITIES; k++) {
            System.arraycopy(all[k], 0, y, k * n, n);
        }
        y[QUANTITIES * n] = loose;
    }

    void copyFrom(double[] y) {
        double[][] all = quantities();
        for (int k = 0; k < QUANTITIES; k++) {
            System.arraycopy(y, k * n, all[k], 0, n);
        }
        loose = y[QUANTITIES * n];
        derive();
    }
}
