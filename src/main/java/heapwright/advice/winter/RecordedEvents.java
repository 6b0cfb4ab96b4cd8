package heapwright.advice.winter;

import heapwright.advice.fact.Reads;
import heapwright.knowledge.Sign;
import heapwright.pile.Action;
import heapwright.pile.Container;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Factors;
import heapwright.process.heat.Layer;
import heapwright.process.heat.PileState;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Footprint;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.Portion;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The record of a pile as events, core temperatures and marks of the model. Amounts not told are judgement. */
final class RecordedEvents {

    /** Water of a watering whose amount is not told, L per m³. */
    private static final double USUAL_WATERING = 20;

    private static final double TAP_C = 10;
    /** A pile opened often is taken to be opened every so many days. */
    private static final int OPENED_EVERY = 3;

    /** A record with this many events tells for itself how often. */
    private static final int OFTEN = 3;

    private static final double HOT_C = 40;
    /** Acid index of a pile that smells sour, at least: pH about 5.7. */
    private static final double SOUR = 0.55;

    private final Pile pile;
    private final Materials materials;
    private final PileState start;
    private final Weather weather;
    private final int age;
    /** Where the size told makes less or more of the recipe, it does so of all that went in. */
    private final double times;

    private final List<Entry> entries;
    private final List<CoreReading> cores;
    private final TreeSet<Integer> hotDays;

