package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Outdated;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What advice is made of, on piles written for it. */
@DisplayName("Advice")
class AdvisorTest {

    private static final String RECIPE = "'recipe': [{'material': 'leaves-mixed', 'amount': 60, 'unit': 'bucket'}], ";

    /** Dry, starved, small and in frost: winter is explained by its size. */
    private static final String COLD = "'built': '2026-10-01', 'asOf': '2026-11-21', " + RECIPE
            + "'log': [{'date': '2026-11-21', 'seen': ['frost-at-night', 'core-cold', 'squeeze-crumbles']}]";

    private static Advice diagnosed(String fields) {
        return TestPile.ADVISOR.diagnose(TestPile.of(fields));
    }

    private static Set<Cause> causes(List<Finding> findings) {
        return findings.stream().map(Finding::cause).collect(Collectors.toSet());
    }

    private static List<Object> results(Advice advice, Class<?> kind) {
        return advice.outcome().of(kind).stream().map(f -> f.result()).toList();
    }

    @Test
    @DisplayName(
            "finds all that is at least possible, the likeliest first, and tells apart what another finding explains")
    void findings() {
        Advice advice = diagnosed(COLD);
        List<Double> likelihoods =
                advice.findings().stream().map(Finding::likelihood).toList();
        assertTrue(likelihoods.size() > 2, likelihoods.toString());
        for (int i = 1; i < likelihoods.size(); i++) {
            assertTrue(likelihoods.get(i) <= likelihoods.get(i - 1), likelihoods.toString());
        }
        Set<Cause> aside = results(advice, SetAside.class).stream()
                .map(r -> ((SetAside) r).cause())
                .collect(Collectors.toSet());
        assertEquals(Set.of(Cause.SLOWED_BY_WINTER), aside);
        assertEquals(aside, causes(advice.setAside()));
        assertTrue(advice.setAside().get(0).setAside().isPresent());
        assertTrue(advice.findings().stream().allMatch(f -> f.setAside().isEmpty()));
        Set<Cause> possible = advice.outcome().weighed().values().stream()
                .filter(w -> w.grade().atLeast(Grade.POSSIBLE))
                .map(w -> w.cause())
                .filter(c -> !aside.contains(c))
                .collect(Collectors.toSet());
        assertEquals(possible, causes(advice.findings()));
        assertEquals(
                advice.findings().get(0).cause(),
                advice.why().orElseThrow().cause().orElseThrow());
    }

    @Test
    @DisplayName("warns of what is so whatever is done, the gravest first")
    void cautions() {
        Advice advice = diagnosed("'built': '2026-05-01', 'asOf': '2026-12-21', " + RECIPE
                + "'log': [{'date': '2026-12-21', 'seen': ['frost-at-night', 'rodents', 'smells-ammonia']}]");
        assertTrue(advice.cautions().size() > 1, advice.cautions().toString());
        List<Integer> gravity = advice.cautions().stream()
                .map(c -> TestPile.KNOWLEDGE.cautions().get(c).severity().ordinal())
                .toList();
        assertEquals(gravity.stream().sorted().toList(), gravity);
    }

    @Test
    @DisplayName("takes the newer of two answers that cannot both be so, and asks again where both are of one day")
    void outdated() {
        String days = "'built': '2026-10-01', 'log': [{'date': '%s', 'seen': ['squeeze-streams']},"
                + " {'date': '%s', 'seen': ['dust-dry', 'core-cold']}]";
        Advice dry = diagnosed(days.formatted("2026-11-12", "2026-11-21"));
        assertEquals(List.of(), dry.contradictions());
        assertEquals(Cause.TOO_DRY, dry.findings().get(0).cause());
        assertFalse(seen(dry).contains(Sign.SQUEEZE_STREAMS));
        Advice wet = diagnosed(days.formatted("2026-11-21", "2026-11-12"));
        assertEquals(List.of(), wet.contradictions());
        assertFalse(seen(wet).contains(Sign.DUST_DRY));
        assertTrue(seen(wet).contains(Sign.CORE_COLD), "which contradicts nothing");
        Advice both = diagnosed(days.formatted("2026-11-21", "2026-11-21"));
        assertEquals(List.of(new Contradicts(Sign.DUST_DRY, Sign.SQUEEZE_STREAMS)), both.contradictions());
        assertTrue(seen(both).containsAll(Set.of(Sign.DUST_DRY, Sign.SQUEEZE_STREAMS)));
    }

    private static Set<Sign> seen(Advice advice) {
        return advice.outcome().facts().stream()
                .filter(Seen.class::isInstance)
                .map(f -> ((Seen) f).sign())
                .collect(Collectors.toSet());
    }

    @Test
    @DisplayName("leaves out an answer that a newer one of another name has put right, and says so in the run")
    void putRight() {
        Advice advice = diagnosed("'built': '2026-10-01', 'log': [{'date': '2026-11-18', 'seen': ['squeeze-streams',"
                + " 'core-cold']}, {'date': '2026-11-21', 'notSeen': ['soggy']}]");
        assertEquals(List.of(new Outdated(Sign.SQUEEZE_STREAMS)), results(advice, Outdated.class));
        assertEquals(Set.of(Sign.CORE_COLD), seen(advice));
    }

