package heapwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import heapwright.advice.engine.Edges;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Rulebook;
import heapwright.advice.fact.Fixture;
import heapwright.author.RuleFile;
import heapwright.author.WrittenRule;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.KeepOutInfo;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.knowledge.When;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The compiled rules")
class RulebookTest {

    private static final List<RuleFile> RULES = RuleFile.below(Path.of("rules"), new ArrayList<>());

    private final List<RuleInfo> loaded = Rulebook.packed().rules();
    private final Knowledge knowledge = KnowledgeReader.packed();
    private final String logic = RULES.stream().map(RuleFile::logic).collect(Collectors.joining("\n"));

    @Test
    @DisplayName("are as many as the rules in the text, with the same ids")
    void nothingIsLost() {
        assertFalse(loaded.isEmpty());
        assertEquals(
                RULES.stream()
                        .flatMap(f -> f.rules().stream())
                        .map(WrittenRule::id)
                        .sorted()
                        .toList(),
                loaded.stream().map(RuleInfo::id).sorted().toList());
    }

    @Test
    @DisplayName("can be loaded in part, and refuse the passes that were left out")
    void inPart() {
        Rulebook audit = Rulebook.packed(EnumSet.of(Pass.AUDIT));
        assertEquals(loaded.stream().filter(r -> r.pass() == Pass.AUDIT).toList(), audit.rules());
        Inference inference = new Inference(audit, knowledge);
        assertEquals(List.of(), inference.audit(List.of()));
        assertThrows(IllegalStateException.class, () -> inference.run(List.of()));
    }

