package heapwright.process.heat;

import static heapwright.process.heat.Fixtures.good;
import static heapwright.process.heat.Fixtures.rich;
import static heapwright.process.heat.Fixtures.run;

import java.util.List;
import java.util.stream.IntStream;

/** The piles on which published behaviour is tried; figures a source does not give are invented. */
final class Scenes {
    /** A wall of plastic, and foam round a bottle, m²·K/W on top of the still film of a room. */
    private static final Envelope BARREL = new Envelope(0.1, 0.1, 0.1, 1, 1, 1, 0, 1);

    private static final Envelope FOAMED = new Envelope(0.5, 0.5, 0.5, 1, 1, 1, 0, 1);

    private Scenes() {}

    /** A turn every so many days until a day. */
    static Event[] turns(int every, int until) {
        return IntStream.rangeClosed(1, until / every)
                .mapToObj(i -> (Event) new Event.Turn(i * every))
                .toArray(Event[]::new);
    }

    /** Rows 1 and 16: a well-built pile in mild weather. */
    static Course mild(double volumeM3, int days) {
        return run(good(volumeM3), 12, Envelope.slatted(), 12, days);
    }

    /** Rows 2 and 28: manure of a farm, 20 m³. */
    static Course farmManure(int days) {
        Matter manure = Matter.of(20, 550, 0.62, 0.22, 0.40, 0.22, 28, 3);
        return run(new PileState(6, 2.5, manure, 10, 10, Envelope.bare()), Weather.constant(12, days), days);
    }

    /** Row 3: two litres in foam, indoors. */
    static Course bottle() {
        return run(rich(0.002), 20, FOAMED, 20, 12);
    }

    /** Row 3: 40 litres in a bin of plastic with holes, indoors. */
    static Course barrel() {
        return run(rich(0.04), 20, BARREL, 20, 12);
    }

    /** Row 3: a windrow of a town. */
    static Course works() {
        return run(new PileState(8, 3, rich(40), 15, 15, Envelope.bare()), Weather.constant(15, 12), 12);
    }

    /** Row 4: 75 m³, insulated, at 30 °C outdoors. */
    static Course snug() {
        Envelope snug = new Envelope(5, 5, 5, 1, 1, 1, 0, 1);
        return run(new PileState(5, 5, rich(75), 30, 30, snug), Weather.constant(30, 60), 60);
    }

    /** Row 6: started mild, wrapped in straw, then at −10 and −20 °C by turns. */
    static Course deepCold(double volumeM3) {
        double[] air = new double[60];
        for (int d = 0; d < air.length; d++) {
            air[d] = d < 8 ? 8 : d % 2 == 0 ? -10 : -20;
        }
        Envelope strawed = Envelope.slatted().topped(Layer.straw(0.15)).wrapped(Layer.straw(0.10));
        return run(PileState.cube(rich(volumeM3), 15, strawed), Weather.daily(air), 60);
    }

    /** Row 12: a bin of a household, 20 L of mix on top every other day, at 2 °C outdoors. */
    static Course smallBin(boolean insulated) {
        Envelope foamed = Envelope.slatted().topped(Layer.foam(0.05)).wrapped(Layer.foam(0.05));
        PileState first = new PileState(0.67, 0.67, good(0.1), 10, 10, insulated ? foamed : Envelope.slatted());
        Event[] feeds = IntStream.range(1, 30)
                .mapToObj(i -> (Event) new Event.Add(2 * i, good(0.02), 10, false))
                .toArray(Event[]::new);
        return run(first, Weather.constant(2, 60), 60, feeds);
    }

    /** Row 14: a large farm pile in light frost. */
    static Course bigInFrost() {
        Matter mix = Matter.of(22, 500, 0.6, 0.3, 0.35, 0.2, 28, 3);
        return run(new PileState(6, 2.5, mix, 10, 10, Envelope.bare()), Weather.constant(-1, 40), 40);
    }

    /** Row 10: eight mild days, then steady frost. */
    static Course coldSnap(Event... events) {
        Envelope strawed = Envelope.slatted().topped(Layer.straw(0.1));
        Weather snap = Weather.constant(8, 60).withSpell(8, 60, 16);
        return run(PileState.cube(good(0.9), 15, strawed), snap, 40, events);
    }

    /** Row 15: highest power of fresh rich matter, well aired, in a bath of 57 °C, W per kg of dry matter. */
    static double peakPower() {
        Matter m = Matter.of(0.0002, 350, 0.6, 0.55, 0.25, 0.1, 25, 1).withAcid(0);
        PileState start = PileState.cube(m, 57, new Envelope(0, 0, 0, 1, 1, 1, 0, 0));
        RightHandSide rhs = new RightHandSide(start, 57, 57, 2, Fixtures.STANDARD, 3);
        return Midpoint.highest(rhs, 2, y -> rhs.releasedW() / rhs.dryKg(y));
    }

    /** Row 20: turned every week for six weeks. */
    static Course turnedWeekly() {
        return run(good(1), 15, Envelope.slatted(), 15, 200, turns(7, 42));
    }

    private static final Readiness ACTIVE = new Readiness(4, 25, 0);

    private static PileState manureHeap() {
        Matter manure = Matter.of(6, 520, 0.6, 0.22, 0.40, 0.22, 28, 3);
        return new PileState(3, 2, manure, 12, 12, Envelope.bare());
    }

