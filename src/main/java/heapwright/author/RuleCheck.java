package heapwright.author;

import heapwright.advice.engine.Edges;
import heapwright.advice.engine.Pass;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Id;
import heapwright.knowledge.Known;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Strength;
import heapwright.pile.Closest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds in the text of rules what the house rules forbid, and names that do not exist, before any build. */
public final class RuleCheck {

    /** Judgement: more is not read at one sitting. */
    private static final int MOST_LINES = 300;

    private static final Set<String> IMPORTS =
            Set.of("heapwright.advice.fact.*", "heapwright.knowledge.*", "heapwright.pile.Action");

    private static final Pattern FORBIDDEN = Pattern.compile("(?<![\\w-])(salience|no-loop|lock-on-active|eval|function"
            + "|global|mvel|dialect|update|modify|retract|delete|insertLogical|accumulate|System|drools)(?![\\w-])");

    /** The passes that know degrees. */
    private static final Set<String> SOFT = Set.of("derive", "weigh");

    private static final String GATES = "derive/danger.drl";

    /** Days and turns are counted. */
    private static final Set<String> HARD_EDGES = Set.of("DERIVE-216");

    private static final Pattern HARD = Pattern.compile("Reads\\([^\\n]*(?:surely|likely)(?:Above|Below)");
    private static final Pattern FIGURE = Pattern.compile("(?<![\\w$])\\d");
    private static final Pattern SENTENCE = Pattern.compile("[\\p{Lu}\\d].*\\.");
    private static final Pattern SECOND_SENTENCE = Pattern.compile("[.!?] \\p{Lu}");
    private static final Pattern INSERT = Pattern.compile("insert\\( new \\w+\\(.*\\) \\);");
    private static final Pattern LATE = Pattern.compile("\\b(?:HoldsNot|Stands)\\( ");
    private static final Pattern NAMED = Pattern.compile("new Holds\\( Condition\\.(\\w+) \\)");
    private static final Pattern READ = Pattern.compile("condition [^)]*?Condition\\.(\\w+)");
    private static final Pattern WEIGHED =
            Pattern.compile("Placed\\( reading == Reading\\.(\\w+), side == Side\\.\\w+, limit == Limit\\.(\\w+)");

    private final Collection<String> sources;
    private final Map<String, String> seen = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    /** @param sources the keys of all sources */
    public RuleCheck(Collection<String> sources) {
        this.sources = sources;
    }

    /** Every fault of these files, a line each. */
    public List<String> faults(List<RuleFile> files) {
        files.forEach(this::file);
        return List.copyOf(faults);
    }

    private void file(RuleFile file) {
        if (file.lines() > MOST_LINES) {
            faults.add(file.name() + ": found " + file.lines() + " lines. Allowed: " + MOST_LINES
                    + ", so that it is read at one sitting; split it by subject.");
        }
        String packed = "package heapwright.rules." + file.pass() + ";";
        if (!file.text().startsWith(packed)) {
            faults.add(file.name() + ", line 1: the package is not that of its folder. Example: " + packed);
        }
        file.text()
                .lines()
                .filter(l -> l.startsWith("import ")
                        && !IMPORTS.contains(l.substring(7).replace(";", "")))
                .forEach(l -> faults.add(file.name() + ": found \"" + l + "\". Allowed: imports of "
                        + IMPORTS.stream().sorted().collect(Collectors.joining(", ")) + "."));
        long begun = file.text().lines().filter(l -> l.startsWith("rule ")).count();
        if (begun != file.rules().size()) {
            faults.add(file.name() + ": " + begun + " rules begin and "
                    + file.rules().size()
                    + " can be read to their end. A rule begins with a line rule \"problem: answer\" below its comment"
                    + " and ends with a line end.");
        }
        if (!SOFT.contains(file.pass()) && file.logic().contains("Placed(")) {
            faults.add(file.name() + ": found Placed, which has a degree. Allowed: in "
                    + String.join(" and ", SOFT.stream().sorted().toList())
                    + "; elsewhere read a state that derive names. Example: Holds( condition == Condition.WET ).");
        }
        file.rules().forEach(this::rule);
    }

    private void rule(WrittenRule rule) {
        said(rule);
        String logic = RuleFile.of(rule.file(), rule.body()).logic();
        for (Matcher m = FORBIDDEN.matcher(logic); m.find(); ) {
            fault(
                    rule,
                    "found \"" + m.group(1) + "\", by which rules come to depend on order or state. Allowed: conditions"
                            + " on facts, and insert.");
        }
        if (FIGURE.matcher(logic).find()) {
            fault(rule, "found a figure. Allowed: limits, which come in as facts. Example: limit == Limit.PH_ACID.");
        }
        if (logic.substring(Math.min(logic.length(), Math.max(0, logic.indexOf("when"))))
                .contains("\"")) {
            fault(rule, "found a text in quotes in its conditions or consequences. Allowed: ids. Example: Sign.SOGGY.");
        }
        rule.consequence()
                .lines()
                .skip(2)
                .map(String::strip)
                .filter(l -> !l.isEmpty() && !INSERT.matcher(l).matches())
                .forEach(
                        l -> fault(
                                rule,
                                "found \"" + l
                                        + "\" after then. Allowed: only insert. Example: insert( new Holds( Condition.WET ) );"));
        if (rule.consequence().isEmpty()) {
            fault(rule, "says nothing after a line then");
        }
        new RuleNames(logic).unknown().forEach(unknown -> fault(rule, unknown));
        new RuleFacts(logic).unknown().forEach(unknown -> fault(rule, unknown));
        degrees(rule);
        late(rule);
    }

