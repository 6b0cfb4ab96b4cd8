package heapwright.process.heat;

import static heapwright.process.heat.Behaviour.Band.atLeast;
import static heapwright.process.heat.Behaviour.Band.atMost;
import static heapwright.process.heat.Behaviour.Band.of;

import heapwright.process.heat.Behaviour.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** The figures of the model beside what was published: the table of docs/method/heat.md. */
public final class Behaviours {
    private final List<Behaviour> all = new ArrayList<>();

    private Behaviours() {
        warmth();
        winter();
        losses();
        nitrogen();
    }

    /** All of them, in the order of the acceptance list. */
    public static List<Behaviour> all() {
        return new Behaviours()
                .all.stream()
                        .sorted(java.util.Comparator.comparingInt(Behaviour::row))
                        .toList();
    }

    /** The table as it stands in the paper. */
    public static String table() {
        StringBuilder table = new StringBuilder(
                "| # | figure | source | published | held | model | in it |\n|---|---|---|---|---|---|---|\n");
        for (Behaviour b : all()) {
            table.append(b.line()).append('\n');
        }
        return table.toString();
    }

    /** Prints the table. */
    public static void main(String[] args) {
        System.out.print(table());
    }

    private void add(int row, String what, String source, int digits, Band published, Band held, DoubleSupplier model) {
        all.add(new Behaviour(row, what, source, digits, published, held, model));
    }

    private void add(int row, String what, String source, int digits, Band published, DoubleSupplier model) {
        add(row, what, source, digits, published, published, model);
    }

    private void warmth() {
        Course small = Scenes.mild(0.4, 40);
        Course middle = Scenes.mild(1, 60);
        add(1, "0.4 m³ at 12 °C, core on day 7, °C", "OSUEXT", 0, atLeast(40), () -> Fixtures.core(small, 6));
        add(
                1,
                "0.8 m³ at 12 °C, core on day 7, °C",
                "OSUEXT",
                0,
                atLeast(40),
                () -> Fixtures.core(Scenes.mild(0.8, 7), 6));
        add(
                1,
                "1 m³ at 12 °C, peak, °C",
                "NMSU21 38–60, CORNPHYS under 65; usual in practice, no source",
                1,
                of(54, 67),
                of(54, 69),
                middle::peakC);
        add(
                1,
                "1 m³ at 12 °C, days at 55 °C",
                "judgement: weeks, not months",
                0,
                of(5, 40),
                () -> middle.daysAtLeast(55));
        Course farm = Scenes.farmManure(240);
        add(2, "farm pile 20 m³, peak, °C", "NRCS317", 0, of(55, 77), farm::peakC);
        add(2, "the same, core on day 25, °C", "NRCS317", 0, atLeast(43), () -> Fixtures.core(farm, 24));
        Course bottle = Scenes.bottle();
        Course barrel = Scenes.barrel();
        Course works = Scenes.works();
        add(3, "2 L bottle indoors, peak, °C", "CORNPHYS", 0, of(30, 40), of(28, 44), bottle::peakC);
        add(
                3,
                "40 L bin indoors, core on day 3, °C",
                "CORNPHYS",
                0,
                of(40, 50),
                of(40, 65),
                () -> Fixtures.core(barrel, 2));
        add(
                3,
                "the same, day it passes 40 °C (0 is the first)",
                "CORNPHYS",
                0,
                of(1, 2),
                of(1, 3),
                () -> barrel.firstAtLeast(40).orElse(99));
        add(3, "the same, peak, °C", "CORNPHYS: between bottle and town", 0, of(40, 70), barrel::peakC);
        add(3, "windrow of a town, peak, °C", "CORNPHYS", 0, of(60, 70), of(60, 71), works::peakC);
        add(
                3,
                "the same, day it passes 60 °C",
                "CORNPHYS",
                0,
                of(2, 4),
                of(1, 5),
                () -> works.firstAtLeast(60).orElse(99));
        add(
                4,
                "75 m³, insulated, at 30 °C, peak, °C",
                "FINHOG93 70–80; CORNPHYS die above 65",
                0,
                of(65, 80),
                Scenes.snug()::peakC);
        Course large = Scenes.bigInFrost();
        add(14, "22 m³ at −1 °C, peak, °C", "RODALE 71", 0, of(66, 76), large::peakC);
        add(14, "the same, days of 40 at 54 °C", "RODALE: months", 0, atLeast(25), () -> large.daysAtLeast(54));
        add(12, "0.3 m³ at 2 °C, open bin, peak, °C", "ARJANG", 0, atMost(40), Scenes.smallBin(false)::peakC);
        add(12, "the same insulated, peak, °C", "ARJANG", 0, of(60, 70), of(58, 72), Scenes.smallBin(true)::peakC);
        Course leaves = Scenes.leafBin();
        add(
                27,
                "leaves 1 × 2 × 0.6 m at 13 °C, core on day 7, °C",
                "private observation 53, weak",
                0,
                of(48, 58),
                of(41, 65),
                () -> Fixtures.core(leaves, 6));
        add(
                27,
                "the same, height lost, cm",
                "private observation 10, weak",
                0,
                of(5, 15),
                () -> 60 - 100 * leaves.days().get(6).heightM());
        add(28, "farm manure, days at 49 °C", "WSUWHAT: weeks", 0, of(14, 60), () -> farm.daysAtLeast(49));
        add(
                28,
                "the same, days at 28–49 °C",
                "WSUWHAT: near 38 after",
                0,
                atLeast(10),
                () -> farm.daysAtLeast(28) - farm.daysAtLeast(49));
    }