    /** Row 21: days to the end of the active phase of manure, turned, in summer. */
    static int summerDays() {
        return ACTIVE.day(run(manureHeap(), Weather.constant(18, 300), 300, turns(14, 98)))
                .orElse(999);
    }

    /** Row 21: the same from October, in a mild winter. */
    static int winterDays() {
        Weather cold = Weather.monthly(new double[] {1, 2, 5, 8, 12, 15, 18, 17, 14, 9, 5, 2}, 300, 400);
        return ACTIVE.day(run(manureHeap(), cold, 400, turns(30, 120))).orElse(999);
    }

    /** Row 21: coarse dry leaves, untended. */
    static int leavesDays() {
        Matter leaves = Matter.of(0.6, 150, 0.45, 0.10, 0.40, 0.42, 54, 8);
        Weather years = Weather.monthly(Fixtures.NORTHERN, 300, 800);
        return ACTIVE.day(run(PileState.cube(leaves, 8, Envelope.bare()), years, 700))
                .orElse(999);
    }

    /** Row 22: days until half the food is gone, often turned. */
    static int halfFoodDays(double ratio) {
        Matter m = Matter.of(2, 450, 0.57, 0.35, 0.35, 0.2, ratio, 2);
        return run(m, 18, Envelope.bare(), 18, 90, turns(3, 60)).days().stream()
                .filter(d -> d.foodLeftShare() < 0.5)
                .mapToInt(Day::day)
                .findFirst()
                .orElse(90);
    }

    /** Row 23: a well-kept pile of C:N 30. */
    static Course toTheEnd() {
        Matter m = Matter.of(1.5, 500, 0.58, 0.35, 0.42, 0.13, 30, 2);
        return run(m, 15, Envelope.slatted(), 15, 300, turns(10, 90));
    }

    /** Row 24: share of nitrogen lost in 90 days, turned. */
    static double nitrogenLost(double ratio) {
        Matter m = Matter.of(1.5, 480, 0.57, 0.4, 0.35, 0.15, ratio, 3);
        return run(m, 18, Envelope.bare(), 18, 90, turns(4, 40)).last().nitrogenLostShare();
    }

    /** Row 25: food waste, sweet or sour, in straw. */
    static Course acidStart(double acidIndex, Event... events) {
        Matter food = Matter.of(0.8, 520, 0.60, 0.45, 0.3, 0.12, 24, 4).withAcid(acidIndex);
        Envelope snug = Envelope.slatted().topped(Layer.straw(0.1));
        return run(food, 28, snug, 15, 25, events);
    }

    /** Row 26: a rich pile turned so. */
    static Course turned(Event... events) {
        Matter m = Matter.of(3, 520, 0.6, 0.3, 0.38, 0.2, 18, 3);
        return run(m, 15, Envelope.bare(), 15, 60, events);
    }

    /** Row 27: leaves 1 × 2 × 0.6 m at 13 °C. */
    static Course leafBin() {
        Matter leaves = Matter.of(1.2, 250, 0.55, 0.18, 0.40, 0.35, 45, 4);
        return run(new PileState(1, 2, leaves, 13, 13, Envelope.bare()), Weather.constant(13, 10), 10);
    }

    /** Row 8: a covered windrow, frozen through, from −27 to +15 °C. */
    static Course frozenWindrow(double[] air) {
        Envelope covered = Envelope.bare().topped(Layer.finishedCompost(0.18)).wrapped(Layer.finishedCompost(0.18));
        Matter mix = Matter.of(6, 520, 0.6, 0.28, 0.38, 0.24, 28, 4);
        return run(new PileState(4, 1.5, mix, -4, -8, covered), Weather.daily(air), air.length);
    }

    /** Row 8: its weather. */
    static double[] warmingUp() {
        double[] air = new double[200];
        for (int d = 0; d < air.length; d++) {
            air[d] = d < 60 ? -27 + 15.0 * d / 60 : -12 + 27.0 * (d - 60) / 140;
        }
        return air;
    }

    /** Row 9: sludge with chips, started on a day of the year; the first day at 45 °C. */
    static int hotDay(int dayOfYear, double startC) {
        double[] cold = {-17, -14, -6, 4, 12, 17, 19, 18, 12, 5, -5, -13};
        // One part of sludge to two and a half of chips, by the tables: the mix of biosolids-started-in-winter.
        Matter sludge = Matter.of(14, 398, 0.62, 0.053, 0.363, 0.549, 16.1, 2.6);
        PileState start = new PileState(5, 2, sludge, startC, startC, Envelope.bare());
        return run(start, Weather.monthly(cold, dayOfYear, 220), 220)
                .firstAtLeast(45)
                .orElse(999);
    }

    /** Row 18: 4 m³ with so many times the usual draught. */
    static Course drawn(double times) {
        Constants c = Fixtures.STANDARD.with(Fixtures.STANDARD.transport().varied(1, times));
        PileState start = PileState.cube(good(4), 15, Envelope.bare());
        return HeatModel.run(start, Weather.constant(12, 20), List.of(), 20, c);
    }

    /** Row 19: food left after 30 days at a moisture and density. */
    static double decayed(double moisture, double density) {
        Matter m = Matter.of(0.8, density, moisture, 0.25, 0.4, 0.25, 28, 4);
        return 1 - run(m, 15, Envelope.slatted(), 12, 30).last().foodLeftShare();
    }
}
