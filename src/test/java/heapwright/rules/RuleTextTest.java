package heapwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import heapwright.knowledge.Condition;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The text of the rules")
class RuleTextTest {

    private static final int MOST_LINES = 300;

    private static final Set<String> IMPORTS =
            Set.of("heapwright.advice.fact.*", "heapwright.knowledge.*", "heapwright.pile.Action");

    /** The passes that know degrees. */
    private static final Set<String> SOFT = Set.of("derive", "weigh");

    /** Days and turns are counted. */
    private static final Set<String> HARD_EDGES = Set.of("DERIVE-216");

    private static final Pattern FIGURE = Pattern.compile("(?<![\\w$])\\d");

    private static final Pattern SENTENCE_INSIDE = Pattern.compile("[.!?] \\p{Lu}");

    private final List<DrlFile> files = DrlFile.all();
    private final List<DrlRule> rules = DrlFile.allRules();

    @ParameterizedTest(name = "has no {0}")
    @ValueSource(
            strings = {
                "salience",
                "no-loop",
                "lock-on-active",
                "eval",
                "function",
                "global",
                "mvel",
                "dialect",
                "update",
                "modify",
                "retract",
                "delete",
                "insertLogical",
                "accumulate",
                "System",
                "drools"
            })
    @DisplayName("has no construct that makes rules depend on order or state")
    void noForbiddenConstruct(String construct) {
        Pattern word = Pattern.compile("(?<![\\w-])" + Pattern.quote(construct) + "(?![\\w-])");
        holds(files, f -> !word.matcher(f.logic()).find(), f -> f.path().toString());
    }

    @Test
    @DisplayName("imports facts, names of the knowledge and actions, and nothing else")
    void imports() {
        holds(
                files,
                f -> f.text()
                        .lines()
                        .filter(l -> l.startsWith("import "))
                        .allMatch(l -> IMPORTS.contains(l.substring("import ".length(), l.length() - 1))),
                f -> f.path().toString());
    }

    @Test
    @DisplayName("holds no figures: limits come in as facts")
    void noBareFigures() {
        holds(files, f -> !FIGURE.matcher(f.logic()).find(), f -> f.path().toString());
    }

    @Test
    @DisplayName("holds no strings in conditions and consequences")
    void noStrings() {
        holds(files, f -> !f.logic().contains("\""), f -> f.path().toString());
    }

    @Test
    @DisplayName("weighs quantities at soft edges, but for the gates of danger")
    void softEdges() {
        Pattern hard = Pattern.compile("Reads\\([^\\n]*(?:surely|likely)(?:Above|Below)");
        holds(
                rules,
                r -> !SOFT.contains(r.folder())
                        || r.file().endsWith(Path.of("derive", "danger.drl"))
                        || HARD_EDGES.contains(r.id())
                        || !hard.matcher(r.body()).find(),
                DrlRule::where);
    }

    @Test
    @DisplayName("speaks of degrees only in the passes that know them")
    void degrees() {
        holds(
                files,
                f -> SOFT.contains(f.folder()) || !f.logic().contains("Placed("),
                f -> f.path().toString());
    }

    @Test
    @DisplayName("asks what does not hold, and which danger stands, only in names that nothing but evidence reads")
    void lateNames() {
        Set<String> forEvidence = Arrays.stream(Condition.values())
                .filter(Condition::forEvidence)
                .map(Enum::name)
                .collect(Collectors.toSet());
        Pattern late = Pattern.compile("\\b(?:HoldsNot|Stands)\\( ");
        Pattern named = Pattern.compile("new Holds\\( Condition\\.(\\w+) \\)");
        holds(
                rules,
                r -> !r.folder().equals("derive")
                        || !late.matcher(r.body()).find()
                        || named.matcher(r.consequence()).results().allMatch(m -> forEvidence.contains(m.group(1))),
                DrlRule::where);
        holds(
                rules,
                r -> r.folder().equals("derive")
                        || r.folder().equals("weigh")
                        || !r.body().contains("HoldsNot( "),
                DrlRule::where);
        Pattern read = Pattern.compile("condition [^)]*?Condition\\.(\\w+)");
        holds(
                rules,
                r -> read.matcher(r.body()).results().noneMatch(m -> forEvidence.contains(m.group(1))),
                DrlRule::where);
    }

