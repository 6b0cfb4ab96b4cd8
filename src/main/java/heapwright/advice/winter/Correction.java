package heapwright.advice.winter;

import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Factors;
import heapwright.process.heat.Matter;
import heapwright.process.heat.Setup;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * One thing put right in a pile from its beginning, all else as it was. What is right is judgement: the figures of a
 * healthy pile in docs/method/heat.md, and a cubic metre.
 */
final class Correction {

    private static final double GOOD_MOISTURE = 0.57;
    static final double DRY = 0.50;
    static final double WET = 0.62;
    /** Where there is room for air, kg/m³. */
    private static final double DENSE = 600;

    private static final double LOOSE = 500;
    private static final double GOOD_RATIO = 30;
    private static final double GOOD_CM = 5;
    private static final double GOOD_ACID = 0.1;
    static final double SOUR_PH = 6.5;
    /** The acid index of that pH (docs/method/heat.md, section 4). */
    static final double SOUR = Factors.acidIndex(SOUR_PH);

    private static final double FRESH_QUICK = 0.25;
    private static final double FRESH_SLOW = 0.40;
    private static final double GOOD_M3 = 1;
    private static final double MILD_C = 15;
    private static final double OPEN = 0.5;
    /** Water and acid are kept right by putting them right so often, days. */
    private static final int WEEK = 7;

    private final Setup told;
    private final Course course;
    private final IntPredicate airless;

    /** @param course what comes of it as told */
    Correction(Setup told, Course course) {
        this.told = told;
        this.course = course;
        this.airless = day -> day < told.days() && there(Factor.AIR, day);
    }

    private Correction(Setup told, Course course, IntPredicate airless) {
        this.told = told;
        this.course = course;
        this.airless = airless;
    }

    /** The same on another ground: what soured for want of air did so where it stands. */
    Correction on(Setup ground, Course plain) {
        return new Correction(ground, plain, airless);
    }

    /** The pile with one thing put right; empty where that is right, or cannot be put. */
    Optional<Setup> of(Factor factor) {
        return switch (factor) {
            case WATER -> damp();
            case AIR -> airy();
            case NITROGEN -> fed();
            case ACID -> sweet();
            case PIECES -> finer();
            case FOOD -> richer();
            case SIZE -> larger();
            case SHELTER -> Optional.of(sheltered());
            case HANDLING -> left();
            case COLD -> Optional.of(mild(told));
            default -> Optional.empty();
        };
    }

    /** Whether a fault is there on a day; what was put right since holds nothing back any more. */
    boolean there(Factor factor, int day) {
        Day then = course.days().get(day);
        return switch (factor) {
            case WATER -> Math.min(then.moistureMean(), then.moistureCore()) < DRY;
            case AIR ->
                then.moistureMean() > WET
                        || then.massKg() / then.volumeM3() > DENSE
                        || shut()
                        || RecordedFaults.airlessOn(day, told.marks());
            case NITROGEN -> then.carbonToNitrogen() > GOOD_RATIO;
            case ACID -> then.phCore() < SOUR_PH;
            case PIECES -> matter().pieceCm() > GOOD_CM;
            default -> false;
        };
    }

    /** The first of some days on which a fault is there that is there on the last of them. */
    int since(Factor factor, int from, int to) {
        return IntStream.range(from, to)
                .filter(day -> there(factor, day))
                .findFirst()
                .orElse(to);
    }

    private boolean shut() {
        Envelope e = told.start().envelope();
        return e.topOpen() < 0.1 || e.sideOpen() < 0.05;
    }

    private Matter matter() {
        return told.start().matter();
    }

    /** A cubic metre of it where it is less, in mild weather: only a fault of the pile itself holds that back. */
    Setup onGoodGround() {
        return mild(larger().orElse(told));
    }

    private static Setup mild(Setup setup) {
        return setup.in(Weather.constant(MILD_C, setup.days()).withPrecipitation(1));
    }

    private Optional<Setup> damp() {
        boolean dryAtFirst = matter().moisture() < DRY;
        boolean marked = told.marks().stream().anyMatch(m -> RecordedFaults.drier(m, DRY));
        List<StateMark> kept = weekly(d -> d.moistureMean() < DRY || d.moistureCore() < DRY, moisture());
        if (!dryAtFirst && !marked && kept.isEmpty()) {
            return Optional.empty();
        }
        List<StateMark> marks = new ArrayList<>(kept);
        told.marks().stream()
                .map(m -> RecordedFaults.drier(m, DRY) ? at(m.day(), moisture()) : m)
                .forEach(marks::add);
        Setup damp = dryAtFirst ? told.with(matter().withWater(GOOD_MOISTURE, matter().volumeM3())) : told;
        return Optional.of(damp.marked(marks));
    }

    private Optional<Setup> airy() {
        Matter m = matter();
        double wet = m.dryKg() + m.waterKg();
        boolean soaked = m.moisture() > WET;
        boolean dense = wet / m.volumeM3() > DENSE;
        boolean shut = shut();
        boolean marked =
                told.marks().stream().anyMatch(k -> RecordedFaults.wetter(k, WET) || RecordedFaults.airless(k));
        List<StateMark> kept = weekly(d -> d.moistureMean() > WET, moisture());
        if (!soaked && !dense && !shut && !marked && kept.isEmpty()) {
            return Optional.empty();
        }
        Setup airy = told;
        if (soaked || dense) {
            double moisture = Math.min(GOOD_MOISTURE, m.moisture());
            double now = m.dryKg() / (1 - moisture);
            airy = airy.with(m.withWater(moisture, now / m.volumeM3() > DENSE ? now / LOOSE : m.volumeM3()));
        }
        if (shut) {
            airy = airy.with(
                    airy.start().with(Surroundings.unsealed(told.start().envelope())));
        }
        List<StateMark> marks = new ArrayList<>(kept);
        told.marks().stream()
                .filter(k -> k.volumeM3().isEmpty() || !dense && !soaked)
                .map(k -> RecordedFaults.wetter(k, WET) ? at(k.day(), moisture()) : k)
                .map(k -> RecordedFaults.airless(k)
                        ? StateMark.noticed(k.day(), k.bounds().get().airy())
                        : k)
                .map(this::notSoured)
                .forEach(marks::add);
        return Optional.of(airy.marked(marks));
    }