    /** What every rule says of itself. */
    private void said(WrittenRule rule) {
        for (String key : List.of("id", "source", "rationale")) {
            if (rule.meta(key).filter(v -> !v.isBlank()).isEmpty()) {
                fault(rule, "@" + key + " is missing. Example: @" + key + "( \"…\" )");
            }
        }
        one(rule, "strength", Strength.values());
        one(rule, "evidence", Known.values());
        rule.meta("source")
                .filter(s -> !s.isBlank() && !sources.contains(s))
                .ifPresent(s -> fault(
                        rule, "@source: found \"" + s + "\". Allowed: a key of sources.json." + meant(s, sources)));
        String id = rule.id();
        String form = rule.pass().toUpperCase(Locale.ROOT) + "-[1-9]\\d{2,3}";
        if (!id.isEmpty() && !id.matches(form)) {
            fault(
                    rule,
                    "@id: found \"" + id + "\". Allowed: its pass and a number of three or four digits. Example: "
                            + rule.pass().toUpperCase(Locale.ROOT) + "-999");
        }
        String before = seen.putIfAbsent(id, rule.where());
        if (before != null && !id.isEmpty()) {
            fault(rule, "@id: found \"" + id + "\", which " + before + " has. Allowed: the next free number.");
        }
        if (!rule.name().matches("[^:]+: \\S.*")) {
            fault(rule, "its name is not \"problem: answer\". Example: rule \"wet: it is soggy\"");
        }
        if (!rule.above().matches("// When .+, then .+\\.")) {
            fault(rule, "the line above it does not say what it does. Example: // When it is soggy, then it is wet.");
        }
        if (!rule.body().contains("agenda-group \"" + rule.pass() + "\"")) {
            fault(rule, "it does not run in the pass of its folder. Example: agenda-group \"" + rule.pass() + "\"");
        }
        rule.meta("rationale")
                .filter(r -> !r.isBlank())
                .filter(r -> !SENTENCE.matcher(r).matches()
                        || SECOND_SENTENCE.matcher(r).find())
                .ifPresent(r -> fault(
                        rule,
                        "@rationale: found \"" + r
                                + "\". Allowed: the mechanism in one sentence, with a capital and a full stop."));
    }

    private <T extends Id> void one(WrittenRule rule, String key, T[] allowed) {
        List<String> ids = Arrays.stream(allowed).map(Id::id).toList();
        String told = rule.meta(key).orElse("");
        if (!ids.contains(told)) {
            fault(
                    rule,
                    "@" + key + ": found \"" + told + "\". Allowed: one of " + String.join(", ", ids) + "."
                            + meant(told, ids));
        }
    }

    private void degrees(WrittenRule rule) {
        if (SOFT.contains(rule.pass())
                && !rule.file().equals(GATES)
                && !HARD_EDGES.contains(rule.id())
                && HARD.matcher(rule.body()).find()) {
            fault(rule, "weighs a quantity at a sharp edge. Allowed: Placed( reading == …, side == …, limit == … ).");
        }
        if (rule.pass().equals(Pass.WEIGH.id()) != rule.consequence().contains("new Speaks( $row )")) {
            fault(rule, "in weigh, and only there, rows of evidence are joined: insert( new Speaks( $row ) );");
        }
        for (Matcher m = WEIGHED.matcher(rule.body()); m.find(); ) {
            RuleNames.constant(Reading.class, m.group(1))
                    .ifPresent(reading -> RuleNames.constant(Limit.class, m.group(2))
                            .filter(limit -> !Edges.known(reading, limit))
                            .ifPresent(limit -> fault(
                                    rule,
                                    "can never fire: nothing compares " + reading.id() + " with " + limit.id()
                                            + ". That edge would have to be added to Edges.")));
        }
    }

    /** What does not hold, and which danger stands, is known late: only names for evidence may ask for it. */
    private void late(WrittenRule rule) {
        boolean derives = rule.pass().equals(Pass.DERIVE.id());
        boolean asks = LATE.matcher(rule.body()).find();
        if (derives && asks && NAMED.matcher(rule.consequence()).results().anyMatch(m -> !forEvidence(m.group(1)))) {
            fault(
                    rule,
                    "asks for an absence or a danger, so the state that it names must be one for evidence alone:"
                            + " the constant in Condition with (true).");
        }
        if (!derives && !rule.pass().equals(Pass.WEIGH.id()) && rule.body().contains("HoldsNot( ")) {
            fault(rule, "found HoldsNot. Allowed: in derive and weigh.");
        }
        READ.matcher(rule.body())
                .results()
                .filter(m -> forEvidence(m.group(1)))
                .forEach(m -> fault(rule, "reads Condition." + m.group(1) + ", which is a name for evidence alone"));
    }

    private static boolean forEvidence(String condition) {
        return RuleNames.constant(Condition.class, condition)
                .filter(Condition::forEvidence)
                .isPresent();
    }

    private void fault(WrittenRule rule, String what) {
        faults.add(rule.where() + ": " + what);
    }

    private static String meant(String given, Collection<String> candidates) {
        return Closest.to(given, candidates)
                .map(near -> " Did you mean \"" + near + "\"?")
                .orElse("");
    }
}