    @Test
    @DisplayName("joins rows of evidence in the weigh pass and weighs nothing else there")
    void weighOnlyJoins() {
        holds(rules, r -> r.folder().equals("weigh") == r.consequence().contains("new Speaks( $row )"), DrlRule::where);
    }

    @Test
    @DisplayName("stands in files of at most 300 lines")
    void shortFiles() {
        holds(files, f -> f.lines() <= MOST_LINES, f -> f.path() + " has " + f.lines());
    }

    @Test
    @DisplayName("belongs to the package of its folder")
    void packageOfFolder() {
        holds(
                files,
                f -> f.text().startsWith("package heapwright.rules." + f.folder() + ";"),
                f -> f.path().toString());
    }

    @Test
    @DisplayName("reads as rules from end to end")
    void everyRuleIsSeen() {
        for (DrlFile file : files) {
            long begun = file.text().lines().filter(l -> l.startsWith("rule ")).count();
            assertEquals(begun, file.rules().size(), file.path().toString());
        }
        assertFalse(rules.isEmpty());
    }

    @ParameterizedTest(name = "says {0} in every rule")
    @ValueSource(strings = {"id", "strength", "evidence", "source", "rationale"})
    @DisplayName("says what every rule must say of itself")
    void metadata(String key) {
        holds(rules, r -> r.meta(key).filter(v -> !v.isBlank()).isPresent(), DrlRule::where);
    }

    @Test
    @DisplayName("runs every rule in the pass of its folder")
    void agendaGroup() {
        holds(rules, r -> r.body().contains("agenda-group \"" + r.folder() + "\""), DrlRule::where);
    }

    @Test
    @DisplayName("starts every rule's id with its pass")
    void idOfPass() {
        holds(
                rules,
                r -> r.id().matches(r.folder().toUpperCase(Locale.ROOT) + "-[1-9]\\d{2,3}"),
                r -> r.where() + " is " + r.id());
    }

    @Test
    @DisplayName("uses every id once")
    void idsAreUnique() {
        Set<String> seen = new HashSet<>();
        holds(rules, r -> seen.add(r.id()), r -> r.where() + " repeats " + r.id());
    }

    @Test
    @DisplayName("names every rule as a problem and its answer")
    void names() {
        holds(rules, r -> r.name().matches("[^:]+: \\S.*"), DrlRule::where);
    }

    @Test
    @DisplayName("says above every rule what it does when")
    void whenThen() {
        holds(rules, r -> r.above().matches("// When .+, then .+\\."), r -> r.where() + ": " + r.above());
    }

    @Test
    @DisplayName("gives the mechanism in one sentence with a full stop")
    void rationale() {
        holds(
                rules,
                r -> {
                    String rationale = r.meta("rationale").orElse("");
                    return rationale.matches("[\\p{Lu}\\d].*\\.")
                            && !SENTENCE_INSIDE.matcher(rationale).find();
                },
                r -> r.where() + ": " + r.meta("rationale").orElse(""));
    }

    @Test
    @DisplayName("only inserts in consequences")
    void onlyInserts() {
        holds(
                rules,
                r -> r.consequence()
                        .lines()
                        .skip(2)
                        .map(String::strip)
                        .filter(l -> !l.isEmpty())
                        .allMatch(l -> l.matches("insert\\( new \\w+\\(.*\\) \\);")),
                DrlRule::where);
    }

    private static <T> void holds(List<T> all, Predicate<T> rule, Function<T, String> told) {
        List<String> broken = new ArrayList<>();
        Stream<T> against = all.stream().filter(rule.negate());
        against.map(told).forEach(broken::add);
        assertEquals("", broken.stream().collect(Collectors.joining("\n")), "where it does not hold");
    }
}
