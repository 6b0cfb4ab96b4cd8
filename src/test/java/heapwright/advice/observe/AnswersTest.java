package heapwright.advice.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.engine.Inference;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Did;
import heapwright.advice.fact.Fixture;
import heapwright.advice.fact.Has;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Trait;
import heapwright.pile.Action;
import heapwright.pile.Pile;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The answers of a person")
class AnswersTest {

    private static final int FRESH = 14;

    private static Answers answers(String fields) {
        Pile pile = TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', " + fields);
        return new Answers(
                pile, TestPile.KNOWLEDGE.signs(), new Tried(pile, TestPile.KNOWLEDGE.remedies(), FRESH), FRESH);
    }

    private static List<Object> signs(String log) {
        return answers("'log': [" + log + "]").signs(List.of());
    }

    @Test
    @DisplayName("hold for their days, the last of them too, and no longer")
    void fresh() {
        assertEquals(List.of(new Seen(Sign.SOGGY, 14)), signs("{'date': '2026-11-07', 'seen': ['soggy']}"));
        assertEquals(List.of(), signs("{'date': '2026-11-06', 'seen': ['soggy']}"));
        assertEquals(List.of(new Seen(Sign.SOGGY, 0)), signs("{'date': '2026-11-21', 'seen': ['soggy']}"));
    }

    @Test
    @DisplayName("of what a person is hold for good, and of somebody hurt for that day and the next")
    void lasting() {
        assertEquals(
                List.of(new Seen(Sign.PREGNANT, 42)),
                signs("{'date': '2026-10-10', 'seen': ['pregnant']}, {'date': '2026-11-19', 'seen': ['lye-in-eye']}"));
        assertEquals(List.of(new Seen(Sign.LYE_IN_EYE, 1)), signs("{'date': '2026-11-20', 'seen': ['lye-in-eye']}"));
    }

    @Test
    @DisplayName("are told by the latest: what was seen and then looked for in vain is gone")
    void latest() {
        assertEquals(
                List.of(new Denied(Sign.SOGGY, 1)),
                signs("{'date': '2026-11-18', 'seen': ['soggy']}, {'date': '2026-11-20', 'notSeen': ['soggy']}"));
        assertEquals(
                List.of(new Seen(Sign.SOGGY, 1)),
                signs("{'date': '2026-11-18', 'notSeen': ['soggy']}, {'date': '2026-11-20', 'seen': ['soggy']}"));
        assertEquals(
                List.of(new Seen(Sign.SOGGY, 3)),
                signs("{'date': '2026-11-18', 'seen': ['soggy']}, {'date': '2026-11-20', 'seen': []}"),
                "not looked for is no answer");
    }

    @Tag("thorough")
    @ParameterizedTest
    @EnumSource(Sign.class)
    @DisplayName("are outlived by what is done about them later or on that past day, and not by what was done before")
    void outlived(Sign sign) {
        for (Action action : Action.values()) {
            boolean changes = TestPile.KNOWLEDGE.signs().get(sign).changedBy().contains(action);
            String seen = "{'date': '2026-11-20', 'seen': ['" + sign.id() + "']}";
            String done = "'done': ['" + action.token() + "']}";
            assertEquals(
                    List.of(new Seen(sign, 1, changes)),
                    signs("{'date': '2026-11-19', " + done + ", " + seen + ", {'date': '2026-11-21', " + done));
            assertEquals(
                    List.of(new Seen(sign, 1, changes)),
                    signs("{'date': '2026-11-19', " + done + ", " + seen + ", {'date': '2026-11-20', " + done));
            assertEquals(List.of(new Seen(sign, 1)), signs("{'date': '2026-11-19', " + done + ", " + seen));
        }
    }

    @Test
    @DisplayName("of today are not outlived by the work of today, of which nobody knows yet what it did")
    void workOfToday() {
        String today = "{'date': '2026-11-21', 'seen': ['soggy'], 'done': ['turned-fully']}";
        assertEquals(List.of(new Seen(Sign.SOGGY, 0)), signs(today));
    }

    @Test
    @DisplayName("are outlived by stuff that goes in later or on that past day, and not by stuff that went in before")
    void outlivedByStuff() {
        Answers answers = answers("'log': [{'date': '2026-11-11', 'seen': ['soggy', 'core-cold']}]");
        assertEquals(
                List.of(new Seen(Sign.SOGGY, 10, true), new Seen(Sign.CORE_COLD, 10)),
                answers.signs(List.of(new WentIn(Trait.BROWN, 10, 0.1), new WentIn(Trait.GRASS, 11, 0.1))));
    }

