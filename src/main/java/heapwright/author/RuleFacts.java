package heapwright.author;

import heapwright.advice.fact.Seen;
import heapwright.pile.Closest;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The facts that conditions match and consequences insert.
 *
 * @param logic conditions and consequences as text
 */
record RuleFacts(String logic) {

    /** Every fact there is. */
    static final List<String> NAMES = List.of(
            "AlreadyIn",
            "Barred",
            "Concluded",
            "Contradicts",
            "Denied",
            "Did",
            "Disputed",
            "Failed",
            "Graded",
            "Harmed",
            "Has",
            "Helped",
            "Holds",
            "HoldsNot",
            "Judges",
            "LimitIs",
            "ModelSays",
            "Offered",
            "Once",
            "Outdated",
            "Placed",
            "Planned",
            "Precedes",
            "Proposes",
            "Reads",
            "Replaces",
            "RowOnDenied",
            "RowOnFailed",
            "RowOnHelped",
            "RowOnHolds",
            "RowOnHoldsNot",
            "RowOnKeptOut",
            "RowOnMeasured",
            "RowOnModel",
            "RowOnPlaced",
            "RowOnSeen",
            "RowOnWentIn",
            "Seen",
            "SetAside",
            "Spares",
            "Speaks",
            "Stand",
            "Stands",
            "Suspected",
            "Turned",
            "Underway",
            "Unripe",
            "Waiting",
            "Warns",
            "WarnsAlways",
            "WentIn",
            "Withholds");

    private static final String ROOM = Seen.class.getPackageName() + ".";

    private static final Pattern MATCHED =
            Pattern.compile("(?m)^\\s*(?:not |exists )?(?:\\$\\w+ : )?([A-Z]\\w*)\\((.*)$");
    private static final Pattern INSERTED = Pattern.compile("\\bnew ([A-Z]\\w*)\\(");
    private static final Pattern FIELD =
            Pattern.compile("(?<![.$\\w])([a-z]\\w*)(?:\\(|\\s*(?:==|!=|<|>)|\\s+(?:not\\s+)?in\\b)|:\\s*([a-z]\\w*)");
    private static final Set<String> NO_FIELDS = Set.of("not", "in", "new");

    /** What is named and is not there, in words. */
    Set<String> unknown() {
        Set<String> unknown = new TreeSet<>();
        for (Matcher m = MATCHED.matcher(logic); m.find(); ) {
            Optional<Class<?>> fact = fact(m.group(1));
            if (fact.isEmpty()) {
                unknown.add(noFact(m.group(1)));
            } else {
                fields(fact.get(), m.group(2), unknown);
            }
        }
        for (Matcher m = INSERTED.matcher(logic); m.find(); ) {
            if (fact(m.group(1)).isEmpty()) {
                unknown.add(noFact(m.group(1)));
            }
        }
        return unknown;
    }

    private static void fields(Class<?> fact, String conditions, Set<String> unknown) {
        Set<String> names =
                Arrays.stream(fact.getMethods()).map(Method::getName).collect(Collectors.toSet());
        Set<String> parts = fact.isRecord()
                ? Arrays.stream(fact.getRecordComponents())
                        .map(part -> part.getName())
                        .collect(Collectors.toCollection(TreeSet::new))
                : names;
        for (Matcher m = FIELD.matcher(conditions); m.find(); ) {
            String field = m.group(1) == null ? m.group(2) : m.group(1);
            if (!names.contains(field) && !NO_FIELDS.contains(field)) {
                unknown.add("found \"" + field + "\" of " + fact.getSimpleName() + ". Allowed: "
                        + String.join(", ", parts) + "."
                        + Closest.to(field, parts)
                                .map(near -> " Did you mean \"" + near + "\"?")
                                .orElse(""));
            }
        }
    }

    private static String noFact(String name) {
        return "found the fact " + name + ". Allowed: one of the " + NAMES.size() + " facts in " + ROOM + "*."
                + Closest.to(name, NAMES)
                        .map(near -> " Did you mean \"" + near + "\"?")
                        .orElse(" Example: Seen.");
    }

    private static Optional<Class<?>> fact(String name) {
        try {
            return NAMES.contains(name) ? Optional.of(Class.forName(ROOM + name)) : Optional.empty();
        } catch (ClassNotFoundException e) {
            return Optional.empty();
        }
    }
}