    @Test
    @DisplayName("name only sources that the table of sources has")
    void sources() {
        Set<String> missing = loaded.stream()
                .map(RuleInfo::source)
                .filter(s -> !knowledge.sources().containsKey(s))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), missing);
    }

    @Test
    @DisplayName("or the rows of evidence or the table of what stays out read every sign")
    void signs() {
        Set<String> read = named("Sign", logic);
        rows(When.Seen.class).forEach(w -> w.anyOf().forEach(s -> read.add(s.name())));
        rows(When.Denied.class).forEach(w -> w.anyOf().forEach(s -> read.add(s.name())));
        knowledge.keepOuts().values().forEach(k -> k.signs().forEach(s -> read.add(s.name())));
        assertEquals(Set.of(), without(Sign.class, read));
    }

    @Test
    @DisplayName("join rows that speak for every cause")
    void supportedCauses() {
        assertEquals(
                EnumSet.allOf(Cause.class),
                knowledge.evidence().stream()
                        .filter(row -> row.speaks() == Evidence.Speaks.FOR)
                        .map(Evidence::cause)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Cause.class))));
    }

    @Test
    @DisplayName("have a remedy for every cause")
    void mendedCauses() {
        Set<Cause> unmended = without(Cause.class, given("new Proposes\\( Remedy\\.\\w+, Cause\\.(\\w+)"));
        knowledge.dangers().values().forEach(d -> unmended.remove(d.cause()));
        assertEquals(Set.of(), unmended);
    }

    @Test
    @DisplayName("propose the step that the table names for what is already in")
    void alreadyIn() {
        List<String> unproposed = knowledge.keepOuts().values().stream()
                .filter(KeepOutInfo::nothingForkedThrough)
                .filter(k -> RULES.stream()
                        .flatMap(f -> f.rules().stream())
                        .noneMatch(r -> r.pass().equals("remedy")
                                && r.body().contains("KeepOutClass." + k.id().name() + ",")
                                && r.consequence()
                                        .contains("Remedy."
                                                + k.step().orElseThrow().name() + ",")))
                .map(k -> k.id().id())
                .toList();
        assertEquals(List.of(), unproposed);
    }

    @Test
    @DisplayName("propose every remedy")
    void proposedRemedies() {
        Set<Remedy> unproposed = without(Remedy.class, given("new Proposes\\( Remedy\\.(\\w+)"));
        knowledge.dangers().values().forEach(d -> unproposed.removeAll(d.steps()));
        assertEquals(Set.of(), unproposed);
    }

    @Test
    @DisplayName("derive every condition that they or the rows of evidence use, and no other")
    void conditions() {
        Set<Condition> derived = all(Condition.class, given("new Holds\\( Condition\\.(\\w+)"));
        Set<Condition> read = all(Condition.class, given("condition (?:==|!=) Condition\\.(\\w+)"));
        read.addAll(all(Condition.class, given("condition (?:not )?in \\(([^)]*)\\)")));
        knowledge.cautions().values().forEach(c -> {
            read.addAll(c.fits().onlyIf());
            read.addAll(c.fits().neverIf());
        });
        rows(When.Holds.class).forEach(w -> read.add(w.condition()));
        rows(When.HoldsNot.class).forEach(w -> read.add(w.condition()));
        assertEquals(derived, read, "derived and used");
        assertEquals(EnumSet.allOf(Condition.class), derived, "named and derived");
    }

    @Test
    @DisplayName("or the table of remedies use every caution")
    void cautions() {
        Set<String> used = named("Caution", logic);
        knowledge.remedies().values().forEach(r -> r.cautions().forEach(c -> used.add(c.name())));
        knowledge.dangers().values().forEach(d -> d.cautions().forEach(c -> used.add(c.name())));
        assertEquals(Set.of(), without(Caution.class, used));
    }

    @Test
    @DisplayName("or the program use every limit")
    void limits() throws IOException {
        Set<String> used = named("Limit", logic);
        used.addAll(named("Limit", program()));
        rows(When.Placed.class).forEach(w -> used.add(w.limit().name()));
        assertEquals(Set.of(), without(Limit.class, used));
    }

    @Test
    @DisplayName("weigh quantities only at edges that are known, and know no edge at which none is weighed")
    void edges() {
        Set<String> weighed = new TreeSet<>();
        Pattern stands =
                Pattern.compile("Placed\\( reading == Reading\\.(\\w+), side == Side\\.\\w+, limit == Limit\\.(\\w+)");
        for (Matcher m = stands.matcher(logic); m.find(); ) {
            weighed.add(m.group(1) + " at " + m.group(2));
        }
        rows(When.Placed.class).forEach(w -> weighed.add(w.reading() + " at " + w.limit()));
        Set<String> known = new TreeSet<>();
        for (Reading reading : Reading.values()) {
            for (Limit limit : Limit.values()) {
                if (Edges.known(reading, limit)) {
                    known.add(reading + " at " + limit);
                }
            }
        }
        assertEquals(known, weighed);
    }

    @Test
    @DisplayName("read every word that is known of place and container")
    void fixtures() {
        assertEquals(Set.of(), without(Fixture.class, named("Fixture", logic)));
    }

    /** What the rows of evidence of a kind wait for. */
    private <W extends When> Stream<W> rows(Class<W> kind) {
        return knowledge.evidence().stream()
                .map(Evidence::when)
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    private static String program() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            StringBuilder all = new StringBuilder();
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file));
            }
            return all.toString();
        }
    }

    /** The constants of an enum that a text names. */
    private static Set<String> named(String type, String text) {
        return groups("\\b" + type + "\\.([A-Z][A-Z_]+)", text);
    }

    /** What the group of a pattern finds in conditions and consequences. */
    private Set<String> given(String pattern) {
        return groups(pattern, logic);
    }

    private static Set<String> groups(String pattern, String text) {
        Set<String> found = new TreeSet<>();
        for (Matcher m = Pattern.compile(pattern).matcher(text); m.find(); ) {
            found.add(m.group(1));
        }
        return found;
    }

    private static <E extends Enum<E>> Set<E> all(Class<E> type, Set<String> words) {
        return Arrays.stream(type.getEnumConstants())
                .filter(c -> words.stream()
                        .anyMatch(w -> Pattern.compile("\\b" + c.name() + "\\b")
                                .matcher(w)
                                .find()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(type)));
    }

    private static <E extends Enum<E>> Set<E> without(Class<E> type, Set<String> used) {
        Set<E> unused = EnumSet.allOf(type);
        unused.removeIf(c -> used.contains(c.name()));
        return unused;
    }
}
