package heapwright.knowledge;

import heapwright.pile.Token;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One object of a table with typed access to its fields. What does not fit ends the reading of the row with a
 * {@link RowFault}; a field that nobody asked for is a fault too, since it would be silently lost.
 */
final class Row {

    private final Place place;
    private final Map<String, Object> fields;
    private final Set<String> asked = new HashSet<>();

    /**
     * @param place where it stands
     * @param fields text, {@link Double}, {@link Boolean}, {@link List} or {@link Row} by name; null is left out
     */
    Row(Place place, Map<String, Object> fields) {
        this.place = place;
        this.fields = fields;
    }

    /** Where an object stands: the file, its line and the way to it. */
    record Place(String file, int line, String pointer) {}

    /** What the maker makes of the row, when no field is left over. */
    <T> T as(Function<Row, T> maker) {
        T made = maker.apply(this);
        if (!asked.containsAll(fields.keySet())) {
            Set<String> unknown = new TreeSet<>(fields.keySet());
            unknown.removeAll(asked);
            throw fault(unknown.iterator().next(), "a field of this name", "only " + new TreeSet<>(asked), "");
        }
        return made;
    }

    String text(String name) {
        return needed(name, String.class, "text in double quotes", "\"a few plain words\"");
    }

    Optional<String> textIfAny(String name) {
        return ifAny(name, () -> text(name));
    }

    List<String> texts(String name) {
        String allowed = "a list of texts";
        String example = "[\"one\", \"another\"]";
        List<String> texts = new ArrayList<>();
        for (Object item : items(name)) {
            if (!(item instanceof String text)) {
                throw fault(name, shown(item) + " in the list", allowed, example);
            }
            texts.add(text);
        }
        return texts;
    }

    /** The texts of a list; none where the field is not there. */
    List<String> textsIfAny(String name) {
        return ifAny(name, () -> texts(name)).orElse(List.of());
    }

    /** The items of a list, whatever they are. */
    List<?> items(String name) {
        return needed(name, List.class, "a list", "[ … ]");
    }

    double number(String name) {
        return needed(name, Double.class, "a number without quotes", "12.5");
    }

    OptionalDouble numberIfAny(String name) {
        return ifAny(name, () -> number(name)).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    int whole(String name) {
        double number = number(name);
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw fault(name, shown(number), "a whole number", "12");
        }
        return (int) number;
    }

    boolean flag(String name) {
        return needed(name, Boolean.class, "true or false", "true");
    }

    Optional<Boolean> flagIfAny(String name) {
        return ifAny(name, () -> flag(name));
    }

    /** The constant that the field names by its id. */
    <E extends Enum<E>> E one(String name, Ids<E> ids) {
        return one(name, text(name), ids);
    }

    <E extends Enum<E>> Optional<E> oneIfAny(String name, Ids<E> ids) {
        return ifAny(name, () -> one(name, ids));
    }

    <E extends Enum<E>> List<E> several(String name, Ids<E> ids) {
        return texts(name).stream().map(id -> one(name, id, ids)).toList();
    }

    /** One constant or more, where the field is there. */
    <E extends Enum<E>> Optional<List<E>> severalIfAny(String name, Ids<E> ids) {
        return ifAny(name, () -> {
            List<E> all = several(name, ids);
            if (all.isEmpty()) {
                throw fault(name, "an empty list", "one id or more", "");
            }
            return all;
        });
    }

    /** Whether it has a field of this name. */
    boolean has(String name) {
        return fields.containsKey(name);
    }

    <T> T row(String name, Function<Row, T> maker) {
        return needed(name, Row.class, "an object { … }", "").as(maker);
    }

    <T> Optional<T> rowIfAny(String name, Function<Row, T> maker) {
        return ifAny(name, () -> row(name, maker));
    }

    /** A list of objects; none where the field is not there. */
    <T> List<T> rowsIfAny(String name, Function<Row, T> maker) {
        return ifAny(
                        name,
                        () -> items(name).stream()
                                .map(item -> {
                                    if (!(item instanceof Row row)) {
                                        throw fault(name, shown(item) + " in the list", "a list of objects", "[{ … }]");
                                    }
                                    return row.as(maker);
                                })
                                .toList())
                .orElse(List.of());
    }

    RowFault fault(String field, String found, String allowed, String example) {
        return new RowFault(place.file() + ", line " + place.line() + ", " + place.pointer() + "/" + field + ": found "
                + found + ". Allowed: " + allowed + "." + (example.isEmpty() ? "" : " Example: " + example + "."));
    }

    private <E extends Enum<E>> E one(String name, String id, Ids<E> ids) {
        E found = ids.byId.get(id);
        if (found == null) {
            throw fault(
                    name,
                    shown(id),
                    "one of " + ids.byId.keySet().stream().sorted().collect(Collectors.joining(", ")),
                    "");
        }
        return found;
    }

    private <T> Optional<T> ifAny(String name, java.util.function.Supplier<T> read) {
        asked.add(name);
        return fields.containsKey(name) ? Optional.of(read.get()) : Optional.empty();
    }

    private <T> T needed(String name, Class<T> kind, String allowed, String example) {
        asked.add(name);
        Object value = fields.get(name);
        if (!kind.isInstance(value)) {
            throw fault(name, shown(value), allowed, example);
        }
        return kind.cast(value);
    }

    private static String shown(Object value) {
        if (value == null) {
            return "nothing";
        }
        return value instanceof String text
                ? "\"" + text + "\""
                : value instanceof Row ? "an object" : value.toString();
    }

    /** The constants of an enum by their ids. */
    static final class Ids<E extends Enum<E>> {
        private final Map<String, E> byId = new HashMap<>();

        private Ids(E[] all, Function<E, String> name) {
            Arrays.stream(all).forEach(e -> byId.put(name.apply(e), e));
        }

        static <E extends Enum<E> & Id> Ids<E> of(E[] all) {
            return new Ids<>(all, Id::id);
        }

        /** The words of the pile document. */
        static <E extends Enum<E> & Token> Ids<E> ofTokens(E[] all) {
            return new Ids<>(all, Token::token);
        }
    }
}