    RecordedEvents(Pile pile, Materials materials, PileState start, Weather weather) {
        this.pile = pile;
        this.materials = materials;
        this.start = start;
        this.weather = weather;
        this.age = PileModel.age(pile);
        this.times = PileMixture.timesTheRecipe(pile, materials);
        this.entries = pile.log().stream()
                .filter(e -> day(e.date()) >= 0 && day(e.date()) <= age)
                .toList();
        this.cores = measuredCores();
        this.hotDays = cores.stream()
                .filter(core -> core.celsius() >= HOT_C)
                .map(CoreReading::day)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private int day(LocalDate date) {
        return (int) Math.max(-1, Math.min(100_000, ChronoUnit.DAYS.between(pile.built(), date)));
    }

    List<Event> events(Collection<Sign> seen) {
        List<Event> all = new ArrayList<>();
        for (Entry entry : entries) {
            entry.done().forEach(a -> event(a, day(entry.date()), all));
        }
        additions().forEach((day, portions) -> {
            boolean mixed = all.stream().anyMatch(e -> e instanceof Event.Turn && e.day() == day);
            double water = portions.stream()
                    .filter(p -> Density.fillsGaps(p.material()))
                    .mapToDouble(p -> p.kgWet().likely())
                    .sum();
            List<Portion> bulk = portions.stream()
                    .filter(p -> !Density.fillsGaps(p.material()))
                    .toList();
            if (water > 0) {
                all.removeIf(e -> e instanceof Event.Water && e.day() == day);
                all.add(new Event.Water(day, water, TAP_C));
            }
            if (!bulk.isEmpty()) {
                all.add(new Event.Add(
                        day, RecipeMatter.of(bulk), Warmth.of(bulk, false).celsius(weather.airC(day)), mixed));
            }
        });
        if (seen.contains(Sign.OPENED_OFTEN) && all.size() < OFTEN) {
            for (int d = OPENED_EVERY; d <= age; d += OPENED_EVERY) {
                all.add(new Event.Turn(d));
            }
        }
        return all;
    }

    private void event(Action action, int day, List<Event> all) {
        Container container = pile.container();
        switch (action) {
            case TURNED_FULLY, MOVED, SIEVED -> all.add(new Event.Turn(day));
            case LOOSENED, HOLES_MADE, OPENED -> all.add(new Event.Loosen(day));
            case WATERED ->
                all.add(new Event.Water(day, USUAL_WATERING * start.matter().volumeM3(), TAP_C));
            case COVERED -> {
                if (container.cover() == Container.Cover.NONE || container.cover() == Container.Cover.UNKNOWN) {
                    all.add(new Event.Cover(day, start.envelope().topped(Layer.looseTarp())));
                }
            }
            case INSULATED -> {
                if (container.insulation() == Container.Insulation.NONE
                        || container.insulation() == Container.Insulation.UNKNOWN) {
                    Envelope now = start.envelope();
                    all.add(new Event.Cover(day, Surroundings.round(Container.Insulation.STRAW, now)));
                }
            }
            case UNCOVERED, SPLIT, DRAINED, TAKEN_OUT, SPREAD -> {}
        }
    }

    /** What was added to the pile that was built; what went in on the first day by the recipe is in that pile. */
    private Map<Integer, List<Portion>> additions() {
        Map<Integer, List<Portion>> byDay = new TreeMap<>();
        pile.recipe().forEach(one -> add(one, 1, byDay));
        pile.log().forEach(entry -> entry.added().forEach(one -> add(one, 0, byDay)));
        return byDay;
    }

    private void add(Ingredient one, int from, Map<Integer, List<Portion>> byDay) {
        int day = day(one.date());
        Portion portion = PileModel.portion(one, materials).times(times);
        if (day >= from && day <= age && portion.kgWet().likely() > 0.01) {
            byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(portion);
        }
    }

    /** The core temperatures measured, the last of each day. */
    List<CoreReading> cores() {
        return cores;
    }

    private List<CoreReading> measuredCores() {
        TreeMap<Integer, Double> byDay = new TreeMap<>();
        for (Entry entry : entries) {
            entry.measured().coreC().ifPresent(c -> byDay.put(day(entry.date()), Math.max(-39, Math.min(79, c))));
        }
        List<CoreReading> all = new ArrayList<>();
        byDay.forEach((day, c) -> all.add(new CoreReading(day, c)));
        return all;
    }

    /**
     * What is known of water and acid. It counts from the day after the pile was last measured hot, or from the start
     * if it never was: what is wrong now was not yet wrong while it was hot. On its own day it stands as measured, whatever
     * the model made of it since.
     */
    List<StateMark> marks(Collection<Reads> readings, Collection<Sign> seen) {
        TreeMap<Integer, Double> water = new TreeMap<>();
        TreeMap<Integer, Double> acid = new TreeMap<>();
        for (Entry entry : entries) {
            int day = day(entry.date());
            entry.measured().moisturePct().ifPresent(m -> from(day, m / 100, water));
            entry.measured().ph().ifPresent(p -> from(day, Factors.acidIndex(p), acid));
        }
        if (acid.isEmpty() && seen.contains(Sign.SMELLS_SOUR)) {
            double sour = Math.max(SOUR, start.matter().acidIndex());
            acid.put(sinceFelt(acid, seen), sour);
            acid.put(age, sour);
        }
        List<StateMark> all = sizes();
        SensedBounds noticed = new SensedBounds(seen, age, sinceFelt(new TreeMap<>(), seen));
        if (water.isEmpty()) {
            all.addAll(noticed.water(readings));
        }
        all.addAll(noticed.airAndFood());
        water.forEach((day, m) -> all.add(
                new StateMark(day, OptionalDouble.of(Math.max(0.08, Math.min(0.9, m))), OptionalDouble.empty())));
        acid.forEach((day, a) ->
                all.add(new StateMark(day, OptionalDouble.empty(), OptionalDouble.of(Math.max(0, Math.min(1, a))))));
        return all;
    }

    /** Heights measured since it was built, on the ground it stands on where that is known. */
    private List<StateMark> sizes() {
        List<StateMark> all = new ArrayList<>();
        if (Footprint.known(pile.container())) {
            double ground = start.lengthM() * start.widthM();
            for (Entry entry : entries) {
                OptionalDouble height = entry.measured().heightM();
                if (height.orElse(0) > 0) {
                    all.add(StateMark.size(day(entry.date()), ground * height.getAsDouble()));
                }
            }
        }
        return all;
    }

    /** A pile that was felt to be warm and then cool is taken to have been warm for the first half of its time. */
    private int sinceFelt(TreeMap<Integer, Double> earlier, Collection<Sign> seen) {
        int from = since(age, earlier);
        return from == 0 && seen.contains(Sign.HEATED_THEN_COOLED) ? age / 2 : from;
    }

    private void from(int day, double figure, TreeMap<Integer, Double> marks) {
        marks.put(since(day, marks), figure);
        marks.put(day, figure);
    }

    private int since(int day, TreeMap<Integer, Double> earlier) {
        int from = earlier.isEmpty() ? 0 : Math.min(day, earlier.lastKey() + 1);
        Integer hot = hotDays.lower(day);
        return hot == null ? from : Math.max(from, hot + 1);
    }
}
