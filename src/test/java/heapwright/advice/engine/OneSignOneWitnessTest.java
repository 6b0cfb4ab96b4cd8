package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.Advisor;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("One sign")
class OneSignOneWitnessTest {

    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private static final Advisor ADVISOR = Advisor.packed(KNOWLEDGE);
    private static final PileReader READER = new PileReader(KNOWLEDGE.vocabulary());

    @ParameterizedTest(name = "{2} on a pile of {0}, {1}")
    @CsvSource({
        "2026-05-15, 2026-06-20, seen",
        "2026-05-15, 2026-06-20, notSeen",
        "2026-10-15, 2027-01-20, seen",
        "2026-10-15, 2027-01-20, notSeen",
        "2025-10-15, 2027-01-20, seen",
        "2025-10-15, 2027-01-20, notSeen"
    })
    @DisplayName("is never two witnesses of one cause")
    void once(String built, String day, String answer) {
        Set<String> twice = new TreeSet<>();
        for (Sign sign : Sign.values()) {
            for (Weighed weighed : weighed(built, day, answer, sign)) {
                Stream.of(weighed.supports(), weighed.opposes())
                        .filter(side -> witnesses(side, sign) > 1)
                        .forEach(side ->
                                twice.add(sign.id() + " for " + weighed.cause().id() + ": " + side));
            }
        }
        assertEquals(Set.of(), twice);
    }

    private static long witnesses(List<EvidencePiece> side, Sign sign) {
        return side.stream()
                .filter(piece -> piece.because().stream()
                        .anyMatch(fact ->
                                fact instanceof WentIn || fact.toString().contains("sign=" + sign.name())))
                .map(EvidencePiece::witness)
                .distinct()
                .count();
    }

    private static List<Weighed> weighed(String built, String day, String answer, Sign sign) {
        String document = """
                {"heapwright": "pile/1", "asOf": "%s", "built": "%s", "log": [{"date": "%s", "%s": ["%s"]}]}""".formatted(day, built, day, answer, sign.id());
        Pile pile = READER.read("one sign", document.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
        return List.copyOf(ADVISOR.diagnose(pile).outcome().weighed().values());
    }
}
