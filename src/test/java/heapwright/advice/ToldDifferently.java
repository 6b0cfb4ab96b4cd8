package heapwright.advice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.pile.Amount;
import heapwright.pile.DensityUnit;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.LengthUnit;
import heapwright.pile.MassUnit;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Stock;
import heapwright.pile.TemperatureUnit;
import heapwright.pile.Unit;
import heapwright.pile.VolumeUnit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Other ways to tell the same pile. */
final class ToldDifferently {

    static final String OTHER_NAME = "Zebra 7";

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Each unit beside one of the other system. */
    private static final Map<Unit, Unit> BESIDE = Map.ofEntries(
            Map.entry(MassUnit.KILOGRAM, MassUnit.POUND),
            Map.entry(MassUnit.GRAM, MassUnit.OUNCE),
            Map.entry(MassUnit.POUND, MassUnit.KILOGRAM),
            Map.entry(MassUnit.OUNCE, MassUnit.GRAM),
            Map.entry(VolumeUnit.LITRE, VolumeUnit.US_GALLON),
            Map.entry(VolumeUnit.US_GALLON, VolumeUnit.LITRE),
            Map.entry(VolumeUnit.CUBIC_METRE, VolumeUnit.CUBIC_YARD),
            Map.entry(VolumeUnit.CUBIC_YARD, VolumeUnit.CUBIC_METRE),
            Map.entry(VolumeUnit.CUBIC_FOOT, VolumeUnit.CUBIC_METRE),
            Map.entry(LengthUnit.METRE, LengthUnit.FOOT),
            Map.entry(LengthUnit.CENTIMETRE, LengthUnit.INCH),
            Map.entry(LengthUnit.FOOT, LengthUnit.METRE),
            Map.entry(LengthUnit.INCH, LengthUnit.CENTIMETRE),
            Map.entry(TemperatureUnit.CELSIUS, TemperatureUnit.FAHRENHEIT),
            Map.entry(TemperatureUnit.FAHRENHEIT, TemperatureUnit.CELSIUS),
            Map.entry(DensityUnit.KILOGRAM_PER_CUBIC_METRE, DensityUnit.POUND_PER_CUBIC_YARD),
            Map.entry(DensityUnit.POUND_PER_CUBIC_YARD, DensityUnit.KILOGRAM_PER_CUBIC_METRE));

    private ToldDifferently() {}

    /** Recipe, what is at hand, what was added, and the entries of each day in another order. */
    static Pile inOtherOrder(Pile pile, long seed) {
        Random random = new Random(seed);
        List<Entry> log = new ArrayList<>();
        for (Entry e : shuffled(pile.log(), random)) {
            log.add(new Entry(
                    e.date(),
                    shuffled(e.seen(), random),
                    shuffled(e.notSeen(), random),
                    e.measured(),
                    shuffled(e.done(), random),
                    shuffled(e.added(), random),
                    shuffled(e.tested(), random),
                    e.note()));
        }
        log.sort(java.util.Comparator.comparing(Entry::date));
        return with(pile, shuffled(pile.recipe(), random), log, shuffled(pile.atHand(), random));
    }

    /** Every amount in two lines: of the recipe, of what was added, of what is at hand. */
    static Pile inTwoLines(Pile pile) {
        List<Entry> log = pile.log().stream()
                .map(e -> new Entry(
                        e.date(),
                        e.seen(),
                        e.notSeen(),
                        e.measured(),
                        e.done(),
                        split(e.added()),
                        e.tested(),
                        e.note()))
                .toList();
        List<Stock> atHand = pile.atHand().stream()
                .flatMap(s -> s.available().isEmpty()
                        ? java.util.stream.Stream.of(s)
                        : java.util.stream.Stream.of(
                                new Stock(
                                        s.material(),
                                        Optional.of(part(s.available().get(), 0.3))),
                                new Stock(
                                        s.material(),
                                        Optional.of(part(s.available().get(), 0.7)))))
                .toList();
        return with(pile, split(pile.recipe()), log, atHand);
    }

