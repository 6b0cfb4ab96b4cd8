package heapwright.process.heat;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** One run of the model, a day at a time. Mutable, for one thread; {@link #Run(Run)} forks it. */
final class Run {
    static final int SHELLS = 8;
    /** Share by which a fresh pile still settles under its own weight (judgement). */
    static final double FRESH_LOOSE = 0.12;

    private static final double DAY_S = 86400;
    /** A step is chosen so that no inner shell moves more than this, K. */
    private static final double STEP_K = 1.2;

    private static final double LONGEST_S = DAY_S / 4;
    private static final double SHORTEST_S = 300;

    final Shells s;
    final Tally tally;
    final SlowTerms set;
    private final Constants c;
    private final Weather weather;
    private final Map<Integer, List<Event>> events;
    private final Air air;
    private final Heat heat;
    private final Decay decay;
    private final double[] was;
    private final double[] d = new double[Shells.QUANTITIES];
    int day;
    /** Multiplies every decay rate: the bias a measured course teaches. */
    double rateTimes = 1;
    /** Multiplies the loss of heat through skin and ground and with the draught: taught likewise. */
    double lossTimes = 1;

    /** It is known to stand higher still later on, so it does not settle below this, m³; 0 where nothing is known. */
    double standsM3;

    private double pace = 900;
    private double heatW;
    private boolean stood;

    Run(PileState start, Weather weather, List<Event> events, Constants c, int shells) {
        this(
                new Shells(start, shells, c),
                null,
                weather,
                events.stream().collect(Collectors.groupingBy(Event::day)),
                c);
        rateTimes = start.stage().rate();
        lossTimes = start.stage().loss();
    }

    /** A fork that goes on from the same state on its own. */
    Run(Run other) {
        this(new Shells(other.s), new Tally(other.tally), other.weather, other.events, other.c);
        goOnFrom(other);
    }

    /** Takes over the state of another run of the same pile; its sums of what came and went stay as they are. */
    void goOnFrom(Run other) {
        s.copy(other.s);
        day = other.day;
        rateTimes = other.rateTimes;
        lossTimes = other.lossTimes;
        standsM3 = other.standsM3;
        pace = other.pace;
        heatW = other.heatW;
    }

    private Run(Shells s, Tally tally, Weather weather, Map<Integer, List<Event>> events, Constants c) {
        this.s = s;
        this.tally = tally == null ? new Tally(s) : tally;
        this.weather = weather;
        this.events = events;
        this.c = c;
        set = new SlowTerms(s.n);
        air = new Air(s.n);
        heat = new Heat(s.n);
        decay = new Decay(s.n);
        was = new double[s.n];
    }

    /** Lets a day pass that was lived already; what is done on it is done at the start of the next. */
    void stand() {
        stood = true;
        day++;
    }

    /** Lives through one day: events, sky, then the hours. */
    void live() {
        Outdoors out = Outdoors.of(weather.airC(day), weather.groundC(day));
        if (stood && day == 1) {
            handle(0, out);
        }
        handle(day, out);
        Handling.sky(s, tally, out, weather.precipitationMm(day));
        set.update(s, c, weather.windMs(day), rateTimes, lossTimes);
        pace = Math.min(pace, DAY_S / 12);
        double left = DAY_S;
        while (left > 0) {
            double dt = Math.min(left, pace);
            if (left - dt < 0.3 * dt) {
                dt = left > LONGEST_S ? left / 2 : left;
            }
            left -= step(out, dt);
        }
        if (standsM3 > 0) {
            StateMark.keepUp(s, standsM3);
        }
        Handling.drain(s, tally);
        day++;
    }

    /**
     * Lives on until a day.
     *
     * @param until the first day that is not lived
     * @param marks what becomes known on the way, by day, none before today
     * @param lived told of each day
     */
    void liveOn(int until, List<StateMark> marks, Consumer<Run> lived) {
        int next = 0;
        while (day < until) {
            while (next < marks.size() && marks.get(next).day() == day) {
                StateMark mark = marks.get(next++);
                mark.apply(s, tally, c);
                standsM3 = mark.volumeM3().isPresent() ? 0 : standsM3;
            }
            live();
            lived.accept(this);
        }
    }

    private void handle(int of, Outdoors out) {
        for (Event event : events.getOrDefault(of, List.of())) {
            Handling.apply(event, s, tally, out, c);
        }
    }

    /** One step of dt seconds, or less where freezing shells ask for it; returns what was taken. */
    private double step(Outdoors out, double dt) {
        decay.assess(s, set, c, dt);
        air.draw(s, set, out.airC());
        air.breathe(s, set, decay.demand, 2);
        decay.kindle(s, set, c, heat.cool, heat.hot);
        System.arraycopy(s.temperature, 0, was, 0, s.n);
        if (!heat.step(s, set, air, c, out, dt)) {
            return step(out, dt / 4);
        }
        double brisk = air.briskness(set.skinCrossSection);
        decay.clear();
        double released = 0;
        for (int i = 0; i < s.n; i++) {
            released += heat.released[i];
            decay.rates(s, set, c, i, heat.released[i], brisk, dt, d);
            take(i, dt);
        }
        tally.heatReleased += released * dt;
        tally.heatConducted += heat.conducted * dt;
        tally.heatAired += heat.aired * dt;
        tally.waterFormed += decay.formedWater * dt;
        tally.waterVapour += heat.vapourOut * dt;
        tally.dryLost += decay.lostDry * dt;
        tally.nitrogenGas += decay.lostNitrogen * dt;
        s.loose -= s.loose * Math.min(1, dt / (c.settling().looseDays() * DAY_S));
        heatW = released;
        s.derive();
        double most = 0;
        for (int i = 0; i < s.n - 1; i++) {
            most = Math.max(most, Math.abs(s.temperature[i] - was[i]));
        }
        double want = dt * Math.min(2, STEP_K / Math.max(0.1, most));
        pace = Math.max(SHORTEST_S, Math.min(LONGEST_S, want));
        return dt;
    }

    private void take(int i, double dt) {
        double water = s.water[i] + dt * (heat.vapour[i] + d[1]);
        if (water < 0) {
            tally.waterVapour += water;
            water = 0;
        }
        s.water[i] = water;
        s.quick[i] = Math.max(0, s.quick[i] + dt * d[2]);
        s.slow[i] = Math.max(0, s.slow[i] + dt * d[3]);
        s.lignin[i] = Math.max(0, s.lignin[i] + dt * d[4]);
        s.nitrogenFood[i] = Math.max(0, s.nitrogenFood[i] + dt * d[6]);
        s.nitrogenHumus[i] += dt * d[7];
        s.ammonium[i] = Math.max(0, s.ammonium[i] + dt * d[8]);
        s.acid[i] = Factors.ramp(s.acid[i] + dt * d[9]);
        s.volume[i] += dt * d[10];
        s.mesophiles[i] = Factors.ramp(s.mesophiles[i] + dt * d[11]);
        s.thermophiles[i] = Factors.ramp(s.thermophiles[i] + dt * d[12]);
        s.reach[i] = Factors.ramp(s.reach[i] + dt * d[13]);
    }

    /** Today's readings, after {@link #live}. */
    Day read() {
        return DayReader.of(this, c, weather.airC(day - 1), heatW);
    }
}
