package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Writes a pile as a document that {@link PileReader} reads back to an equal pile. Same pile, same bytes: the fields
 * come in the order of the schema, the keys of measures and limits in the order of the alphabet. What is unknown or
 * empty is left out. Amounts keep the unit they were given in; lengths, volumes and densities are written in metric.
 */
public final class PileWriter {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** The document as UTF-8 bytes. */
    public byte[] bytes(Pile pile) {
        return write(pile).getBytes(StandardCharsets.UTF_8);
    }

    /** The document, indented for reading, with a line break at its end. */
    public String write(Pile pile) {
        return Pretty.print(tree(pile)) + "\n";
    }

    /** The document as a tree; the caller may change it. */
    public ObjectNode tree(Pile pile) {
        ObjectNode document = NODES.objectNode();
        document.put("heapwright", PileReader.VERSION);
        document.put("name", pile.name());
        document.put("asOf", pile.asOf().toString());
        if (!pile.builtAssumed()) {
            document.put("built", pile.built().toString());
            if (pile.builtAbout()) {
                document.put("builtAbout", true);
            }
        }
        put(document, "place", place(pile.place()));
        put(document, "container", container(pile.container()));
        put(
                document,
                "recipe",
                ingredients(pile.recipe(), pile.builtAssumed() ? Optional.of(pile.built()) : Optional.empty()));
        put(document, "log", entries(pile.log()));
        put(document, "struck", entries(pile.struck()));
        ArrayNode advised = NODES.arrayNode();
        pile.advised().forEach(step -> advised.add(advised(step)));
        put(document, "advised", advised);
        put(document, "keeper", keeper(pile.keeper()));
        put(document, "aim", aim(pile.aim()));
        ArrayNode stocks = NODES.arrayNode();
        pile.atHand().forEach(stock -> stocks.add(stock(stock)));
        put(document, "atHand", stocks);
        ObjectNode measures = NODES.objectNode();
        new TreeMap<>(pile.measures()).forEach((id, litres) -> measures.set(id, quantity(litres, VolumeUnit.LITRE)));
        put(document, "measures", measures);
        ArrayNode materials = NODES.arrayNode();
        pile.materials().forEach(material -> materials.add(material(material)));
        put(document, "materials", materials);
        ObjectNode limits = NODES.objectNode();
        for (Map.Entry<String, Double> limit : new TreeMap<>(pile.limits()).entrySet()) {
            number(limits, limit.getKey(), limit.getValue());
        }
        put(document, "limits", limits);
        return document;
    }

    private static ObjectNode place(Place place) {
        ObjectNode node = NODES.objectNode();
        place.latitude().ifPresent(latitude -> number(node, "latitude", latitude));
        token(node, "climate", place.climate(), Place.Climate.UNKNOWN);
        quantity(node, "altitude", place.altitudeM(), LengthUnit.METRE);
        ArrayNode months = NODES.arrayNode();
        place.monthlyMeanC().forEach(mean -> months.add(number(mean)));
        put(node, "monthlyMeanC", months);
        put(node, "settings", tokens(place.settings()));
        return node;
    }

    private static ObjectNode container(Container container) {
        ObjectNode node = NODES.objectNode();
        token(node, "kind", container.kind(), Container.Kind.UNKNOWN);
        quantity(node, "length", container.lengthM(), LengthUnit.METRE);
        quantity(node, "width", container.widthM(), LengthUnit.METRE);
        quantity(node, "height", container.heightM(), LengthUnit.METRE);
        quantity(node, "volume", container.volumeM3(), VolumeUnit.CUBIC_METRE);
        token(node, "cover", container.cover(), Container.Cover.UNKNOWN);
        token(node, "base", container.base(), Container.Base.UNKNOWN);
        token(node, "insulation", container.insulation(), Container.Insulation.UNKNOWN);
        if (container.rodentProof()) {
            node.put("rodentProof", true);
        }
        return node;
    }

    /** @param undated a day that nobody told and that is not written */
    private static ArrayNode ingredients(List<Ingredient> ingredients, Optional<LocalDate> undated) {
        ArrayNode list = NODES.arrayNode();
        for (Ingredient ingredient : ingredients) {
            ObjectNode node = list.addObject();
            node.put("material", ingredient.material());
            amount(node, ingredient.amount());
            quantity(node, "piece", ingredient.pieceCm(), LengthUnit.CENTIMETRE);
            if (ingredient.chopped()) {
                node.put("chopped", true);
            }
            if (!undated.equals(Optional.of(ingredient.date()))) {
                node.put("date", ingredient.date().toString());
            }
        }
        return list;
    }

    static ObjectNode advised(Advised step) {
        ObjectNode node = NODES.objectNode();
        node.put("date", step.date().toString());
        node.put("step", step.step());
        if (!step.amount().isEmpty()) {
            node.put("amount", step.amount());
        }
        node.put("look", step.look().toString());
        token(node, "outcome", step.outcome(), Advised.Outcome.OPEN);
        step.told().ifPresent(day -> node.put("told", day.toString()));
        return node;
    }

