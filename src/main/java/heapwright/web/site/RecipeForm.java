package heapwright.web.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.phrase.NumberPhrase;
import heapwright.pile.PileReader;
import heapwright.report.JsonText;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * A recipe as it is typed. Like a checkup it travels in the address, a parameter each row, so nothing is kept on the
 * server.
 *
 * @param recipe rows of the recipe that hold something
 * @param atHand rows of what else is at hand
 * @param size length, width and height of the bin, and the latitude and climate, by field; what is unknown is left out
 * @param rows how many rows of the recipe are shown
 */
record RecipeForm(List<Row> recipe, List<Row> atHand, Map<String, String> size, int rows) {

    static final String PREFIX = "r";
    static final String AT_HAND = "h";
    static final String LATITUDE = "latitude";
    static final String CLIMATE = "climate";
    static final List<String> SIZES = List.of("length", "width", "height", LATITUDE, CLIMATE);

    private static final Set<String> OF_PLACE = Set.of(LATITUDE, CLIMATE);

    private static final int MOST = 40;
    private static final int USUAL = 4;
    private static final int USUAL_AT_HAND = 3;
    private static final int LONGEST = 120;
    private static final String BETWEEN = "~";

    /** A row: material as typed, amount, unit, and length of the pieces in centimetres. */
    record Row(String material, String amount, String unit, String cut) {
        boolean empty() {
            return material.isBlank() && amount.isBlank();
        }

        private String packed() {
            return String.join(BETWEEN, material, amount, unit, cut);
        }

        private static Row unpacked(String packed) {
            String[] parts = packed.split(BETWEEN, -1);
            return parts.length == 4 ? new Row(parts[0], parts[1], parts[2], parts[3]) : new Row("", "", "", "");
        }
    }

    static RecipeForm ofAddress(Function<String, List<String>> parameters, UnaryOperator<String> parameter) {
        List<Row> recipe = unpacked(parameters.apply(PREFIX));
        int asked = number(parameter.apply("rows"));
        return new RecipeForm(
                recipe,
                unpacked(parameters.apply(AT_HAND)),
                size(parameter),
                Math.min(MOST, Math.max(asked, Math.max(USUAL, recipe.size() + 1))));
    }

    /** Reads the query of an address, as {@link #query()} writes it. */
    static RecipeForm ofQuery(String query) {
        Map<String, List<String>> parameters = new LinkedHashMap<>();
        for (String part : query.split("&")) {
            String[] pair = part.split("=", 2);
            if (pair.length == 2) {
                parameters.computeIfAbsent(pair[0], name -> new ArrayList<>()).add(CheckupAnswers.decoded(pair[1]));
            }
        }
        return ofAddress(
                name -> parameters.getOrDefault(name, List.of()),
                name -> parameters.containsKey(name) ? parameters.get(name).get(0) : null);
    }

    static RecipeForm ofForm(UnaryOperator<String> field) {
        int shown = Math.min(MOST, Math.max(USUAL, number(field.apply("rows"))));
        int more = field.apply("more") == null ? 0 : USUAL_AT_HAND;
        return new RecipeForm(
                rows(field, PREFIX, shown),
                rows(field, AT_HAND, USUAL_AT_HAND),
                size(field),
                Math.min(MOST, shown + more));
    }

    boolean empty() {
        return recipe.isEmpty();
    }

