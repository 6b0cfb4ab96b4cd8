package heapwright.author;

import heapwright.knowledge.Condition;
import heapwright.knowledge.Remedy;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How far rules reach.
 *
 * @param derived the states that one of them names
 * @param read the states that one of them asks for
 * @param proposed the steps that one of them proposes
 */
record RuleReach(Set<Condition> derived, Set<Condition> read, Set<Remedy> proposed) {

    /** The reach of the shipped rules: the build refuses them unless each state is named and each step proposed. */
    static RuleReach everything() {
        return new RuleReach(
                EnumSet.allOf(Condition.class), EnumSet.allOf(Condition.class), EnumSet.allOf(Remedy.class));
    }

    static RuleReach of(List<RuleFile> files) {
        String logic = files.stream().map(RuleFile::logic).collect(Collectors.joining("\n"));
        Set<String> read = RuleNames.after("condition (?:==|!=) Condition\\.(\\w+)", logic);
        RuleNames.after("condition (?:not )?in \\(([^)]*)\\)", logic)
                .forEach(list -> Pattern.compile("Condition\\.(\\w+)")
                        .matcher(list)
                        .results()
                        .forEach(m -> read.add(m.group(1))));
        return new RuleReach(
                all(Condition.class, RuleNames.after("new Holds\\( Condition\\.(\\w+)", logic)),
                all(Condition.class, read),
                all(Remedy.class, RuleNames.after("new Proposes\\( Remedy\\.(\\w+)", logic)));
    }

    private static <E extends Enum<E>> Set<E> all(Class<E> kind, Set<String> names) {
        return Arrays.stream(kind.getEnumConstants())
                .filter(c -> names.contains(c.name()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(kind)));
    }
}
