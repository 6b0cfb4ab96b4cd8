package heapwright.advice.ready;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.TestPile;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.RipeReasonInfo;
import heapwright.knowledge.Ripeness;
import heapwright.knowledge.Wait;
import heapwright.knowledge.WaitInfo;
import heapwright.pile.Entry;
import heapwright.pile.HomeTest;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.pile.Tested;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Whether compost is ready")
class ReadyTest {

    private static final List<String> FOLDERS = List.of("ready", "demo", "limits", "practice");

    /** Every third case keeps the test short; those of ripeness are all looked at. */
    private static final int EVERY = 3;

    private static List<Case> cases() {
        Casebook casebook = new Casebook(TestPile.KNOWLEDGE);
        List<Case> all = new ArrayList<>();
        for (String folder : FOLDERS) {
            List<Case> here = casebook.below(Path.of("cases", folder));
            for (int i = 0; i < here.size(); i += folder.equals("ready") ? 1 : EVERY) {
                all.add(here.get(i));
            }
        }
        return all;
    }

    private static ReadyAnswer ready(Advice advice) {
        return Ready.of(advice, TestPile.KNOWLEDGE);
    }

    /** What hangs on the use: the checkup holds it back where the pile is wanted for food, and else says the wait with it. */
    private static final Set<RipeReason> BY_USE = EnumSet.of(RipeReason.NO_PROOF_OF_HEAT, RipeReason.WALNUT);

    @Tag("thorough")
    @Test
    @DisplayName("is never no where the checkup says use it")
    void oneStory() {
        List<String> apart = new ArrayList<>();
        for (Case one : cases()) {
            Advice advice = TestPile.ADVISOR.diagnose(one.pile());
            if (advice.alarm().isPresent()) {
                continue;
            }
            boolean useIt = advice.steps().stream()
                    .flatMap(s -> Stream.concat(Stream.of(s.main()), s.alternatives().stream()))
                    .anyMatch(o -> o.remedy() == Remedy.USE_IT);
            ReadyAnswer answer = ready(advice);
            boolean held = answer.binding().stream()
                    .filter(r -> !r.allows().atLeast(Ripeness.BEDS))
                    .anyMatch(r -> !BY_USE.contains(r.id()));
            if (useIt && held) {
                apart.add(one.file() + ": " + answer.grade() + " "
                        + answer.reasons().stream().map(RipeReasonInfo::id).toList());
            }
        }
        assertEquals(List.of(), apart);
    }

    @Tag("thorough")
    @Test
    @DisplayName("is not made better by good tests where a gate stands")
    void gates() {
        int gated = 0;
        for (Case one : cases()) {
            Advice advice = TestPile.ADVISOR.diagnose(one.pile());
            if (advice.alarm().isPresent()) {
                continue;
            }
            ReadyAnswer before = ready(advice);
            if (before.reasons().stream().noneMatch(RipeReasonInfo::danger)) {
                continue;
            }
            gated++;
            Ripeness gate = before.reasons().stream()
                    .filter(RipeReasonInfo::danger)
                    .map(RipeReasonInfo::allows)
                    .reduce(Ripeness.POTS, Ripeness::and);
            ReadyAnswer after = ready(TestPile.ADVISOR.diagnose(tested(one.pile(), HomeTest.BAG, HomeTest.SEEDLINGS)));
            assertTrue(!after.grade().atLeast(Ripeness.BEDS) || gate.atLeast(Ripeness.BEDS), one.file());
        }
        assertTrue(gated > 20, "only " + gated);
    }

    /** The same pile with good tests read on its day. */
    private static Pile tested(Pile pile, HomeTest... good) {
        List<Entry> log = new ArrayList<>(pile.log());
        log.add(new Entry(
                pile.asOf(),
                List.of(),
                List.of(),
                Measured.nothing(),
                List.of(),
                List.of(),
                Arrays.stream(good).map(t -> new Tested(t, Tested.Result.GOOD)).toList(),
                ""));
        return pile.withLog(log, pile.struck());
    }

