package heapwright.pile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;

/**
 * Documents that lie on the edges of what the reader takes: every figure is the least, the most or a usual one, dates
 * stand decades apart or on one day, lists are empty or long. Most are accepted; a few are refused, since two figures of
 * theirs do not go together.
 */
public final class ExtremeDocuments {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    private static final int[] AGES = {0, 1, 3, 30, 200, 899, 901, 3649, 3660, 13_000};
    private static final int MONTHS = 12;

    private final Vocabulary vocabulary;
    private final Random random;
    private final LocalDate built;
    private final List<String> materials;

    private ExtremeDocuments(Vocabulary vocabulary, long seed) {
        this.vocabulary = vocabulary;
        this.random = new Random(seed);
        this.built = DAY.minusDays(AGES[random.nextInt(AGES.length)]);
        this.materials = new ArrayList<>(sorted(vocabulary.materials()));
    }

    /** Such documents in the words of a vocabulary. */
    public static Arbitrary<String> documents(Vocabulary vocabulary) {
        return Arbitraries.longs().map(seed -> of(vocabulary, seed));
    }

    /** One such document. */
    public static String of(Vocabulary vocabulary, long seed) {
        return new ExtremeDocuments(vocabulary, seed).document().toString();
    }

    private ObjectNode document() {
        ObjectNode pile = JsonNodeFactory.instance.objectNode();
        pile.put("heapwright", PileReader.VERSION);
        pile.put("asOf", DAY.toString());
        if (random.nextInt(8) > 0) {
            pile.put("built", built.toString());
        }
        maybe(() -> materials(pile.putArray("materials")));
        maybe(() -> measures(pile.putObject("measures")));
        maybe(() -> limits(pile.putObject("limits")));
        maybe(() -> place(pile.putObject("place")));
        mostly(() -> container(pile.putObject("container")));
        mostly(() -> ingredients(pile.putArray("recipe"), 5));
        mostly(() -> log(pile.putArray("log")));
        maybe(() -> pile.putObject("keeper")
                .put("minutes", random.nextInt(Keeper.SHORTEST, Keeper.LONGEST + 1))
                .putArray("lacks")
                .add(one(Gear.values()).token()));
        maybe(() -> pile.putObject("aim")
                .put(
                        "readyBy",
                        built.plusDays(random.nextInt(2) * 40_000L % 27_000 + random.nextInt(900))
                                .toString())
                .put("use", one(Aim.Use.values()).token()));
        maybe(() -> stock(pile.putArray("atHand")));
        return pile;
    }

    private void maybe(Runnable part) {
        if (random.nextInt(3) == 0) {
            part.run();
        }
    }

    private void mostly(Runnable part) {
        if (random.nextInt(8) > 0) {
            part.run();
        }
    }

