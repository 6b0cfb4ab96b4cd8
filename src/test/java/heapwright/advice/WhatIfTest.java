package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.WhatIf.Choice;
import heapwright.advice.WhatIf.Reason;
import heapwright.advice.winter.Gain;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Remedy;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.report.Catalogue;
import heapwright.report.Units;
import heapwright.report.WhatIfWords;
import heapwright.report.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Steps tried on the invented pile of the page: the model that says what each wins also draws their course. */
@TestInstance(Lifecycle.PER_CLASS)
class WhatIfTest {

    private final Knowledge knowledge = KnowledgeReader.packed();
    private final Advisor advisor = Advisor.packed(knowledge);
    private final Advice advice = advisor.advise(narrowExample());

    /** The example, narrower, so that it is surely too small for the cold and wrapping it is worth a try. */
    private Pile narrowExample() {
        String example = text("src/main/resources/heapwright/web/example.json");
        return parsed(example.replaceFirst("(\"width\": \\{\\s*\"value\": )1", "$10.5"));
    }

    private Pile read(String file) {
        return parsed(text(file));
    }

    private static String text(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Pile parsed(String document) {
        return new PileReader(knowledge.vocabulary())
                .read("pile", document.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
    }

    private WhatIf tried(Set<Remedy> chosen) {
        return WhatIf.of(advice, chosen, knowledge).orElseThrow();
    }

    private Set<Remedy> triable() {
        Set<Remedy> all = EnumSet.noneOf(Remedy.class);
        tried(Set.of()).choices().stream()
                .filter(Choice::canTry)
                .forEach(c -> all.add(c.option().remedy()));
        return all;
    }

    @Test
    void withoutAnyStepOnlyTheCourseLeftAloneIsDrawn() {
        WhatIf none = tried(Set.of());
        assertTrue(none.trial().with().isEmpty());
        assertEquals(List.of(), none.together());
        assertTrue(none.trial().days() >= 60);
        assertEquals(advice.pile().asOf(), none.trial().date(0));
    }

    @Test
    void oneStepSaysWhatItsGainInTheAdviceSays() {
        assertFalse(triable().isEmpty());
        for (Choice choice : tried(Set.of()).choices()) {
            assertTrue(choice.canTry() || choice.option().gain().isEmpty());
            if (choice.canTry()) {
                WhatIf one = tried(Set.of(choice.option().remedy()));
                Gain gain = one.trial().with().orElseThrow().gain();
                // The advice says nothing of a step that wins nothing; asked for, it is tried all the same.
                assertEquals(
                        gain.useless() ? Optional.empty() : Optional.of(gain),
                        choice.option().gain(),
                        choice.option().remedy().id());
                assertArrayEquals(
                        tried(Set.of()).trial().without().likely(),
                        one.trial().without().likely());
            }
        }
    }

    @Test
    void stepsTickedTogetherAreReckonedTogetherAndOpenThePileOnce() {
        Set<Remedy> both = EnumSet.of(Remedy.MIX_IN_DRY_CARBON, Remedy.INSULATE);
        assertTrue(triable().containsAll(both), triable().toString());
        WhatIf together = tried(both);
        assertEquals(Set.copyOf(both), Set.copyOf(together.together()));
        assertFalse(together.trial().with().orElseThrow().openedOnce());
        double[] joined = together.trial().with().orElseThrow().core().likely();
        for (Remedy one : both) {
            double[] alone =
                    tried(Set.of(one)).trial().with().orElseThrow().core().likely();
            assertFalse(java.util.Arrays.equals(joined, alone), one.id());
        }
        Set<Remedy> opening = EnumSet.of(Remedy.MIX_IN_DRY_CARBON, Remedy.CHOP_COARSE);
        assertTrue(triable().containsAll(opening));
        assertTrue(tried(opening).trial().with().orElseThrow().openedOnce());
    }

    @Test
    void twoWaysOfOneStepAreNotReckonedTogetherAndThatIsSaid() {
        Set<Remedy> ways = EnumSet.of(Remedy.LOOSEN_SIDES_AND_TOP, Remedy.MAKE_AIR_HOLES);
        WhatIf both = tried(ways);
        assertEquals(1, both.together().size());
        assertEquals(Reason.ONE_IS_ENOUGH, both.left().get(0).reason());
        assertEquals(both.together().get(0), both.left().get(0).other().orElseThrow());
        List<String> told = new WhatIfWords(new Words(knowledge, Catalogue.english(), Units.METRIC)).told(both);
        assertTrue(told.stream().anyMatch(t -> t.contains("one of the two is enough")), told.toString());
    }

    @Test
    void aStepTheModelKnowsNothingOfIsLeftAndThatIsSaid() {
        Remedy unknown = tried(Set.of()).choices().stream()
                .filter(c -> !c.canTry())
                .map(c -> c.option().remedy())
                .findFirst()
                .orElseThrow();
        WhatIf left = tried(EnumSet.of(unknown, Remedy.INSULATE));
        assertEquals(List.of(Remedy.INSULATE), left.together());
        assertEquals(Reason.UNKNOWN_TO_MODEL, left.left().get(0).reason());
        assertTrue(left.chosen(Remedy.INSULATE));
        assertTrue(left.chosen(unknown), "chosen, though not reckoned");
        assertFalse(left.chosen(Remedy.MIX_IN_DRY_CARBON));
    }

    @Test
    void ofEachStepAllWaysCanBeChosenAndTheOthersNameTheOneThatLeads() {
        List<Choice> choices = tried(Set.of()).choices();
        List<Remedy> ways = advice.steps().stream()
                .flatMap(s -> Stream.concat(Stream.of(s.main()), s.alternatives().stream()))
                .map(Option::remedy)
                .toList();
        assertEquals(ways, choices.stream().map(c -> c.option().remedy()).toList());
        assertEquals(
                advice.steps().stream().map(s -> s.main().remedy()).toList(),
                choices.stream()
                        .filter(c -> c.alternativeTo().isEmpty())
                        .map(c -> c.option().remedy())
                        .toList());
        Step loosening = advice.steps().stream()
                .filter(s -> !s.alternatives().isEmpty())
                .findFirst()
                .orElseThrow();
        choices.stream()
                .filter(c -> loosening.alternatives().contains(c.option()))
                .forEach(c -> assertEquals(
                        loosening.main().remedy(), c.alternativeTo().orElseThrow()));
    }

    @Test
    void withoutAMeasuredCoreTheModelSaysNothing() {
        Advice none = advisor.diagnose(read("cases/demo/recipe-of-everything-in-the-yard.json"));
        assertTrue(WhatIf.of(none, Set.of(), knowledge).isEmpty());
    }

    @Test
    void theAnswerNamesTheDaysWithAndWithout() {
        List<String> told = new WhatIfWords(new Words(knowledge, Catalogue.english(), Units.METRIC))
                .told(tried(EnumSet.of(Remedy.MIX_IN_DRY_CARBON)));
        assertTrue(told.get(0).contains("40 °C") && told.get(0).contains("2027"), told.get(0));
    }
}
