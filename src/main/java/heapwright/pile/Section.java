package heapwright.pile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** One object of the document with typed access to its fields; whatever does not fit goes to the findings. */
final class Section {

    private final Node.Obj node;
    private final Shape shape;
    private final Findings findings;

    private Section(Node.Obj node, Shape shape, Findings findings) {
        this.node = node;
        this.shape = shape;
        this.findings = findings;
    }

    /** The section, or nothing if the value is no object. Fields that the shape does not have are reported at once. */
    static Optional<Section> of(Node node, Shape shape, Findings findings) {
        if (!(node instanceof Node.Obj object)) {
            findings.wrong(node, "an object with " + shape.listed(), shape.example());
            return Optional.empty();
        }
        object.fields().forEach((name, value) -> {
            if (!shape.fields().contains(name)) {
                findings.wrong(
                        value,
                        "a field " + Shown.quoted(name),
                        shape.listed(),
                        shape.example(),
                        () -> Closest.to(name, shape.fields()));
            }
        });
        return Optional.of(new Section(object, shape, findings));
    }

    Findings findings() {
        return findings;
    }

    Optional<Node> field(String name) {
        if (!shape.fields().contains(name)) {
            throw new IllegalArgumentException(shape + " has no field " + name + "; add it to the shape");
        }
        return Optional.ofNullable(node.fields().get(name));
    }

    Optional<Node> needed(String name, String allowed, String example) {
        Optional<Node> found = field(name);
        if (found.isEmpty()) {
            findings.missing(node, name, allowed, example);
        }
        return found;
    }

    Optional<String> string(Node value, String allowed, String example) {
        if (value instanceof Node.Str text) {
            return Optional.of(text.value());
        }
        findings.wrong(value, allowed, example);
        return Optional.empty();
    }

    Optional<String> words(String name, Words words) {
        return field(name).flatMap(value -> {
            if (value instanceof Node.Str text && words.fit(text.value())) {
                return Optional.of(text.value());
            }
            findings.wrong(value, words.allowed(), words.example());
            return Optional.empty();
        });
    }

    boolean flag(String name) {
        return field(name).map(this::flag).orElse(false);
    }

    private boolean flag(Node value) {
        if (value instanceof Node.Bool flag) {
            return flag.value();
        }
        findings.wrong(value, "true or false, without quotes", "true");
        return false;
    }

    Optional<LocalDate> date(String name) {
        return field(name).flatMap(value -> {
            Optional<LocalDate> date = Dates.of(value);
            if (date.isEmpty()) {
                findings.wrong(value, value.shown(), Dates.ALLOWED, Dates.EXAMPLE, () -> Dates.closest(value));
            }
            return date;
        });
    }

    /** A number; text such as "12,5" is refused with the number it seems to be. */
    OptionalDouble number(Node value, String allowed, String example) {
        if (value instanceof Node.Num number) {
            return Double.isFinite(number.value()) ? OptionalDouble.of(number.value()) : OptionalDouble.empty();
        }
        if (value instanceof Node.Str text) {
            findings.wrong(
                    value,
                    "the text " + value.shown(),
                    allowed + ", as a bare number without quotes, with a decimal point",
                    example,
                    () -> Numbers.closest(text.value()));
        } else {
            findings.wrong(value, allowed, example);
        }
        return OptionalDouble.empty();
    }

    OptionalDouble number(Node value, double low, double high, String unit, String example) {
        if (value instanceof Node.Num fit && fit.value() >= low && fit.value() <= high) {
            return OptionalDouble.of(fit.value());
        }
        String allowed = "a figure from " + Shown.number(low) + " to " + Shown.number(high) + unit;
        OptionalDouble number = number(value, allowed, example);
        if (number.isPresent()) {
            findings.wrong(value, allowed, example);
        }
        return OptionalDouble.empty();
    }

    /** A quantity in the unit it is kept in. */
    OptionalDouble quantity(String name, Quantity quantity) {
        return field(name).map(value -> quantity(value, quantity)).orElse(OptionalDouble.empty());
    }

