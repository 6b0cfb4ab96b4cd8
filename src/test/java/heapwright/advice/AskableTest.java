package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.Did;
import heapwright.advice.fact.Fixture;
import heapwright.advice.fact.Has;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Action;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("What may be asked")
class AskableTest {

    private static final String NO_RECIPE = "'asOf': '2026-11-21'";

    private static Set<Sign> left(String pile, HandRun run, Sign... passed) {
        Set<Sign> left = EnumSet.allOf(Sign.class);
        Askable.of(TestPile.of(pile), run.outcome(), TestPile.KNOWLEDGE.signs(), List.of(passed))
                .forEach(left::remove);
        return left;
    }

    private static Set<Sign> signs(String names) {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        Arrays.stream(names.split(" "))
                .filter(n -> !n.isEmpty())
                .map(Sign::valueOf)
                .forEach(signs::add);
        return signs;
    }

    @Test
    @DisplayName("is everything where nothing is told but what the person could not tell")
    void everything() {
        assertEquals(Set.of(), left(NO_RECIPE, new HandRun()));
        assertEquals(Set.of(Sign.ANTS, Sign.SOGGY), left(NO_RECIPE, new HandRun(), Sign.ANTS, Sign.SOGGY));
    }

    @ParameterizedTest
    @CsvSource({
        "CLOSED_SHED, CLOSED_SHED",
        "NEAR_WATER, NEAR_WATER",
        "LOW_WET_GROUND, LOW_WET_GROUND",
        "WINDY, WINDY_PLACE",
        "PETS_ABOUT, PETS_LOOSE",
        "NO_COVER, RAIN_GETS_IN SEALED_UNDER_PLASTIC",
        "SEALED_COVER, RAIN_GETS_IN SEALED_UNDER_PLASTIC",
        "TUMBLER, ''"
    })
    @DisplayName("is not what the place tells")
    void place(Fixture told, String signs) {
        assertEquals(signs(signs), left(NO_RECIPE, new HandRun().fact(new Has(told))));
    }

    @ParameterizedTest
    @CsvSource({
        "CORE_TEMPERATURE, CORE_COLD CORE_WARM CORE_HOT",
        "OUTDOOR_TEMPERATURE, FROST_AT_NIGHT",
        "MOISTURE, SQUEEZE_STREAMS SQUEEZE_DROPS SQUEEZE_HOLDS SQUEEZE_CRUMBLES DUST_DRY SOGGY",
        "VOLUME, ''"
    })
    @DisplayName("is not what was measured; what was only reckoned or told may be")
    void measured(Reading reading, String signs) {
        for (Reads.Basis basis : Reads.Basis.values()) {
            Set<Sign> gone = left(NO_RECIPE, new HandRun().fact(new Reads(reading, 1, 2, 3, basis)));
            assertEquals(basis == Reads.Basis.MEASURED ? signs(signs) : Set.of(), gone, basis.toString());
        }
    }

    @Test
    @DisplayName("is not whether it was never turned, once it was turned right through")
    void turned() {
        assertEquals(Set.of(Sign.NEVER_TURNED), left(NO_RECIPE, new HandRun().fact(new Did(Action.TURNED_FULLY, 400))));
        assertEquals(Set.of(), left(NO_RECIPE, new HandRun().fact(new Did(Action.WATERED, 4))));
    }

    @Test
    @DisplayName("is not what the recipe tells")
    void recipe() {
        assertEquals(
                Set.of(Sign.MUCH_GRASS, Sign.MUCH_MANURE, Sign.MUCH_SAWDUST, Sign.ONLY_BROWNS),
                left(
                        "'built': '2026-10-10', 'asOf': '2026-11-21', 'recipe': [{'material': 'straw-general',"
                                + " 'amount': 9, 'unit': 'bucket'}]",
                        new HandRun()));
    }

    @Test
    @DisplayName("is neither frost nor snow in the warm months, unless frost was seen")
    void warmMonths() {
        HandRun warm = new HandRun().says(new Holds(Condition.WARM_MONTHS_AHEAD));
        assertEquals(
                signs("FROST_AT_NIGHT FROST_CRUST FROZEN_THROUGH SNOW_MELTS_ON_TOP SNOW_MIXED_IN"),
                left(NO_RECIPE, warm));
        assertEquals(Set.of(), left(NO_RECIPE, warm.says(new Holds(Condition.COLD_SEASON))));
    }

    private static boolean opens(HandRun run) {
        Set<Sign> gone = left(NO_RECIPE, run);
        Set<Sign> inside = EnumSet.noneOf(Sign.class);
        TestPile.KNOWLEDGE.signs().values().stream()
                .filter(s -> s.where() == SignInfo.Where.INSIDE)
                .forEach(s -> inside.add(s.id()));
        assertTrue(gone.isEmpty() || gone.equals(inside), gone.toString());
        return gone.isEmpty();
    }

    @Test
    @DisplayName("opens no pile that is frozen through or likely frozen, unless that is explained by something else")
    void frozen() {
        assertFalse(opens(new HandRun().fact(new Seen(Sign.FROZEN_THROUGH, 3))));
        assertTrue(opens(new HandRun().fact(new Seen(Sign.FROST_AT_NIGHT, 3))));
        assertFalse(opens(new HandRun().likely(Cause.FROZEN_IN, 0.60)));
        assertTrue(opens(new HandRun().likely(Cause.FROZEN_IN, 0.59)));
        assertTrue(opens(new HandRun().likely(Cause.FROZEN_IN, 0.9).says(new SetAside(Cause.FROZEN_IN))));
        assertFalse(opens(new HandRun().likely(Cause.FROZEN_IN, 0.9).says(new SetAside(Cause.TOO_WET))));
    }

    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"MUCH_GRASS", "PET_WASTE", "WEEDS_WITH_SEED", "SOGGY"})
    @DisplayName("tells, when it is answered with yes, the sign, what went in by it and what should have stayed out")
    void saidYes(Sign sign) {
        List<Object> facts = AffirmedFacts.facts(sign, TestPile.KNOWLEDGE);
        List<Object> expected =
                switch (sign) {
                    case MUCH_GRASS ->
                        List.of(
                                new Seen(sign, 0),
                                new heapwright.advice.fact.WentIn(heapwright.knowledge.Trait.GRASS, 0, Double.NaN));
                    case PET_WASTE ->
                        List.of(
                                new Seen(sign, 0),
                                new heapwright.advice.fact.AlreadyIn(
                                        heapwright.knowledge.KeepOutClass.PET_WASTE, true, true, 0));
                    case WEEDS_WITH_SEED ->
                        List.of(
                                new Seen(sign, 0),
                                new heapwright.advice.fact.WentIn(heapwright.knowledge.Trait.SEEDS, 0, Double.NaN),
                                new heapwright.advice.fact.AlreadyIn(
                                        heapwright.knowledge.KeepOutClass.WEED_SEED, false, true, 0));
                    default -> List.of(new Seen(sign, 0));
                };
        assertEquals(expected, facts);
    }
}
