package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Generates piles that a document can describe, and documents that describe them, for any vocabulary. */
public final class PileArbitraries {

    private static final LocalDate EARLIEST = LocalDate.of(2015, 1, 1);

    private final Vocabulary vocabulary;

    private PileArbitraries(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** Piles in the words of the test vocabulary. */
    public static Arbitrary<Pile> piles() {
        return piles(new TestVocabulary());
    }

    /** Piles in the words of a vocabulary, as {@link PileReader} would give them. */
    public static Arbitrary<Pile> piles(Vocabulary vocabulary) {
        return new PileArbitraries(vocabulary).pile();
    }

    /** Sound documents in the words of the test vocabulary. */
    public static Arbitrary<String> documents() {
        return documents(new TestVocabulary());
    }

    /** Sound documents in the words of a vocabulary: fields left out, other spellings, compact and indented. */
    public static Arbitrary<String> documents(Vocabulary vocabulary) {
        return Combinators.combine(piles(vocabulary), Arbitraries.longs())
                .as((pile, seed) -> varied(new PileWriter().tree(pile), new Random(seed)));
    }

    private Arbitrary<Pile> pile() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 6000),
                        Arbitraries.integers().between(0, 500),
                        measures(),
                        ownMaterials())
                .as((day, age, measures, own) -> pile(EARLIEST.plusDays(day), age, measures, own))
                .flatMap(pile -> pile);
    }

    private Arbitrary<Pile> pile(LocalDate built, int age, Map<String, Double> measures, List<OwnMaterial> own) {
        LocalDate asOf = built.plusDays(age);
        List<String> materials = new ArrayList<>(sorted(vocabulary.materials()));
        own.forEach(each -> materials.add(each.id()));
        Arbitrary<Ingredient> ingredient = ingredient(built, age, materials, measures);
        Arbitrary<Stock> stock = Combinators.combine(
                        Arbitraries.of(materials), amount(measures).optional())
                .as(Stock::new);
        Arbitrary<Aim> aim = Combinators.combine(
                        Arbitraries.integers()
                                .between(0, 900)
                                .map(asOf::plusDays)
                                .optional(),
                        Arbitraries.of(Aim.Use.class))
                .as(Aim::new);
        Arbitrary<List<Entry>> log =
                entry(built, age, ingredient).list().ofMaxSize(4).map(PileArbitraries::byDate);
        return Combinators.combine(
                        name(),
                        place(),
                        container(),
                        ingredient.list().ofMaxSize(4),
                        Combinators.combine(log, log, advised(built, age), keeper())
                                .as(Past::new),
                        aim,
                        stock.list().ofMaxSize(3),
                        limits())
                .as((name, place, container, recipe, past, wish, stocks, limits) -> new Pile(
                        name,
                        built,
                        false,
                        age % 2 == 1,
                        asOf,
                        place,
                        container,
                        recipe,
                        past.log(),
                        past.struck(),
                        past.advised(),
                        past.keeper(),
                        wish,
                        stocks,
                        measures,
                        own,
                        limits));
    }

    private record Past(List<Entry> log, List<Entry> struck, List<Advised> advised, Keeper keeper) {}

    private Arbitrary<Keeper> keeper() {
        return Combinators.combine(
                        Arbitraries.integers()
                                .between(Keeper.SHORTEST, Keeper.LONGEST)
                                .optional(),
                        Arbitraries.of(Gear.class).set().ofMaxSize(4))
                .as((minutes, lacks) ->
                        new Keeper(minutes.map(OptionalInt::of).orElseGet(OptionalInt::empty), List.copyOf(lacks)));
    }

    private Arbitrary<List<Advised>> advised(LocalDate built, int age) {
        Arbitrary<Advised> one = Combinators.combine(
                        Arbitraries.integers().between(0, age),
                        Arbitraries.of(sorted(vocabulary.steps())),
                        Arbitraries.of("", "About 3 wheelbarrows of leaves (11 kg)."),
                        Arbitraries.integers().between(0, 60),
                        Arbitraries.of(Advised.Outcome.class))
                .as((day, step, amount, wait, outcome) -> new Advised(
                        built.plusDays(day),
                        step,
                        amount,
                        built.plusDays(day + wait),
                        outcome,
                        wait % 2 == 0 ? Optional.of(built.plusDays(age)) : Optional.empty()));
        return one.list()
                .ofMaxSize(3)
                .map(all ->
                        all.stream().sorted(Comparator.comparing(Advised::date)).toList());
    }

    private static List<Entry> byDate(List<Entry> entries) {
        return entries.stream().sorted(Comparator.comparing(Entry::date)).toList();
    }

    private Arbitrary<Map<String, Double>> measures() {
        return Arbitraries.maps(Arbitraries.of(sorted(vocabulary.measures().keySet())), figure(0.01, 200))
                .ofMaxSize(Math.min(2, vocabulary.measures().size()));
    }

    private Arbitrary<List<OwnMaterial>> ownMaterials() {
        Arbitrary<String> id = Arbitraries.of("my-bark", "neighbours-hay", "mix-2", "x");
        return Combinators.combine(
                        id,
                        Arbitraries.of(sorted(vocabulary.materials())),
                        name(),
                        maybe(5, 500),
                        maybe(0, 25),
                        maybe(0, 99),
                        maybe(1, 1500))
                .as((own, like, name, ratio, carbon, moisture, density) ->
                        new OwnMaterial(own, like, name, ratio, carbon, OptionalDouble.empty(), moisture, density))
                .list()
                .uniqueElements(OwnMaterial::id)
                .ofMaxSize(2);
    }

    private Arbitrary<Map<String, Double>> limits() {
        return Arbitraries.maps(
                        Arbitraries.of(sorted(vocabulary.limits().keySet())),
                        Arbitraries.doubles().between(0, 1))
                .ofMaxSize(Math.min(2, vocabulary.limits().size()))
                .map(shares -> {
                    Map<String, Double> limits = new HashMap<>();
                    shares.forEach((id, share) -> {
                        double[] span = vocabulary.limits().get(id);
                        limits.put(id, Math.min(span[1], span[0] + share * (span[1] - span[0])) + 0.0);
                    });
                    return limits;
                });
    }

    private Arbitrary<Ingredient> ingredient(
            LocalDate built, int age, List<String> materials, Map<String, Double> measures) {
        return Combinators.combine(
                        Arbitraries.of(materials),
                        amount(measures),
                        maybe(0.1, 300),
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(0, age).map(built::plusDays))
                .as(Ingredient::new);
    }

    private Arbitrary<Amount> amount(Map<String, Double> measures) {
        List<String> units = new ArrayList<>();
        Amounts.UNITS.units().forEach(unit -> units.add(unit.symbol()));
        units.addAll(sorted(vocabulary.measures().keySet()));
        return Combinators.combine(figure(0.01, 100), Arbitraries.of(units)).as((value, unit) -> {
            Optional<Unit> known = Amounts.UNITS.find(unit);
            if (known.isEmpty()) {
                double litres =
                        measures.getOrDefault(unit, vocabulary.measures().get(unit));
                return Amount.ofVolume(value, unit, Rounding.measured(value, litres));
            }
            return known.get() instanceof MassUnit mass
                    ? Amount.ofMass(value, unit, Rounding.converted(value, mass, MassUnit.KILOGRAM))
                    : Amount.ofVolume(value, unit, Rounding.converted(value, known.get(), VolumeUnit.LITRE));
        });
    }

    private Arbitrary<Entry> entry(LocalDate built, int age, Arbitrary<Ingredient> ingredient) {
        Arbitrary<List<String>> signs = Arbitraries.of(sorted(vocabulary.signs()))
                .list()
                .uniqueElements()
                .ofMaxSize(5);
        return Combinators.combine(
                        Arbitraries.integers().between(0, age).map(built::plusDays),
                        signs,
                        Arbitraries.integers().between(0, 5),
                        measured(),
                        Arbitraries.of(Action.class).list().uniqueElements().ofMaxSize(3),
                        ingredient.list().ofMaxSize(2),
                        Combinators.combine(Arbitraries.of(HomeTest.class), Arbitraries.of(Tested.Result.class))
                                .as(Tested::new)
                                .list()
                                .ofMaxSize(2),
                        Arbitraries.of("", "Smelt of earth.", "two\nlines\tand a tab", "堆肥 🍂 1,5"))
                .as((day, all, split, measured, done, added, tested, note) -> {
                    int seen = Math.min(split, all.size());
                    return new Entry(
                            day,
                            all.subList(0, seen),
                            all.subList(seen, all.size()),
                            measured,
                            done,
                            added,
                            tested,
                            note);
                });
    }

    private static Arbitrary<Measured> measured() {
        return Combinators.combine(
                        maybe(-40, 90),
                        maybe(-60, 120),
                        maybe(0, 100),
                        maybe(-50, 45),
                        maybe(0, 100),
                        maybe(50, 1500),
                        maybe(0, 14),
                        maybe(0.1, 3))
                .as((core, lowest, depth, outdoor, moisture, density, ph, height) ->
                        new Measured(core, upTo(core, lowest), depth, outdoor, moisture, density, ph, height));
    }

    private static OptionalDouble upTo(OptionalDouble core, OptionalDouble lowest) {
        return core.isEmpty() || lowest.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.min(core.getAsDouble(), lowest.getAsDouble()));
    }

    private static Arbitrary<Place> place() {
        Arbitrary<List<Double>> months = Arbitraries.oneOf(
                Arbitraries.just(List.of()), figure(-40, 45).list().ofSize(12));
        return Combinators.combine(
                        maybe(-90, 90),
                        Arbitraries.of(Place.Climate.class),
                        maybe(0, 5000),
                        months,
                        Arbitraries.of(Setting.class).list().uniqueElements().ofMaxSize(3))
                .as(Place::new);
    }

    private static Arbitrary<Container> container() {
        Arbitrary<OptionalDouble> length = maybe(0.1, 5);
        return Combinators.combine(
                        Arbitraries.of(Container.Kind.class),
                        length.list().ofSize(3),
                        maybe(0.05, 20),
                        Arbitraries.of(Container.Cover.class),
                        Arbitraries.of(Container.Base.class),
                        Arbitraries.of(Container.Insulation.class),
                        Arbitraries.of(true, false))
                .as((kind, lengths, volume, cover, base, insulation, proof) -> new Container(
                        kind, lengths.get(0), lengths.get(1), lengths.get(2), volume, cover, base, insulation, proof));
    }

    private static Arbitrary<String> name() {
        return Arbitraries.of(
                        "Heap", "ved skjulet", "№ 2", "1,5 m³", "堆肥", "🍂", "\"quoted\"", "back\\slash", "a/b~c", "٢")
                .list()
                .ofMinSize(1)
                .ofMaxSize(4)
                .map(parts -> String.join(" ", parts));
    }

    /** Round figures as people write them, and awkward ones with all the digits that are kept. */
    private static Arbitrary<Double> figure(double low, double high) {
        return Arbitraries.oneOf(
                        Arbitraries.doubles().between(low, high).ofScale(2),
                        Arbitraries.doubles().between(low, high).ofScale(13))
                .map(value -> Rounding.converted(
                                Rounding.converted(value, MassUnit.KILOGRAM, MassUnit.KILOGRAM),
                                TemperatureUnit.CELSIUS,
                                TemperatureUnit.CELSIUS)
                        + 0.0);
    }

    private static Arbitrary<OptionalDouble> maybe(double low, double high) {
        return figure(low, high)
                .optional(0.6)
                .map(value -> value.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    private static List<String> sorted(Collection<String> words) {
        return words.stream().sorted().toList();
    }

    private static String varied(ObjectNode document, Random random) {
        int dropped = random.nextInt(4);
        if (dropped == 0) {
            document.remove("asOf");
        } else if (dropped == 1) {
            document.remove("built");
        }
        for (String field : List.of("name", "aim", "container", "place")) {
            if (random.nextInt(8) == 0) {
                document.remove(field);
            }
        }
        respell(document, random);
        if (random.nextBoolean()) {
            document.putObject("case").putArray("expect").add("anything");
        }
        return random.nextBoolean() ? document.toString() : Pretty.print(document);
    }

    private static void respell(JsonNode node, Random random) {
        if (node instanceof ObjectNode object) {
            if (object.has("material") && random.nextInt(3) == 0) {
                object.remove("date");
            }
            if (object.path("unit").isTextual()) {
                object.put("unit", spelling(object, random));
            }
            object.forEach(child -> respell(child, random));
        } else if (node instanceof ArrayNode list) {
            list.forEach(child -> respell(child, random));
        }
    }

    private static String spelling(ObjectNode object, Random random) {
        String symbol = object.get("unit").asText();
        List<String> spellings = new ArrayList<>();
        for (UnitWords words : List.of(
                Amounts.UNITS,
                Quantity.PILE_HEIGHT.words(),
                Quantity.TEMPERATURE.words(),
                Quantity.DENSITY.words(),
                Quantity.MOISTURE.words())) {
            words.find(symbol).ifPresent(unit -> spellings.addAll(unit.spellings()));
        }
        return spellings.isEmpty() ? symbol : spellings.get(random.nextInt(spellings.size()));
    }
}