    @Test
    @DisplayName("that are outlived say little, are nothing to the model and no moisture to the doses")
    void outlivedCountLittle() {
        List<Object> outlived = List.of(new Seen(Sign.SOGGY, 10, true));
        assertEquals(Set.of(), Answers.seen(outlived));
        assertEquals(List.of(), new Squeeze(TestPile.KNOWLEDGE).applied(List.of(), outlived));
        Function<Boolean, Double> wet = o -> new Inference(TestPile.ADVISOR.rulebook(), TestPile.KNOWLEDGE)
                .run(List.of(new Seen(Sign.SOGGY, 10, o)))
                .weighed()
                .get(Cause.TOO_WET)
                .likelihood();
        double nothing = new Inference(TestPile.ADVISOR.rulebook(), TestPile.KNOWLEDGE)
                .run(List.of())
                .weighed()
                .get(Cause.TOO_WET)
                .likelihood();
        assertTrue(nothing < wet.apply(true) && wet.apply(true) < 0.5 * wet.apply(false));
    }

    @Test
    @DisplayName("of signs seen leave out those denied")
    void seen() {
        List<Object> facts = List.of(new Seen(Sign.SOGGY, 1), new Denied(Sign.DUST_DRY, 1));
        assertEquals(EnumSet.of(Sign.SOGGY), Answers.seen(facts));
    }

    @Test
    @DisplayName("of work done count the last time, however long ago")
    void actions() {
        List<Object> done = answers("'log': [{'date': '2026-10-12', 'done': ['turned-fully', 'watered']},"
                        + "{'date': '2026-11-21', 'done': ['turned-fully']}]")
                .actions();
        assertEquals(Set.of(new Did(Action.TURNED_FULLY, 0), new Did(Action.WATERED, 40)), Set.copyOf(done));
        assertEquals(2, done.size());
    }

    /** What the rules are told of each word of a document, word by word. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'place': {'settings': ['closed-shed']} | CLOSED_SHED",
                "'place': {'settings': ['near-water', 'windy']} | NEAR_WATER WINDY",
                "'place': {'settings': ['low-wet-ground', 'keeps-animals']} | LOW_WET_GROUND KEEPS_ANIMALS",
                "'place': {'settings': ['pets-about', 'rats-about']} | PETS_ABOUT RATS_ABOUT",
                "'container': {'kind': 'closed-bin'} | CLOSED_BIN",
                "'container': {'kind': 'insulated-bin'} | CLOSED_BIN INSULATED_BIN",
                "'container': {'kind': 'tumbler'} | TUMBLER",
                "'container': {'kind': 'pit'} | PIT",
                "'container': {'kind': 'trench'} | TRENCH",
                "'container': {'kind': 'fed-bin'} | CLOSED_BIN",
                "'container': {'kind': 'leaf-cage'} | LEAF_CAGE",
                "'container': {'kind': 'worm-bin'} | WORM_BIN",
                "'container': {'kind': 'bokashi'} | BOKASHI",
                "'container': {'kind': 'slatted-bin'} | ''",
                "'container': {'cover': 'none'} | NO_COVER",
                "'container': {'cover': 'sealed-plastic'} | SEALED_COVER",
                "'container': {'cover': 'lid'} | ''",
                "'container': {'cover': 'loose-tarp'} | ''",
                "'container': {'cover': 'snow'} | INSULATION SNOW_COVER",
                "'container': {'base': 'paving'} | ''",
                "'container': {'base': 'soil'} | ''",
                "'container': {'insulation': 'straw'} | INSULATION",
                "'container': {'insulation': 'none'} | ''",
                "'container': {'rodentProof': true} | RODENT_PROOF",
                "'container': {'rodentProof': false} | ''",
                "'aim': {'use': 'vegetable-bed'} | FOR_FOOD",
                "'aim': {'use': 'seedlings'} | FOR_SEEDLINGS",
                "'aim': {'use': 'lawn'} | ''"
            },
            quoteCharacter = '"')
    @DisplayName("on place, container and aim become what the rules know")
    void fixtures(String fields, String expected) {
        Set<Fixture> wanted = expected.equals("''")
                ? Set.of()
                : Arrays.stream(expected.split(" ")).map(Fixture::valueOf).collect(Collectors.toSet());
        Set<Fixture> found = answers(fields).fixtures().stream()
                .map(fact -> ((Has) fact).fixture())
                .collect(Collectors.toSet());
        assertEquals(wanted, found);
    }
}