    private void winter() {
        Course yard = Scenes.deepCold(0.8);
        Course tiny = Scenes.deepCold(0.12);
        add(
                6,
                "0.8 m³ at −10 and −20 °C, lowest core of days 9–36, °C",
                "KING12",
                0,
                atLeast(38),
                () -> lowest(yard, 8, 36));
        add(
                6,
                "0.12 m³ the same, day frozen through",
                "KING12",
                0,
                of(8, 60),
                () -> tiny.firstFrozenThrough().orElse(99));
        double[] air = Scenes.warmingUp();
        Course windrow = Scenes.frozenWindrow(air);
        add(
                8,
                "frozen windrow, outdoors when it passes 45 °C, °C",
                "LYNCH96",
                0,
                of(-5, 15),
                () -> air[windrow.firstAtLeast(45).orElse(0)]);
        add(9, "sludge from 20 October, day at 45 °C", "MCC05", 0, atMost(30), () -> Scenes.hotDay(293, 10));
        add(
                9,
                "sludge from 10 January, day at 45 °C",
                "MCC05: not before summer",
                0,
                of(90, 200),
                () -> Scenes.hotDay(10, 0));
        Course left = Scenes.coldSnap();
        Course turned = Scenes.coldSnap(new Event.Turn(20));
        add(
                10,
                "turned on day 21 at −8 °C: part of its heat above outdoors lost",
                "MCC05, WSUWHAT: much",
                2,
                of(0.2, 0.6),
                () -> heatLost(left, turned));
        add(
                10,
                "the same, days until as warm as the day before",
                "WSUWHAT: long in winter",
                0,
                atLeast(2),
                atLeast(0),
                () -> recovery(turned, 20));
        add(
                10,
                "1 m³ at 12 °C turned on day 8, days until as warm again",
                "common practice, no source: 1–3",
                0,
                of(1, 3),
                of(0, 3),
                () -> recovery(Fixtures.run(Fixtures.good(1), 12, Envelope.slatted(), 12, 40, new Event.Turn(7)), 7));
    }

    private static double lowest(Course course, int from, int to) {
        return course.days().subList(from, to).stream()
                .mapToDouble(Day::coreC)
                .min()
                .orElseThrow();
    }

    /** Of the heat the pile held above outdoors the evening before. */
    private static double heatLost(Course left, Course turned) {
        Day before = left.days().get(19);
        double water = before.massKg() - before.dryKg();
        double held = Shells.liquidCapacity(before.dryKg(), water) * (before.midC() - before.outdoorC());
        return (left.ledger().heatBrought() - turned.ledger().heatBrought()) / held;
    }

    private static double recovery(Course turned, int day) {
        double before = Fixtures.core(turned, day - 1) - 3;
        for (int d = day; d < turned.days().size(); d++) {
            if (Fixtures.core(turned, d) >= before) {
                return d - day;
            }
        }
        return 99;
    }