    /** Values of the reference on use, each with its source. */
    @ParameterizedTest(name = "{0}: {1} days ({2})")
    @CsvSource({
        "CURE_AFTER_HEAT, 21, CCME05",
        "HARVEST_TOUCHING_SOIL, 120, CFR205",
        "HARVEST_OTHERS, 90, CFR205",
        "WALNUT_WOOD, 180, OSUEXT",
        "WALNUT_LEAVES, 28, OSUEXT",
        "HORSE_MANURE_WINTER, 90, WSUWHAT",
        "HORSE_MANURE_SUMMER, 30, WSUWHAT",
        "CURE_NEVER_HOT, 90, COMPINFO"
    })
    void waits(Wait wait, int days, String source) {
        WaitInfo info = TestPile.KNOWLEDGE.endUse().waits().get(wait);
        assertEquals(days, info.days());
        assertTrue(info.sources().contains(source), info.sources().toString());
    }

    /** Depths in cm and shares in percent of the reference on use, each with its source. */
    @ParameterizedTest(name = "{0}: at most {1} ({2})")
    @CsvSource({
        "vegetable-bed, 2.5, UMNEXT",
        "vegetable-bed-cool, 1.3, UMNEXT",
        "new-bed, 7.5, NCDA",
        "mulch, 7.5, CHESTER",
        "potting-mix, 33, UMNEXT",
        "seedling-mix, 25, JUDGEMENT"
    })
    void uses(String use, double most, String source) {
        assertEquals(most, TestPile.KNOWLEDGE.endUse().uses().get(use).high());
        assertTrue(TestPile.KNOWLEDGE.endUse().uses().get(use).sources().contains(source));
    }

    @Test
    @DisplayName("reads the home tests by their published figures")
    void tests() {
        var tests = TestPile.KNOWLEDGE.endUse().tests();
        assertEquals(7, tests.get(HomeTest.BAG).fromDays(), "NYCDONE: a week or so");
        assertEquals(14, tests.get(HomeTest.PEAS).fromDays(), "WSUBIO: two to three weeks");
        assertEquals(21, tests.get(HomeTest.PEAS).toDays(), "WSUBIO: two to three weeks");
        assertEquals(80, tests.get(HomeTest.SEEDLINGS).limits().get(0).value(), "CCQC01, from memory");
        assertEquals(8, tests.get(HomeTest.REHEAT).limits().get(0).value(), "CCME05, from memory");
        assertEquals(20, tests.get(HomeTest.REHEAT).limits().get(1).value(), "BRINT95, from memory: IV at most");
    }

    @Test
    @DisplayName("goes down and never up when a passed test fails later")
    void laterFailure() {
        for (HomeTest test : HomeTest.values()) {
            LocalDate day = LocalDate.of(2027, 5, 2);
            Case base = new Casebook(TestPile.KNOWLEDGE)
                    .below(Path.of("cases", "ready")).stream()
                            .filter(c -> c.file().startsWith("a-clean-bag-and-good"))
                            .findFirst()
                            .orElseThrow();
            List<Entry> log = new ArrayList<>(tested(base.pile(), test).log());
            Ripeness good = ready(TestPile.ADVISOR.diagnose(base.pile().withLog(log, List.of())))
                    .grade();
            log.add(new Entry(
                    day,
                    List.of(),
                    List.of(),
                    Measured.nothing(),
                    List.of(),
                    List.of(),
                    List.of(new Tested(test, Tested.Result.POOR)),
                    ""));
            Ripeness poor = ready(TestPile.ADVISOR.diagnose(base.pile().withLog(log, List.of())))
                    .grade();
            assertEquals(Ripeness.POTS, good, test.token());
            assertTrue(!poor.atLeast(Ripeness.BEDS), test.token() + " " + poor);
        }
    }
}