    OptionalDouble quantity(Node value, Quantity quantity) {
        if (!(value instanceof Node.Obj)) {
            findings.wrong(value, "a value with " + quantity.unitsAllowed(), quantity.example());
            return OptionalDouble.empty();
        }
        return Section.of(value, Shape.QUANTITY, findings)
                .map(section -> section.quantity(quantity))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble quantity(Quantity quantity) {
        Optional<Node> value = needed("value", quantity.span(), quantity.example());
        Optional<Unit> unit =
                needed("unit", quantity.unitsAllowed(), quantity.example()).flatMap(node -> unit(node, quantity));
        OptionalDouble number = value.map(node -> number(node, quantity.span(), quantity.example()))
                .orElse(OptionalDouble.empty());
        if (unit.isEmpty() || number.isEmpty()) {
            return OptionalDouble.empty();
        }
        double kept = quantity.keep(number.getAsDouble(), unit.get());
        if (quantity.possible(kept)) {
            return OptionalDouble.of(kept);
        }
        String given = value.get().shown() + " " + unit.get().symbol();
        String keptWords = quantity.shown(kept);
        String found = given.equals(keptWords) || !Double.isFinite(kept) ? given : given + " (" + keptWords + ")";
        findings.wrong(
                value.get(),
                found,
                quantity.span(),
                quantity.example(),
                () -> quantity.meant(number.getAsDouble(), unit.get())
                        .map(other -> value.get().shown() + " " + other.symbol()));
        return OptionalDouble.empty();
    }

    private Optional<Unit> unit(Node node, Quantity quantity) {
        String allowed = quantity.unitsAllowed();
        Optional<String> text = string(node, allowed, quantity.example());
        Optional<Unit> unit = text.flatMap(quantity.words()::find);
        if (text.isPresent() && unit.isEmpty()) {
            String given = text.get();
            findings.wrong(
                    node,
                    node.shown(),
                    allowed,
                    quantity.example(),
                    () -> quantity.words().closest(given));
        }
        return unit;
    }

    <E extends Enum<E> & Token> E token(String name, E[] all, E fallback) {
        return field(name).flatMap(value -> token(value, all)).orElse(fallback);
    }

    <E extends Enum<E> & Token> Optional<E> token(Node value, E[] all) {
        if (value instanceof Node.Str word) {
            for (E each : all) {
                if (each.token().equals(word.value())) {
                    return Optional.of(each);
                }
            }
        }
        List<String> tokens = Stream.of(all).map(Token::token).toList();
        String allowed = "one of " + String.join(", ", tokens);
        String example = Shown.quoted(tokens.get(0));
        string(value, allowed, example)
                .ifPresent(given ->
                        findings.wrong(value, value.shown(), allowed, example, () -> Closest.to(given, tokens)));
        return Optional.empty();
    }

    /** A list of tokens; one given twice counts once. */
    <E extends Enum<E> & Token> List<E> tokens(String name, E[] all) {
        Set<E> found = new LinkedHashSet<>();
        String example = "[" + Shown.quoted(all[0].token()) + "]";
        for (Node item : items(name, Lists.TOKENS, example)) {
            token(item, all).ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    Optional<Section> section(String name, Shape inner) {
        return field(name).flatMap(value -> Section.of(value, inner, findings));
    }

    List<Section> sections(String name, Shape inner, int most) {
        List<Section> sections = new ArrayList<>();
        for (Node item : items(name, most, "[" + inner.example() + "]")) {
            Section.of(item, inner, findings).ifPresent(sections::add);
        }
        return sections;
    }

    /** The items of a list field; none if the field is missing or no list or too long. */
    List<Node> items(String name, int most, String example) {
        Optional<Node> value = field(name);
        if (value.isEmpty()) {
            return List.of();
        }
        String allowed = "a list [ … ] of up to " + most + " items";
        if (!(value.get() instanceof Node.Arr list)) {
            findings.wrong(value.get(), allowed, example);
            return List.of();
        }
        if (list.items().size() > most) {
            findings.wrong(list, "a list of " + list.items().size() + " items", allowed, example);
            return List.of();
        }
        return list.items();
    }

    /** The entries of a field that is an object with free names. */
    Map<String, Node> entries(String name, String allowed, String example) {
        Optional<Node> value = field(name);
        if (value.isEmpty()) {
            return Map.of();
        }
        if (value.get() instanceof Node.Obj object) {
            return new LinkedHashMap<>(object.fields());
        }
        findings.wrong(value.get(), allowed, example);
        return Map.of();
    }
}