    /** Every entry in several of the same day: what was seen, measured, done and added, each by itself. */
    static Pile inManyEntries(Pile pile) {
        List<Entry> log = new ArrayList<>();
        for (Entry e : pile.log()) {
            Measured nothing = Measured.nothing();
            log.add(new Entry(e.date(), List.of(), List.of(), nothing, List.of(), e.added(), ""));
            log.add(new Entry(e.date(), e.seen(), List.of(), nothing, List.of(), List.of(), e.tested(), e.note()));
            log.add(new Entry(e.date(), List.of(), List.of(), e.measured(), List.of(), List.of(), ""));
            log.add(new Entry(e.date(), List.of(), e.notSeen(), nothing, e.done(), List.of(), ""));
        }
        return with(pile, pile.recipe(), log, pile.atHand());
    }

    /** Under another name, and with an entry of the first day that says nothing of the pile. */
    static Pile withMoreWords(Pile pile) {
        List<Entry> log = new ArrayList<>(pile.log());
        LocalDate first = pile.log().stream()
                .map(Entry::date)
                .min(LocalDate::compareTo)
                .filter(day -> day.isBefore(pile.built()))
                .orElse(pile.built());
        log.add(0, new Entry(first, List.of(), List.of(), Measured.nothing(), List.of(), List.of(), "Rain at last."));
        return with(pile, pile.recipe(), log, pile.atHand()).with(OTHER_NAME, pile.asOf(), pile.recipe(), log);
    }

    /** A case's document read with every unit changed to one of the other system. */
    static Pile inOtherUnits(Path file) {
        try {
            ObjectNode document = (ObjectNode) JSON.readTree(file.toFile());
            document.remove("case");
            convert(document);
            return new PileReader(TestPile.KNOWLEDGE.vocabulary())
                    .read(file.toString(), JSON.writeValueAsBytes(document))
                    .pile()
                    .orElseThrow(() -> new AssertionError(file + " is refused in other units"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How many figures of a case's document have another unit beside theirs. */
    static int figures(Path file) {
        try {
            JsonNode document = JSON.readTree(Files.readAllBytes(file));
            ((ObjectNode) document).remove("case");
            return convert(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int convert(JsonNode node) {
        int converted = 0;
        if (node instanceof ObjectNode object && object.has("unit")) {
            String field = object.has("amount") ? "amount" : "value";
            Optional<Unit> unit = unit(object.get("unit").asText());
            if (unit.isPresent() && object.has(field)) {
                Unit other = BESIDE.get(unit.get());
                object.put(field, unit.get().to(other, object.get(field).asDouble()));
                object.put("unit", other.symbol());
                converted++;
            }
        }
        for (JsonNode child : node) {
            converted += convert(child);
        }
        return converted;
    }

    private static Optional<Unit> unit(String word) {
        return BESIDE.keySet().stream()
                .filter(u -> u.spellings().contains(word))
                .findFirst();
    }

    private static List<Ingredient> split(List<Ingredient> all) {
        List<Ingredient> lines = new ArrayList<>();
        for (double share : new double[] {0.7, 0.3}) {
            for (Ingredient i : all) {
                lines.add(new Ingredient(i.material(), part(i.amount(), share), i.pieceCm(), i.chopped(), i.date()));
            }
        }
        return lines;
    }

    private static Amount part(Amount a, double share) {
        return new Amount(a.value() * share, a.unit(), a.kilograms() * share, a.litres() * share);
    }

    private static <T> List<T> shuffled(List<T> all, Random random) {
        List<T> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    private static Pile with(Pile p, List<Ingredient> recipe, List<Entry> log, List<Stock> atHand) {
        return new Pile(
                p.name(),
                p.built(),
                p.builtAssumed(),
                p.builtAbout(),
                p.asOf(),
                p.place(),
                p.container(),
                recipe,
                log,
                p.struck(),
                p.advised(),
                p.keeper(),
                p.aim(),
                atHand,
                p.measures(),
                p.materials(),
                p.limits());
    }
}
