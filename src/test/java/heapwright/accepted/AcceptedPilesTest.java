package heapwright.accepted;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heapwright.Seed;
import heapwright.advice.Advice;
import heapwright.advice.Option;
import heapwright.advice.TestPile;
import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.pile.ExtremeDocuments;
import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.PileStock;
import heapwright.process.dose.Stocktaking;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;

@Label("Whatever the reader takes, every door")
@Tag("thorough")
class AcceptedPilesTest {

    private static final Everything EVERYTHING = new Everything(TestPile.ADVISOR);
    private static final PileReader READER = new PileReader(TestPile.KNOWLEDGE.vocabulary());
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Doses that are mixed in and may fill a stated share of the pile at most. */
    private static final Set<Dose> MIXED_IN = Set.of(Dose.SOAK_UP, Dose.BIND_NITROGEN, Dose.GREENS, Dose.MANURE);

    private static final Set<Dose> WATERED = Set.of(Dose.WATER_TO_TARGET, Dose.WATER_THE_CORE, Dose.SOAK_WOODY);

    /** Rounding of sums of floating-point numbers. */
    private static final double HAIR = 1 + 1e-9;

    private static final double LITRES_PER_M3 = 1000;

    @Property(tries = 40, seed = Seed.FIXED, shrinking = ShrinkingMode.OFF)
    @Label("answers, with figures that make sense, in text and in JSON, in both systems of units")
    void answers(@ForAll("documents") String document) {
        Optional<Pile> pile = read(document);
        if (pile.isEmpty()) {
            return;
        }
        Everything.Told told = EVERYTHING.of(pile.get());
        List<String> lacking = new ArrayList<>();
        told.texts().forEach((door, text) -> Sense.lacking(text).forEach(l -> lacking.add(door + ": " + l)));
        told.json().forEach((door, text) -> numbers(door, tree(text), lacking));
        assertEquals(List.of(), lacking, document);
        doses(Gathered.of(pile.get()), told.advice(), document);
    }

    @Provide
    Arbitrary<String> documents() {
        return ExtremeDocuments.documents(TestPile.KNOWLEDGE.vocabulary());
    }

    private static Optional<Pile> read(String document) {
        return READER.read("extreme", document.getBytes(StandardCharsets.UTF_8)).pile();
    }

    private static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw new AssertionError(json, e);
        }
    }

    /** Every number is finite, and none that calls itself a share of a whole is more than the whole. */
    private static void numbers(String door, JsonNode node, List<String> lacking) {
        node.properties().forEach(field -> {
            JsonNode value = field.getValue();
            boolean share = field.getKey().matches("moisturePct|freeAirSpacePct|.*SharePct|likelihood|readyChance");
            if (share && beyond(value, field.getKey().endsWith("Pct") ? 100 : 1)) {
                lacking.add(door + ": " + field.getKey() + " " + value);
            }
        });
        if (node.isTextual() && (node.asText().contains("NaN") || node.asText().contains("Infinity"))
                || node.isNumber() && !Double.isFinite(node.asDouble())) {
            lacking.add(door + ": " + node);
        }
        node.forEach(child -> numbers(door, child, lacking));
    }

    private static boolean beyond(JsonNode value, double whole) {
        boolean beyond = value.isNumber() && value.asDouble() > whole * HAIR;
        for (JsonNode part : value) {
            beyond |= beyond(part, whole);
        }
        return beyond;
    }

    /** No dose is more than the share of the pile that its limit states. */
    private static void doses(Pile pile, Advice advice, String document) {
        Materials materials = Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials());
        PileStock stock = Stocktaking.of(pile, materials, new MixtureCalculator());
        double volume = stock.volumeM3().likely();
        advice.steps().stream()
                .flatMap(step -> Stream.concat(Stream.of(step.main()), step.alternatives().stream()))
                .map(Option::doses)
                .flatMap(List::stream)
                .forEach(dose -> {
                    double most = most(pile, dose, volume);
                    assertTrue(
                            dose.litres().likely() <= most * HAIR,
                            () -> dose + " is more than " + most + " L in " + document);
                });
    }

    private static double most(Pile pile, DoseAmount dose, double volumeM3) {
        if (MIXED_IN.contains(dose.dose())) {
            return limit(pile, Limit.CARBON_MAX_SHARE) / 100 * volumeM3 * LITRES_PER_M3;
        }
        if (WATERED.contains(dose.dose())) {
            return limit(pile, Limit.WATER_MAX_AT_ONCE) * volumeM3;
        }
        return dose.dose() == Dose.ASH ? limit(pile, Limit.ASH_MAX) * volumeM3 : Double.MAX_VALUE;
    }

    private static double limit(Pile pile, Limit limit) {
        return pile.limits()
                .getOrDefault(limit.id(), TestPile.KNOWLEDGE.limits().get(limit).value());
    }
}