    @Test
    @DisplayName("reads the past only where a core was measured and the recipe is told")
    void story() {
        String core = "'measured': {'core': {'value': 14, 'unit': 'C'}}";
        String log =
                "'log': [{'date': '2026-06-20', 'seen': ['core-cold'], 'measured': {'outdoor': {'value': 9, 'unit': 'C'}}},"
                        + " {'date': '2026-06-21', %s}]";
        String pile = "'built': '2026-06-01', 'asOf': '2026-06-21', ";
        assertTrue(diagnosed(pile + RECIPE + log.formatted(core)).story().isPresent());
        assertTrue(diagnosed(pile + log.formatted(core)).story().isEmpty());
        assertTrue(diagnosed(pile + RECIPE + log.formatted("'seen': ['core-cold']"))
                .story()
                .isEmpty());
    }

    @Test
    @DisplayName("covers thicker in the cold season: with frost told or few degrees outdoors")
    void coldSeason() {
        String wet = "'built': '2026-06-01', 'asOf': '2026-06-21', 'log': [{'date': '2026-06-21', 'seen': ['soggy',"
                + " 'squeeze-streams', 'smells-rotten-egg', 'core-cold'%s}]";
        double summer = cover(wet.formatted("], 'measured': {'outdoor': {'value': 15, 'unit': 'C'}}"));
        double frost = cover(wet.formatted(", 'frost-at-night']"));
        double chill = cover(wet.formatted("], 'measured': {'outdoor': {'value': 3, 'unit': 'C'}}"));
        assertTrue(frost > summer, frost + " against " + summer);
        assertEquals(frost, chill, 1e-9);
    }

    private static double cover(String fields) {
        return diagnosed(fields).steps().stream()
                .flatMap(s -> s.main().remedy() == Remedy.COVER_WITH_COMPOST
                        ? s.main().doses().stream()
                        : java.util.stream.Stream.empty())
                .mapToDouble(d -> d.litres().likely())
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName("says of home remedies whether somebody would give them here")
    void homeRemedies() {
        List<HomeRemedy> starved = diagnosed(COLD).homeRemedies();
        assertEquals(TestPile.KNOWLEDGE.usualDoses().size(), starved.size());
        starved.forEach(h -> assertEquals(
                TestPile.KNOWLEDGE.usualDoses().get(h.dose()).forCauses().contains(Cause.LACKS_NITROGEN),
                h.asked(),
                h.dose().toString()));
    }

    @Test
    @DisplayName("is only of the danger while one stands, and asks what it asks but what the person could not tell")
    void danger() {
        Pile pile = TestPile.seen("core-hot smoke", "");
        Advice advice = TestPile.ADVISOR.advise(pile);
        assertEquals(advice.alarm(), TestPile.ADVISOR.alarm(pile));
        assertEquals(Remedy.CALL_FIRE_SERVICE, advice.steps().get(0).main().remedy());
        List<Sign> asked = advice.questions().stream().map(Question::sign).toList();
        assertEquals(advice.alarm().orElseThrow().asks(), asked);
        List<Sign> left = TestPile.ADVISOR.advise(pile, Set.of(Sign.GLOW)).questions().stream()
                .map(Question::sign)
                .toList();
        assertEquals(asked.stream().filter(s -> s != Sign.GLOW).toList(), left);
        assertTrue(TestPile.ADVISOR.alarm(TestPile.seen("core-cold", "")).isEmpty());
    }

    @Test
    @DisplayName("without a rule or a row has all others")
    void without() {
        List<String> all = TestPile.ADVISOR.rules().stream().map(RuleInfo::id).toList();
        assertEquals(String.join(" ", all.stream().sorted().toList()), String.join(" ", all));
        Advice advice = diagnosed(COLD);
        EvidencePiece piece = advice.findings().get(0).weighed().supports().get(0);
        String rule = advice.outcome().of(SetAside.class).get(0).rule().id();
        String row = piece.rule().id();
        Advisor other = TestPile.ADVISOR.without(row);
        assertTrue(all.contains(row) && all.contains(rule));
        assertEquals(
                all.stream().filter(i -> !i.equals(row)).collect(Collectors.joining(" ")),
                other.rules().stream().map(RuleInfo::id).collect(Collectors.joining(" ")));
        assertTrue(TestPile.ADVISOR.without(rule).diagnose(TestPile.of(COLD)).outcome().firings().stream()
                .noneMatch(f -> f.rule().id().equals(rule)));
        assertThrows(IllegalArgumentException.class, () -> TestPile.ADVISOR.without("WEIGH-0"));
        assertEquals(TestPile.KNOWLEDGE, TestPile.ADVISOR.knowledge());
    }

    @Test
    @DisplayName("is the same however the recipe was written down")
    void gathered() {
        String pile = "'built': '2026-05-01', 'asOf': '2026-06-21', 'recipe': [%s], 'log': [{'date': '2026-06-21',"
                + " 'seen': ['core-cold']}]";
        String once = "{'material': 'leaves-mixed', 'amount': 60, 'unit': 'bucket'}";
        String twice = "{'material': 'leaves-mixed', 'amount': 20, 'unit': 'bucket'},"
                + " {'material': 'leaves-mixed', 'amount': 40, 'unit': 'bucket'}";
        assertEquals(
                diagnosed(pile.formatted(once)).findings(),
                diagnosed(pile.formatted(twice)).findings());
        assertTrue(TestPile.ADVISOR
                .audit(TestPile.of(pile.formatted(twice)), OptionalDouble.empty())
                .isPresent());
        assertTrue(TestPile.ADVISOR
                .audit(TestPile.seen("", ""), OptionalDouble.empty())
                .isEmpty());
    }
}
