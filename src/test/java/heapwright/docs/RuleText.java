package heapwright.docs;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the text of a rule says that its metadata do not: on what it speaks and of what.
 *
 * @param id its id
 * @param words its conditions in plain words, from the comment above it
 * @param when its conditions
 * @param then its consequences
 */
record RuleText(String id, String words, String when, String then) {

    private static final Pattern RULE =
            Pattern.compile("(?s)// When ([^\\n]*?), then [^\\n]*\\nrule [^\\n]*\\n\\s*@id\\( \"([^\"]+)\" \\)"
                    + ".*?\\nwhen\\n(.*?)\\nthen\\n(.*?)\\nend\\n");
    private static final Pattern BROAD = Pattern.compile("\\w+\\(\\)|not in|!=|\\( \\$\\w+ : remedy \\)");
    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private static final Map<String, Kind> KINDS = Map.of(
            "digsIn()", new Kind("digs into the pile", r -> r.does().digsIn()),
            "disturbs()",
                    new Kind(
                            "opens, turns, wets or feeds the pile",
                            r -> r.does().disturbs()),
            "addsNitrogen()", new Kind("brings nitrogen", r -> r.does().addsNitrogen()),
            "addsAlkali()", new Kind("brings ash or lime", r -> r.does().addsAlkali()),
            "wets()", new Kind("brings water", r -> r.does().wets()),
            "heavy()", new Kind("is heavy work", r -> r.effort().heavy()));
    private static final Pattern EXCEPTED = Pattern.compile("(?s)(?:not in|!=) (\\([^)]*\\)|Remedy\\.\\w+)");
    private static final Pattern STEPS = Pattern.compile("\\b(?:Proposes|Planned|Offered)\\(");
    private static final Pattern NAMED = Pattern.compile("\\bRemedy\\.(\\w+)");
    private static final Pattern INSERTED = Pattern.compile("new (\\w+)\\( ([^)]*) \\)");

    /** What steps have in common, in words and by their column. */
    private record Kind(String words, Predicate<RemedyInfo> has) {}

    /** Every rule below {@code rules/}. */
    static List<RuleText> all() {
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            List<RuleText> all = new ArrayList<>();
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".drl")).sorted().toList()) {
                for (Matcher m = RULE.matcher(Files.readString(file)); m.find(); ) {
                    all.add(new RuleText(m.group(2), m.group(1), m.group(3), m.group(4)));
                }
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What it inserts, as the name of the fact and its parts. */
    List<Insertion> inserts() {
        return INSERTED.matcher(then)
                .results()
                .map(m -> new Insertion(m.group(1), List.of(m.group(2).split(",\\s*"))))
                .toList();
    }

    /**
     * A fact that a rule inserts.
     *
     * @param fact the name of the fact
     * @param parts its parts, as constants or variables
     */
    record Insertion(String fact, List<String> parts) {

        /** Whether a part is this constant. */
        boolean names(Enum<?> constant) {
            return parts.contains(constant.getDeclaringClass().getSimpleName() + "." + constant.name());
        }
    }

    /** Whether a condition names this constant. */
    boolean reads(Enum<?> constant) {
        return names(when, constant);
    }

    /** Whether it matches a fact of this kind with this constant. */
    boolean matches(Class<?> fact, Enum<?> constant) {
        return reads(constant)
                && patterns(Pattern.compile("\\b" + fact.getSimpleName() + "\\("))
                        .anyMatch(p -> names(p, constant));
    }

    private static boolean names(String text, Enum<?> constant) {
        String name = constant.getDeclaringClass().getSimpleName() + "." + constant.name();
        return text.contains(name)
                && Pattern.compile("\\b" + Pattern.quote(name) + "\\b")
                        .matcher(text)
                        .find();
    }

    /** The remedies that a part of an insertion stands for: the constant, or all that the variable may be. */
    Set<Remedy> remedies(String part) {
        if (!part.startsWith("$")) {
            return constants(part);
        }
        return patterns(STEPS)
                .filter(p -> p.contains(part + " :"))
                .map(RuleText::allowed)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(id + " binds no " + part));
    }

    /** In words what steps a part stands for, where the rule speaks of all but some; empty where it names them. */
    Optional<String> breadth(String part, Function<Remedy, String> name) {
        if (!part.startsWith("$")) {
            return Optional.empty();
        }
        return patterns(STEPS)
                .filter(p -> p.contains(part + " :"))
                .filter(p -> BROAD.matcher(p).find())
                .map(p -> "every step" + kind(p) + but(p, name))
                .findFirst();
    }

    private static String kind(String pattern) {
        return KINDS.entrySet().stream()
                .filter(e -> pattern.contains(e.getKey()))
                .map(e -> " that " + e.getValue().words())
                .findFirst()
                .orElse("");
    }

    private static String but(String pattern, Function<Remedy, String> name) {
        String excepted = EXCEPTED.matcher(pattern)
                .results()
                .flatMap(m -> constants(m.group(1)).stream())
                .map(name)
                .collect(Collectors.joining(" and "));
        return excepted.isEmpty() ? "" : " but " + excepted;
    }

    private static Set<Remedy> allowed(String pattern) {
        Set<Remedy> left = KNOWLEDGE.remedies().values().stream()
                .filter(r -> KINDS.entrySet().stream()
                        .filter(k -> pattern.contains(k.getKey()))
                        .allMatch(k -> k.getValue().has().test(r)))
                .map(RemedyInfo::id)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Remedy.class)));
        Matcher m = Pattern.compile("(?s)remedy (==|!=|in|not in) (\\([^)]*\\)|Remedy\\.\\w+)")
                .matcher(pattern);
        while (m.find()) {
            Set<Remedy> named = constants(m.group(2));
            UnaryOperator<Set<Remedy>> keep =
                    m.group(1).equals("==") || m.group(1).equals("in")
                            ? all -> intersection(all, named)
                            : all -> intersection(all, EnumSet.complementOf(EnumSet.copyOf(named)));
            left = keep.apply(left);
        }
        return left;
    }

    private static Set<Remedy> intersection(Set<Remedy> all, Set<Remedy> kept) {
        Set<Remedy> both = EnumSet.copyOf(all);
        both.retainAll(kept);
        return both;
    }

    private static Set<Remedy> constants(String text) {
        return NAMED.matcher(text)
                .results()
                .map(m -> Remedy.valueOf(m.group(1)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Remedy.class)));
    }

    /** The conditions on facts of a kind, each with everything between its brackets. */
    private Stream<String> patterns(Pattern fact) {
        List<String> found = new ArrayList<>();
        for (Matcher m = fact.matcher(when); m.find(); ) {
            int end = m.end();
            for (int open = 1; open > 0; end++) {
                open += when.charAt(end) == '(' ? 1 : when.charAt(end) == ')' ? -1 : 0;
            }
            found.add(when.substring(m.start(), end));
        }
        return found.stream();
    }
}