    private void materials(ArrayNode list) {
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            ObjectNode own = list.addObject();
            String like = one(materials);
            String id = random.nextBoolean() ? like : "own-" + i;
            own.put("id", id).put("like", like);
            maybe(() -> own.put("carbonToNitrogen", one(List.of(1.0, 2.0, 30.0, 2000.0))));
            maybe(() -> quantity(own.putObject("carbon"), Quantity.CARBON, 45));
            maybe(() -> quantity(own.putObject("nitrogen"), Quantity.NITROGEN, 1.5));
            maybe(() -> quantity(own.putObject("moisture"), Quantity.MATERIAL_MOISTURE, 40));
            maybe(() -> quantity(own.putObject("density"), Quantity.DENSITY, 300));
            materials.add(id);
            materials.add(id);
            materials.addAll(List.of(id, id, id, id, id, id, id, id, id, id));
        }
    }

    private void measures(ObjectNode measures) {
        quantity(measures.putObject(one(sorted(vocabulary.measures().keySet()))), Quantity.MEASURE_VOLUME, 10);
    }

    private void limits(ObjectNode limits) {
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            String limit = one(sorted(vocabulary.limits().keySet()));
            double[] span = vocabulary.limits().get(limit);
            limits.put(limit, span[random.nextInt(2)]);
        }
    }

    private void place(ObjectNode place) {
        maybe(() -> place.put("latitude", one(List.of(-90, 0, 90, 55))));
        mostly(() -> {
            ArrayNode months = place.putArray("monthlyMeanC");
            boolean flat = random.nextBoolean();
            double all = one(List.of(PlaceReader.COLDEST_MONTH, PlaceReader.WARMEST_MONTH));
            for (int i = 0; i < MONTHS; i++) {
                months.add(
                        flat
                                ? all
                                : one(List.of(PlaceReader.COLDEST_MONTH, PlaceReader.WARMEST_MONTH))
                                        .doubleValue());
            }
        });
        maybe(() -> place.putArray("settings").add(one(Setting.values()).token()));
    }

    private void container(ObjectNode container) {
        maybe(() -> container.put("kind", one(Container.Kind.values()).token()));
        mostly(() -> {
            quantity(container.putObject("length"), Quantity.CONTAINER_LENGTH, 1);
            quantity(container.putObject("width"), Quantity.CONTAINER_LENGTH, 1);
        });
        mostly(() -> quantity(container.putObject("height"), Quantity.PILE_HEIGHT, 1));
        maybe(() -> quantity(container.putObject("volume"), Quantity.PILE_VOLUME, 0.8));
        maybe(() -> container.put("cover", one(Container.Cover.values()).token()));
        maybe(() -> container.put("base", one(Container.Base.values()).token()));
        maybe(() ->
                container.put("insulation", one(Container.Insulation.values()).token()));
    }

    private void ingredients(ArrayNode list, int most) {
        for (int i = 0; i < 1 + random.nextInt(most); i++) {
            ObjectNode one = list.addObject();
            one.put("material", one(materials));
            amount(one);
            maybe(() -> quantity(one.putObject("piece"), Quantity.PIECE_LENGTH, 5));
            maybe(() -> one.put("chopped", true));
            maybe(() -> one.put("date", day().toString()));
        }
    }

    private void amount(ObjectNode owner) {
        switch (random.nextInt(5)) {
            case 0 ->
                owner.put("amount", one(List.of(1e-6, 1.0, 49_000.0, 100_000.0)))
                        .put("unit", "kg");
            case 1 -> owner.put("amount", one(List.of(1e-6, 10.0, 1e6))).put("unit", "L");
            case 2 -> owner.put("amount", one(List.of(0.5, 5.0, 300.0))).put("unit", "lb");
            case 3 ->
                owner.put("amount", one(List.of(0.001, 3.0, 20.0)))
                        .put("unit", one(sorted(vocabulary.measures().keySet())));
            default -> owner.put("amount", one(List.of(10, 40, 150))).put("unit", "kg");
        }
    }

    private void log(ArrayNode log) {
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            ObjectNode entry = log.addObject().put("date", day().toString());
            List<String> signs = sorted(vocabulary.signs());
            List<String> seen = new ArrayList<>();
            for (int s = 0; s < random.nextInt(6); s++) {
                seen.add(one(signs));
            }
            mostly(() -> seen.forEach(entry.withArray("seen")::add));
            maybe(() -> entry.putArray("tested")
                    .addObject()
                    .put("test", one(HomeTest.values()).token())
                    .put("result", one(Tested.Result.values()).token()));
            mostly(() -> measured(entry.putObject("measured")));
            maybe(() -> entry.putArray("done")
                    .add(one(Action.values()).token())
                    .add(one(Action.values()).token()));
            maybe(() -> ingredients(entry.putArray("added"), 2));
        }
    }

    private void measured(ObjectNode measured) {
        mostly(() -> quantity(measured.putObject("core"), Quantity.TEMPERATURE, 20));
        if (measured.has("core")) {
            // Of equal figures neither is too low.
            maybe(() -> measured.set("coreLowest", measured.get("core").deepCopy()));
        }
        maybe(() -> quantity(measured.putObject("coreDepth"), Quantity.DEPTH, 30));
        maybe(() -> quantity(measured.putObject("outdoor"), Quantity.OUTDOOR_TEMPERATURE, 2));
        maybe(() -> quantity(measured.putObject("moisture"), Quantity.MOISTURE, 60));
        maybe(() -> quantity(measured.putObject("bulkDensity"), Quantity.DENSITY, 500));
        maybe(() -> quantity(measured.putObject("ph"), Quantity.ACIDITY, 7));
        maybe(() -> quantity(measured.putObject("height"), Quantity.PILE_HEIGHT, 0.8));
    }

    private void stock(ArrayNode stock) {
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            ObjectNode one = stock.addObject().put("material", one(materials));
            mostly(() -> amount(one));
        }
    }

    private void quantity(ObjectNode owner, Quantity quantity, double usual) {
        double value = one(List.of(quantity.low(), quantity.high(), usual, usual));
        owner.put("value", value)
                .put(
                        "unit",
                        quantity.words().units().stream()
                                .filter(unit -> quantity.keep(1, unit) == 1)
                                .findFirst()
                                .orElseThrow()
                                .symbol());
    }

    private LocalDate day() {
        long age = DAY.toEpochDay() - built.toEpochDay();
        return one(List.of(DAY, built, built.plusDays(age / 2), DAY.minusDays(Math.min(3, age))));
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private <T> T one(T[] all) {
        return all[random.nextInt(all.length)];
    }

    private static List<String> sorted(Collection<String> words) {
        return words.stream().sorted().toList();
    }
}
