package heapwright.knowledge;

import heapwright.pile.Closest;
import heapwright.pile.Token;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * One object of a table with typed access to its fields. Of a field that does not fit the fault is noted and something
 * empty stands in for it, so that one reading finds all faults of the row; what was made of a row with faults is to be
 * thrown away. A field that nobody asked for is a fault too, since it would be silently lost.
 */
final class Row {

    private final Place place;
    private final Map<String, Object> fields;
    private final List<String> faults;
    private final Set<String> asked = new HashSet<>();

    /**
     * @param place where it stands
     * @param fields text, {@link Double}, {@link Boolean}, {@link List} or {@link Row} by name; null is left out
     * @param faults takes what does not fit, a line each
     */
    Row(Place place, Map<String, Object> fields, List<String> faults) {
        this.place = place;
        this.fields = fields;
        this.faults = faults;
    }

    /** Where an object stands: the file, its line and the way to it. */
    record Place(String file, int line, String pointer) {}

    Place place() {
        return place;
    }

    /** What the row calls itself, without having been asked; empty when it does not say. */
    String id() {
        return fields.getOrDefault("id", fields.get("key")) instanceof String id ? id : "";
    }

    /** What the maker makes of the row; fields that are left over are faults. */
    <T> T as(Function<Row, T> maker) {
        T made = maker.apply(this);
        Set<String> unknown = new TreeSet<>(fields.keySet());
        unknown.removeAll(asked);
        Set<String> free = new TreeSet<>(asked);
        free.removeAll(fields.keySet());
        unknown.forEach(name -> faults.add(
                message(name, "a field of this name", "only " + new TreeSet<>(asked), "") + meant(name, free)));
        return made;
    }

    String text(String name) {
        String text = needed(name, String.class, "text in double quotes", "\"a few plain words\"");
        if (text != null && text.chars().anyMatch(Character::isISOControl)) {
            // It would be written to a terminal as it is.
            faults.add(message(name, "a control character", "letters, figures and signs that can be seen", ""));
        }
        return text == null ? "" : text;
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
                faults.add(message(name, shown(item) + " in the list", allowed, example));
                continue;
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
        List<?> items = needed(name, List.class, "a list", "[ … ]");
        return items == null ? List.of() : items;
    }

    double number(String name) {
        Double number = needed(name, Double.class, "a number without quotes", "12.5");
        if (number != null && number.isInfinite()) {
            faults.add(message(name, "a number too large to reckon with", "a number without quotes", "12.5"));
        }
        return number == null || number.isInfinite() ? 0 : number;
    }

    OptionalDouble numberIfAny(String name) {
        return ifAny(name, () -> number(name)).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    int whole(String name) {
        double number = number(name);
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            faults.add(message(name, shown(number), "a whole number", "12"));
            return 0;
        }
        return (int) number;
    }

    boolean flag(String name) {
        Boolean flag = needed(name, Boolean.class, "true or false", "true");
        return flag != null && flag;
    }

    Optional<Boolean> flagIfAny(String name) {
        return ifAny(name, () -> flag(name));
    }

    /** The constant that the field names by its id; null when it names none, which is a fault. */
    <E extends Enum<E>> E one(String name, Ids<E> ids) {
        String id = needed(name, String.class, "text in double quotes", "\"a few plain words\"");
        return id == null ? null : one(name, id, ids);
    }

    <E extends Enum<E>> Optional<E> oneIfAny(String name, Ids<E> ids) {
        return ifAny(name, () -> one(name, ids));
    }

    <E extends Enum<E>> List<E> several(String name, Ids<E> ids) {
        return texts(name).stream()
                .map(id -> one(name, id, ids))
                .filter(Objects::nonNull)
                .toList();
    }

    /** One constant or more, where the field is there. */
    <E extends Enum<E>> Optional<List<E>> severalIfAny(String name, Ids<E> ids) {
        return ifAny(name, () -> {
            List<E> all = several(name, ids);
            if (fields.get(name) instanceof List<?> items && items.isEmpty()) {
                faults.add(message(name, "an empty list", "one id or more", ""));
            }
            return all;
        });
    }

    /** Whether it has a field of this name. */
    boolean has(String name) {
        return fields.containsKey(name);
    }

    /** What the maker makes of an object; null when there is none or it has a fault. */
    <T> T row(String name, Function<Row, T> maker) {
        Row row = needed(name, Row.class, "an object { … }", "");
        return row == null ? null : row.taken(maker);
    }

    private <T> T taken(Function<Row, T> maker) {
        try {
            return as(maker);
        } catch (RowFault fault) {
            faults.add(fault.getMessage());
            return null;
        }
    }

    <T> Optional<T> rowIfAny(String name, Function<Row, T> maker) {
        return ifAny(name, () -> row(name, maker));
    }

    /** A list of objects; none where the field is not there. */
    <T> List<T> rowsIfAny(String name, Function<Row, T> maker) {
        return ifAny(name, () -> {
                    List<T> rows = new ArrayList<>();
                    for (Object item : items(name)) {
                        if (item instanceof Row row) {
                            Optional.ofNullable(row.taken(maker)).ifPresent(rows::add);
                        } else {
                            faults.add(message(name, shown(item) + " in the list", "a list of objects", "[{ … }]"));
                        }
                    }
                    return rows;
                })
                .orElse(List.of());
    }

    /** For a maker that cannot go on: ends the reading of this object. */
    RowFault fault(String field, String found, String allowed, String example) {
        return new RowFault(message(field, found, allowed, example));
    }

    private String message(String field, String found, String allowed, String example) {
        return place.file() + ", line " + place.line() + ", " + place.pointer() + "/" + field + ": found " + found
                + ". Allowed: " + allowed + "." + (example.isEmpty() ? "" : " Example: " + example + ".");
    }

    private static String meant(String given, Collection<String> candidates) {
        return Closest.to(given, candidates)
                .map(near -> " Did you mean \"" + near + "\"?")
                .orElse("");
    }

    private <E extends Enum<E>> E one(String name, String id, Ids<E> ids) {
        E found = ids.byId.get(id);
        if (found == null) {
            faults.add(message(name, shown(id), ids.allowed(), "") + meant(id, ids.byId.keySet()));
        }
        return found;
    }

    private <T> Optional<T> ifAny(String name, java.util.function.Supplier<T> read) {
        asked.add(name);
        return fields.containsKey(name) ? Optional.ofNullable(read.get()) : Optional.empty();
    }

    private <T> T needed(String name, Class<T> kind, String allowed, String example) {
        asked.add(name);
        Object value = fields.get(name);
        if (!kind.isInstance(value)) {
            faults.add(message(name, shown(value), allowed, example));
            return null;
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
        private static final int FEW = 30;
        private static final int SOME = 5;

        private final Map<String, E> byId = new HashMap<>();

        private Ids(E[] all, Function<E, String> name) {
            Arrays.stream(all).forEach(e -> byId.put(name.apply(e), e));
        }

        /** What may stand there; of long lists not each word, as nobody reads a hundred. */
        private String allowed() {
            List<String> all = byId.keySet().stream().sorted().toList();
            return all.size() <= FEW
                    ? "one of " + String.join(", ", all)
                    : "one of " + all.size() + " ids, such as " + String.join(", ", all.subList(0, SOME));
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