    /** Sourness beyond what the recipe brings, where there was no air, came of that and goes with it. */
    private StateMark notSoured(StateMark mark) {
        boolean soured = mark.acidIndex().orElse(0) > matter().acidIndex();
        return soured && airless.test(mark.day())
                ? new StateMark(mark.day(), mark.moisture(), OptionalDouble.empty(), mark.volumeM3(), mark.bounds())
                : mark;
    }

    private Optional<Setup> fed() {
        Matter m = matter();
        double organic = m.dryKg() * (m.quickShare() + m.slowShare() + m.ligninShare());
        double nitrogen = organic / 2 / GOOD_RATIO;
        return nitrogen <= m.nitrogenKg() ? Optional.empty() : Optional.of(told.with(m.withNitrogen(nitrogen)));
    }

    private Optional<Setup> sweet() {
        List<StateMark> kept = weekly(d -> d.phCore() < SOUR_PH, acid());
        boolean marked = told.marks().stream().anyMatch(k -> k.acidIndex().orElse(0) > GOOD_ACID);
        if (matter().acidIndex() <= GOOD_ACID && kept.isEmpty() && !marked) {
            return Optional.empty();
        }
        List<StateMark> marks = new ArrayList<>(kept);
        told.marks().stream()
                .map(k -> k.acidIndex().orElse(0) > GOOD_ACID ? at(k.day(), acid()) : k)
                .forEach(marks::add);
        return Optional.of(told.with(matter().withAcid(Math.min(GOOD_ACID, matter().acidIndex())))
                .marked(marks));
    }

    private Optional<Setup> finer() {
        return matter().pieceCm() > GOOD_CM ? Optional.of(told.with(matter().withPieces(GOOD_CM))) : Optional.empty();
    }

    private Optional<Setup> richer() {
        Matter m = matter();
        double quick = Math.max(FRESH_QUICK, m.quickShare());
        double slow = Math.max(Math.min(FRESH_SLOW, 1 - quick), m.slowShare());
        return quick + slow <= m.quickShare() + m.slowShare() + 1e-9
                ? Optional.empty()
                : Optional.of(told.with(food(m, quick, Math.min(slow, 1 - quick))));
    }

    static Matter food(Matter m, double quick, double slow) {
        return new Matter(
                m.dryKg(),
                m.waterKg(),
                quick,
                slow,
                Math.max(0, Math.min(m.ligninShare(), 1 - quick - slow)),
                m.nitrogenKg(),
                m.mineralNitrogenKg(),
                m.volumeM3(),
                m.pieceCm(),
                m.acidIndex());
    }

    private Optional<Setup> larger() {
        double most = course.days().stream().mapToDouble(Day::volumeM3).max().orElse(0);
        double times = GOOD_M3 / Math.max(most, matter().volumeM3());
        if (times <= 1) {
            return Optional.empty();
        }
        return Optional.of(new Setup(
                LargerPile.pile(told.start(), times),
                told.weather(),
                told.events().stream().map(e -> LargerPile.event(e, times)).toList(),
                told.marks().stream()
                        .map(k -> new StateMark(
                                k.day(),
                                k.moisture(),
                                k.acidIndex(),
                                k.volumeM3().isPresent()
                                        ? OptionalDouble.of(k.volumeM3().getAsDouble() * times)
                                        : OptionalDouble.empty(),
                                k.bounds()))
                        .toList(),
                told.days()));
    }

    private Setup sheltered() {
        return told.with(told.start().with(Surroundings.insulated(told.start().envelope())))
                .doing(told.events().stream()
                        .map(e -> e instanceof Event.Cover c
                                ? new Event.Cover(c.day(), Surroundings.insulated(c.envelope()))
                                : e)
                        .toList());
    }

    private Optional<Setup> left() {
        List<Event> quiet = told.events().stream()
                .filter(e -> !(e instanceof Event.Turn || e instanceof Event.Loosen))
                .toList();
        return quiet.size() == told.events().size() ? Optional.empty() : Optional.of(told.doing(quiet));
    }

    private List<StateMark> weekly(Predicate<Day> amiss, StateMark right) {
        List<StateMark> all = new ArrayList<>();
        for (int day = WEEK; day < told.days(); day += WEEK) {
            if (amiss.test(course.days().get(day))) {
                all.add(at(day, right));
            }
        }
        return all;
    }

    private static StateMark at(int day, StateMark mark) {
        return new StateMark(day, mark.moisture(), mark.acidIndex(), OptionalDouble.empty());
    }

    private static StateMark moisture() {
        return new StateMark(0, OptionalDouble.of(GOOD_MOISTURE), OptionalDouble.empty());
    }

    private static StateMark acid() {
        return new StateMark(0, OptionalDouble.empty(), OptionalDouble.of(GOOD_ACID));
    }
}
