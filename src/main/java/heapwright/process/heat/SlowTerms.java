package heapwright.process.heat;

/**
 * What changes slowly: the geometry of the shells, their conductances, and every rate factor but that of temperature,
 * oxygen and acid. Brought up to date once a day by the fast course, at every call by the general right-hand side.
 */
final class SlowTerms {
    private static final double DAY_S = 86400;
    private static final double GRAVITY_BY_VISCOSITY = 9.81 / 1.8e-5;
    private static final double AIR_KG_M3 = 1.25;
    /** Diffusivity of oxygen in air, m²/s (physics). */
    private static final double DIFFUSIVITY = 2.0e-5;
    /** kg/m³ of oxygen per percent by volume. */
    private static final double OXYGEN_KG_M3 = 0.0133;
    /** Snow as it lies, g/cm³ (judgement). */
    private static final double SNOW_DENSITY = 0.2;
    /** Outdoor film h = 5.7 + 3.8 v (JURGES, from memory). */
    private static final double FILM_STILL = 5.7;

    private static final double FILM_WIND = 3.8;
    /** Conductance of a square lying on deep ground: 2.26 k sqrt(area) (physics). */
    private static final double GROUND_SHAPE = 2.26;

    /** Very loose matter passes this many times the air of an air space of 0.40, at most (judgement). */
    private static final double MOST_PORES = 12;

    /** Depth of a layer that vapour has to cross, m per m²·K/W: that of straw (judgement). */
    private static final double LAYER_DEPTH = 0.06;

    final int n;
    /** Heat conductance, W/K, between shell j − 1 and j; unused at 0 and n. */
    final double[] conductance;
    /** Diffusion of oxygen, kg/s per percent, across edge j; n is the skin. */
    final double[] diffusion;
    /** kg/s of air across edge j per kg/m³ of density difference. */
    final double[] flowPerDensity;
    /** Rates of the pools at 20 °C, 1/s, and the oxygen at half rate, %. */
    final double[] quickRate;

    final double[] slowRate;
    final double[] ligninRate;
    final double[] oxygenHalf;
    /** Vapour over the matter against saturation, 0–1. */
    final double[] humidity;

    final double[] ph;
    /** Nitrogen loss as ammonia per air of a strong draught, 1/s at the shell's temperature. */
    final double[] ammoniaRate;

    final double[] airSpace;
    final double[] moisture;
    private final double[] edge;
    private final double[] node;
    private final double[] conductivity;
    private final double[] dryMass;
    /** W/K from the outer shell to the air and to the ground. */
    double toAir;

    double toGround;
    /** Air equivalent of the drying skin, kg/s. */
    double drying;
    /** Horizontal area of the air path across the outer edge, m². */
    double skinCrossSection;

    double volume;

    SlowTerms(int n) {
        this.n = n;
        conductance = new double[n + 1];
        diffusion = new double[n + 1];
        flowPerDensity = new double[n + 1];
        quickRate = new double[n];
        slowRate = new double[n];
        ligninRate = new double[n];
        oxygenHalf = new double[n];
        humidity = new double[n];
        ph = new double[n];
        ammoniaRate = new double[n];
        airSpace = new double[n];
        moisture = new double[n];
        edge = new double[n + 1];
        node = new double[n];
        conductivity = new double[n];
        dryMass = new double[n];
    }

    /**
     * Brings all up to date.
     *
     * @param windMs wind, m/s
     * @param rateTimes multiplies every decay rate
     * @param lossTimes multiplies what leaves through skin and ground and with the draught
     */
    void update(Shells s, Constants c, double windMs, double rateTimes, double lossTimes) {
        matter(s, c, rateTimes);
        geometry(s);
        passages(s, c, lossTimes);
        skin(s, c, windMs, lossTimes);
    }

    private void matter(Shells s, Constants c, double rateTimes) {
        Constants.Kinetics k = c.kinetics();
        Constants.Transport t = c.transport();
        double size = Factors.pieces(s.pieceCm, k.halfSizeCm());
        double softSize = Math.sqrt(size);
        for (int i = 0; i < n; i++) {
            double dry = s.dry(i);
            double organic = s.organic(i);
            double water = s.water[i];
            double v = s.volume[i];
            double frozen = water * s.ice[i];
            dryMass[i] = dry;
            moisture[i] = water / (water + dry);
            airSpace[i] = Factors.airFilled(v, water - frozen, frozen, organic, s.ash[i]);
            conductivity[i] = t.conductivityBase()
                    + (t.conductivityWater() + t.conductivityIce() * s.ice[i]) * water / (1000 * v)
                    + t.conductivityDry() * dry / (1000 * v);
            double ratio = organic * Matter.CARBON_SHARE / Math.max(1e-9, s.nitrogen(i));
            double rate = Curves.moisture(moisture[i])
                    * Factors.airSpace(airSpace[i])
                    * Factors.nitrogen(ratio)
                    * rateTimes
                    / DAY_S;
            quickRate[i] = k.quickPerDay() * rate * softSize;
            slowRate[i] = k.slowPerDay() * rate * size;
            ligninRate[i] = k.ligninPerDay() * rate * size;
            oxygenHalf[i] = Factors.oxygenHalf(moisture[i]);
            double perDry = water / dry;
            humidity[i] = perDry / (perDry + 0.05);
            ph[i] = Factors.ph(s.acid[i], s.ammonium[i] / dry);
            double warm = s.temperature[i];
            ammoniaRate[i] = s.ice[i] >= 1
                    ? 0
                    : c.nitrogen().volatilePerDay()
                            / DAY_S
                            * Factors.freeAmmonia(ph[i], warm)
                            * Math.exp(0.05 * (warm - 20));
        }
    }

