package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.Weighed;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.When;
import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A step that was done and did not help")
class FailureTest {

    private static final double HAIR = 1e-12;

    private static final Set<Remedy> READ = read();

    private static Set<Remedy> read() {
        Set<Remedy> read = EnumSet.noneOf(Remedy.class);
        TestPile.KNOWLEDGE.evidence().forEach(row -> {
            if (row.when() instanceof When.Failed failed) {
                read.addAll(failed.anyOf());
            }
        });
        return read;
    }

    @Test
    @DisplayName("never speaks for a cause, and at most fairly against one")
    void modest() {
        TestPile.KNOWLEDGE.evidence().stream()
                .filter(row -> row.when() instanceof When.Failed)
                .forEach(row -> assertTrue(
                        row.speaks() == Evidence.Speaks.AGAINST
                                && row.strength().ordinal() <= heapwright.knowledge.Strength.FAIR.ordinal(),
                        row.id()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'seen': ['soggy', 'smells-sour', 'core-cold']",
                "'seen': ['dust-dry'], 'measured': {'core': {'value': 12, 'unit': 'C'}}",
                "'seen': ['only-browns', 'core-cold', 'frost-at-night']",
                "'seen': ['smells-ammonia', 'slumped-dense'], 'notSeen': ['soggy']"
            })
    @DisplayName("and one more such step, raise no cause")
    void oneMore(String seen) {
        Pile pile = TestPile.of(
                "'built': '2026-10-10', 'asOf': '2026-11-21', 'log': [{'date': '2026-11-15', " + seen + "}]");
        List<Advised> tried = new ArrayList<>();
        Map<Cause, Weighed> before = weighed(pile);
        for (Remedy remedy : READ) {
            tried.add(new Advised(
                    LocalDate.of(2026, 11, 15),
                    remedy.id(),
                    "",
                    LocalDate.of(2026, 11, 20),
                    Outcome.DID_NOT_HELP,
                    Optional.of(LocalDate.of(2026, 11, 21))));
            Map<Cause, Weighed> after = weighed(pile.withAdvised(tried));
            before.forEach((cause, weighed) -> assertTrue(
                    after.get(cause).likelihood() <= weighed.likelihood() + HAIR,
                    cause + " after " + remedy + " failed"));
            before = after;
        }
    }

    private static Map<Cause, Weighed> weighed(Pile pile) {
        return TestPile.ADVISOR.diagnose(pile).outcome().weighed();
    }
}