    private void losses() {
        add(
                15,
                "rich matter well aired at 57 °C, highest power, W/kg",
                "MOTE82, GINK96",
                1,
                of(20, 30),
                Scenes::peakPower);
        Course drawn = Scenes.drawn(40);
        Course own = Scenes.drawn(1);
        add(
                18,
                "40 times the draught, part of the heat that leaves with air",
                "FINHOG93, forced air",
                3,
                of(0.8, 0.9),
                of(0.7, 0.95),
                () -> aired(drawn));
        add(18, "the same in a passive pile", "judgement: less", 2, of(0.15, 0.6), () -> aired(own));
        double best = Scenes.decayed(0.57, 480);
        add(
                19,
                "food gone in 30 days at 25 % water, against 57 %",
                "CORNMIX: stops",
                2,
                atMost(0.15),
                () -> Scenes.decayed(0.25, 280) / best);
        add(19, "at 36 %", "CORNMIX: slow", 2, of(0.2, 0.7), () -> Scenes.decayed(0.36, 340) / best);
        add(19, "at 74 %, dense", "CORNMOIST: starved of air", 2, atMost(0.6), () -> Scenes.decayed(0.74, 850) / best);
        Course weekly = Scenes.turnedWeekly();
        add(
                20,
                "volume left after a month, turned",
                "a city programme",
                3,
                of(0.4, 0.6),
                of(0.4, 0.68),
                () -> weekly.days().get(30).volumeM3());
        add(
                20,
                "volume left in the end",
                "SASK08",
                2,
                of(0.3, 0.5),
                () -> weekly.last().volumeM3());
        add(21, "manure in summer, days active", "WSUWHAT 1–3 months", 0, of(30, 95), () -> Scenes.summerDays());
        add(21, "manure in winter, days active", "WSUWHAT 3–6 months", 0, of(90, 190), () -> Scenes.winterDays());
        add(21, "untended leaves, days (999: not within 700)", "CORNFAQ", 0, atLeast(365), () -> Scenes.leavesDays());
        add(
                22,
                "days to half the food at C:N 30",
                "GOT56: 10–16 to the end",
                0,
                of(8, 20),
                () -> Scenes.halfFoodDays(30));
        add(
                22,
                "C:N 78 against 30, times as long",
                "GOT56 (derived)",
                2,
                of(1.2, 2.0),
                of(1.2, 2.3),
                () -> Scenes.halfFoodDays(78) / (double) Scenes.halfFoodDays(30));
        add(
                23,
                "C:N in the end, from 30",
                "IDAHO",
                1,
                of(10, 15),
                of(9.5, 16),
                () -> Scenes.toTheEnd().last().carbonToNitrogen());
    }

    private void nitrogen() {
        add(
                24,
                "nitrogen lost at C:N 20, %",
                "GOT56 39 and 48; EGH97 19–42",
                0,
                of(19, 48),
                () -> 100 * Scenes.nitrogenLost(20));
        add(24, "at C:N 22, %", "GOT56 15", 0, of(10, 35), () -> 100 * Scenes.nitrogenLost(22));
        add(24, "at C:N 15, %", "EKL00, MARTD92 43–77", 0, of(40, 77), of(30, 77), () -> 100 * Scenes.nitrogenLost(15));
        add(24, "at C:N 30, %", "GOT56 0.5", 1, of(-1, 3), of(-1, 6), () -> 100 * Scenes.nitrogenLost(30));
        Course sweet = Scenes.acidStart(0.1);
        Course sour = Scenes.acidStart(0.95);
        add(
                25,
                "food waste not sour, day at 55 °C",
                "SUND05: control",
                0,
                atMost(4),
                () -> sweet.firstAtLeast(55).orElse(99));
        add(
                25,
                "sour, days later than that",
                "SUND05: severely inhibited",
                0,
                atLeast(4),
                () -> sour.firstAtLeast(55).orElse(99) - sweet.firstAtLeast(55).orElse(99));
        Course once = Scenes.turned(new Event.Turn(14));
        Course often = Scenes.turned(Scenes.turns(4, 48));
        add(
                26,
                "12 turns against 1: more dry matter lost, %",
                "GETA12: more",
                1,
                atLeast(0.1),
                () -> 100 * (often.ledger().dryLost() / once.ledger().dryLost() - 1));
        add(
                26,
                "the same, more nitrogen lost, points",
                "GETA12: more",
                1,
                atLeast(0.1),
                () -> 100 * (often.last().nitrogenLostShare() - once.last().nitrogenLostShare()));
    }

    private static double aired(Course course) {
        return course.ledger().heatAired() / course.ledger().heatReleased();
    }
}