    /**
     * A sphere that cools as fast as the box: 1/R² = 1/l² + 1/w² + 1/h². Its shells count {@code times} over so that
     * the volume is that of the box.
     */
    private void geometry(Shells s) {
        volume = Shells.sum(s.volume);
        double height = volume / (s.length * s.width);
        double radius = 1 / Math.sqrt(1 / (s.length * s.length) + 1 / (s.width * s.width) + 1 / (height * height));
        double within = 0;
        for (int i = 0; i < n; i++) {
            within += s.volume[i];
            edge[i + 1] = radius * Math.cbrt(within / volume);
            double a = edge[i];
            double b = edge[i + 1];
            double a2 = a * a;
            double b2 = b * b;
            // The radius at which a parabola of the way out stands at the shell's mean.
            node[i] = Math.sqrt(0.6 * (b2 * b2 * b - a2 * a2 * a) / (b2 * b - a2 * a));
        }
    }

    private double times() {
        double r = edge[n];
        return volume / (4.0 / 3 * Math.PI * r * r * r);
    }

    private void passages(Shells s, Constants c, double lossTimes) {
        double times = times();
        double full = 4 * Math.PI * times;
        double resistance = 0;
        double fine = Math.max(0.1, Math.min(2, s.pieceCm / 2.5));
        for (int i = 0; i < n; i++) {
            double space = airSpace[i];
            double pores = space * space * space / ((1 - space) * (1 - space)) / 0.1778;
            double permeability = c.transport().permeability() * fine * Math.min(MOST_PORES, pores);
            resistance += (edge[i + 1] - edge[i]) / permeability;
        }
        double permeability = edge[n] / resistance;
        double flux = permeability * GRAVITY_BY_VISCOSITY * s.envelope.draught() * AIR_KG_M3 * lossTimes;
        for (int j = 1; j < n; j++) {
            double in = 1 / node[j - 1] - 1 / edge[j];
            double out = 1 / edge[j] - 1 / node[j];
            conductance[j] = full / (in / conductivity[j - 1] + out / conductivity[j]);
            diffusion[j] =
                    full * DIFFUSIVITY * OXYGEN_KG_M3 / (in / square(airSpace[j - 1]) + out / square(airSpace[j]));
        }
        for (int j = 1; j <= n; j++) {
            flowPerDensity[j] = flux * Math.PI * edge[j] * edge[j] * times;
        }
        skinCrossSection = Math.PI * edge[n] * edge[n] * times;
    }

    private void skin(Shells s, Constants c, double windMs, double lossTimes) {
        Envelope e = s.envelope;
        Constants.Transport t = c.transport();
        double times = times();
        double r = edge[n];
        double area = 4 * Math.PI * r * r * times;
        double height = volume / (s.length * s.width);
        double face = s.length * s.width;
        double side = 2 * (s.length + s.width) * height;
        double top = face / (2 * face + side);
        double half = 4 * Math.PI * times * conductivity[n - 1] / (1 / node[n - 1] - 1 / r);
        double film = 1 / (FILM_STILL + FILM_WIND * windMs * (1 - e.shelter()));
        double snow = s.snow / (1000 * SNOW_DENSITY) / Layer.snowConductivity(SNOW_DENSITY);
        double soil = Math.sqrt(face) / (GROUND_SHAPE * t.soilConductivity());
        double halfArea = area / half;
        toAir = lossTimes
                * (area * top / (halfArea + film + e.topResistance() + snow)
                        + area * (1 - 2 * top) / (halfArea + film + e.sideResistance()));
        toGround = lossTimes * area * top / (halfArea + e.groundResistance() + soil);
        double open = e.skinOpen();
        double outerDiffusion = 4 * Math.PI * times * DIFFUSIVITY * square(airSpace[n - 1]) / (1 / node[n - 1] - 1 / r);
        diffusion[n] = outerDiffusion * OXYGEN_KG_M3 * open;
        double layers = top * e.topResistance() + (1 - top) * e.sideResistance();
        drying = AIR_KG_M3 * area * open * DIFFUSIVITY * square(airSpace[n - 1]) / (t.crustM() + LAYER_DEPTH * layers);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Radius at which shell i stands at its mean temperature, m. */
    double nodeRadius(int i) {
        return node[i];
    }

    /** Radius of the sphere that stands for the pile, m. */
    double radius() {
        return edge[n];
    }
}