    /** The query of an address that carries it all. */
    String query() {
        List<String> parts = new ArrayList<>();
        recipe.forEach(r -> parts.add(PREFIX + "=" + URLEncoder.encode(r.packed(), StandardCharsets.UTF_8)));
        atHand.forEach(r -> parts.add(AT_HAND + "=" + URLEncoder.encode(r.packed(), StandardCharsets.UTF_8)));
        size.forEach((name, value) -> parts.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8)));
        if (rows > USUAL) {
            parts.add("rows=" + rows);
        }
        return String.join("&", parts);
    }

    /** The rows as they are shown: those with something in them, then empty ones. */
    List<Row> shown() {
        return filled(recipe, rows);
    }

    List<Row> shownAtHand() {
        return filled(atHand, USUAL_AT_HAND);
    }

    /** The document of the recipe, for the pile reader to check. */
    byte[] document(String name, LocalDate day, Optional<BuiltWhen> built, boolean us) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("heapwright", PileReader.VERSION).put("name", name);
        root.put("asOf", day.toString());
        built.ifPresent(when -> when.into(root));
        ObjectNode container = JsonNodeFactory.instance.objectNode();
        if (size.containsKey(LATITUDE)) {
            number(root.withObject("/place"), LATITUDE, size.get(LATITUDE));
        }
        if (size.containsKey(CLIMATE)) {
            root.withObject("/place").put(CLIMATE, size.get(CLIMATE));
        }
        size.forEach((field, typed) -> {
            if (OF_PLACE.contains(field)) {
                return;
            }
            ObjectNode quantity = container.putObject(field);
            number(quantity, "value", typed);
            quantity.put("unit", us ? "in" : "cm");
        });
        if (!container.isEmpty()) {
            root.set("container", container);
        }
        recipe.forEach(row -> {
            ObjectNode one = root.withArray("recipe").addObject();
            put(one, row);
            cut(one, row);
        });
        atHand.forEach(row -> put(root.withArray("atHand").addObject(), row));
        return JsonText.write(root).getBytes(StandardCharsets.UTF_8);
    }

    /** Whether a field tells of the place, and not of the size. */
    static boolean ofPlace(String field) {
        return OF_PLACE.contains(field);
    }

    /** Puts the length of the pieces of a row into the document, as a figure in centimetres. */
    static void cut(ObjectNode node, Row row) {
        node.remove("piece");
        if (!row.cut().isEmpty()) {
            number(node.putObject("piece"), "value", row.cut());
            node.withObject("/piece").put("unit", "cm");
        }
    }

    /** Puts material, amount and unit of a row into the document. */
    static void put(ObjectNode node, Row row) {
        node.put("material", row.material());
        if (!row.amount().isBlank()) {
            number(node, "amount", row.amount());
            node.put("unit", row.unit());
        }
    }

    /** Puts a figure in as a number where it is one, else as typed, for the reader to judge. */
    static void number(ObjectNode node, String field, String typed) {
        NumberPhrase.number(typed).ifPresentOrElse(v -> node.put(field, v), () -> node.put(field, typed));
    }

    private static List<Row> filled(List<Row> rows, int shown) {
        List<Row> filled = new ArrayList<>(rows);
        while (filled.size() < shown) {
            filled.add(new Row("", "", "", ""));
        }
        return filled;
    }

    private static List<Row> unpacked(List<String> packed) {
        return packed.stream()
                .limit(MOST)
                .map(Row::unpacked)
                .filter(r -> !r.empty())
                .toList();
    }

    private static List<Row> rows(UnaryOperator<String> field, String prefix, int count) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String at = prefix + i + ".";
            Row row = new Row(
                    text(field.apply(at + "material")),
                    text(field.apply(at + "amount")),
                    text(field.apply(at + "unit")),
                    text(field.apply(at + "cut")));
            if (!row.empty()) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static Map<String, String> size(UnaryOperator<String> field) {
        Map<String, String> size = new LinkedHashMap<>();
        SIZES.forEach(name -> {
            String typed = text(field.apply(name));
            if (!typed.isEmpty()) {
                size.put(name, typed);
            }
        });
        return size;
    }

    private static String text(String typed) {
        String plain = typed == null ? "" : typed.replace(BETWEEN, " ").strip();
        return plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
    }

    private static int number(String typed) {
        return typed != null && typed.matches("[0-9]{1,3}") ? Integer.parseInt(typed) : 0;
    }
}
