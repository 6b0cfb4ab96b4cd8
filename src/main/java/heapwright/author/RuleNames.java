package heapwright.author;

import heapwright.advice.fact.Fixture;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Danger;
import heapwright.knowledge.KeepOutClass;
import heapwright.knowledge.Limit;
import heapwright.knowledge.ModelFinding;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Side;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Trait;
import heapwright.pile.Action;
import heapwright.pile.Closest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The constants that conditions and consequences name.
 *
 * @param logic conditions and consequences as text
 */
record RuleNames(String logic) {

    private static final List<Class<? extends Enum<?>>> KINDS = List.of(
            Sign.class,
            Condition.class,
            Cause.class,
            Remedy.class,
            Caution.class,
            Danger.class,
            Limit.class,
            Reading.class,
            Side.class,
            Trait.class,
            KeepOutClass.class,
            ModelFinding.class,
            Fixture.class,
            Action.class);

    private static final Pattern NAME = Pattern.compile("\\b([A-Z][A-Za-z]+)\\.([A-Z][A-Z0-9_]*)\\b");

    /** The constant of that name. */
    static <E extends Enum<E>> Optional<E> constant(Class<E> kind, String name) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(c -> c.name().equals(name))
                .findFirst();
    }

    /** What is named and is not there, in words. */
    Set<String> unknown() {
        Set<String> unknown = new TreeSet<>();
        for (Matcher m = NAME.matcher(logic); m.find(); ) {
            for (Class<? extends Enum<?>> kind : KINDS) {
                if (kind.getSimpleName().equals(m.group(1))) {
                    List<String> names = Arrays.stream(kind.getEnumConstants())
                            .map(Enum::name)
                            .toList();
                    if (!names.contains(m.group(2))) {
                        unknown.add("found " + m.group() + ". Allowed: one of the " + names.size() + " constants of "
                                + m.group(1) + "."
                                + Closest.to(m.group(2), names)
                                        .map(near -> " Did you mean \"" + m.group(1) + "." + near + "\"?")
                                        .orElse(""));
                    }
                }
            }
        }
        return unknown;
    }

    /** The names of constants of a kind that stand behind a text. */
    static Set<String> after(String pattern, String logic) {
        Set<String> found = new TreeSet<>();
        Pattern.compile(pattern).matcher(logic).results().forEach(m -> found.add(m.group(1)));
        return found;
    }
}