    private static ArrayNode entries(List<Entry> entries) {
        ArrayNode list = NODES.arrayNode();
        entries.forEach(entry -> list.add(entry(entry)));
        return list;
    }

    /** An entry of the record as a tree; the caller may change it. */
    public static ObjectNode entry(Entry entry) {
        ObjectNode node = NODES.objectNode();
        node.put("date", entry.date().toString());
        put(node, "seen", words(entry.seen()));
        put(node, "notSeen", words(entry.notSeen()));
        put(node, "measured", measured(entry.measured()));
        put(node, "done", tokens(entry.done()));
        put(node, "added", ingredients(entry.added(), Optional.empty()));
        ArrayNode tested = NODES.arrayNode();
        entry.tested()
                .forEach(t -> tested.addObject()
                        .put("test", t.test().token())
                        .put("result", t.result().token()));
        put(node, "tested", tested);
        if (!entry.note().isEmpty()) {
            node.put("note", entry.note());
        }
        return node;
    }

    private static ObjectNode measured(Measured measured) {
        ObjectNode node = NODES.objectNode();
        quantity(node, "core", measured.coreC(), TemperatureUnit.CELSIUS);
        quantity(node, "coreLowest", measured.coreLowestC(), TemperatureUnit.CELSIUS);
        quantity(node, "coreDepth", measured.coreDepthCm(), LengthUnit.CENTIMETRE);
        quantity(node, "outdoor", measured.outdoorC(), TemperatureUnit.CELSIUS);
        quantity(node, "moisture", measured.moisturePct(), PlainUnit.PERCENT);
        quantity(node, "bulkDensity", measured.bulkDensityKgM3(), DensityUnit.KILOGRAM_PER_CUBIC_METRE);
        quantity(node, "ph", measured.ph(), PlainUnit.PH);
        quantity(node, "height", measured.heightM(), LengthUnit.METRE);
        return node;
    }

    private static ObjectNode keeper(Keeper keeper) {
        ObjectNode node = NODES.objectNode();
        keeper.minutes().ifPresent(minutes -> node.put("minutes", minutes));
        put(node, "lacks", tokens(keeper.lacks()));
        return node;
    }

    private static ObjectNode aim(Aim aim) {
        ObjectNode node = NODES.objectNode();
        aim.readyBy().ifPresent(day -> node.put("readyBy", day.toString()));
        token(node, "use", aim.use(), Aim.Use.UNKNOWN);
        return node;
    }

    private static ObjectNode stock(Stock stock) {
        ObjectNode node = NODES.objectNode();
        node.put("material", stock.material());
        stock.available().ifPresent(amount -> amount(node, amount));
        return node;
    }

    private static ObjectNode material(OwnMaterial material) {
        ObjectNode node = NODES.objectNode();
        node.put("id", material.id());
        node.put("like", material.like());
        node.put("name", material.name());
        material.carbonToNitrogen().ifPresent(ratio -> number(node, "carbonToNitrogen", ratio));
        quantity(node, "carbon", material.carbonPct(), PlainUnit.PERCENT);
        quantity(node, "nitrogen", material.nitrogenPct(), PlainUnit.PERCENT);
        quantity(node, "moisture", material.moisturePct(), PlainUnit.PERCENT);
        quantity(node, "density", material.densityKgM3(), DensityUnit.KILOGRAM_PER_CUBIC_METRE);
        return node;
    }

    private static void amount(ObjectNode node, Amount amount) {
        number(node, "amount", amount.value());
        node.put("unit", amount.unit());
    }

    private static void quantity(ObjectNode node, String field, OptionalDouble value, Unit unit) {
        value.ifPresent(figure -> node.set(field, quantity(figure, unit)));
    }

    private static ObjectNode quantity(double value, Unit unit) {
        ObjectNode node = NODES.objectNode();
        number(node, "value", value);
        return node.put("unit", unit.symbol());
    }

    private static void token(ObjectNode node, String field, Token value, Token unknown) {
        if (value != unknown) {
            node.put(field, value.token());
        }
    }

    private static ArrayNode tokens(List<? extends Token> tokens) {
        return words(tokens.stream().map(Token::token).toList());
    }

    private static ArrayNode words(List<String> words) {
        ArrayNode list = NODES.arrayNode();
        words.forEach(list::add);
        return list;
    }

    private static void number(ObjectNode node, String field, double value) {
        node.set(field, number(value));
    }

    /** Whole numbers without a decimal point, others with all their digits, so that they read back the same. */
    private static JsonNode number(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
        return whole ? NODES.numberNode((long) value) : NODES.numberNode(value);
    }

    private static void put(ObjectNode node, String field, JsonNode value) {
        if (!value.isEmpty()) {
            node.set(field, value);
        }
    }
}
