package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("What held a pile back")
class FactorTest {

    @ParameterizedTest
    @CsvSource({
        "TOO_DRY, WATER, true",
        "SEALED_IN, AIR, true",
        "LACKS_NITROGEN, NITROGEN, true",
        "ACID_START, ACID, true",
        "COARSE_WOOD, PIECES, true",
        "SPENT, FOOD, true",
        "TOO_AIRY, COLD, true",
        "FROZEN_IN, FROZEN, true",
        "DISTURBED_TOO_OFTEN, HANDLING, true",
        "WORKING_WELL, NONE, true",
        "OVERHEATED, HEAT, false",
        "WEED_SEEDS_ALIVE, UNKNOWN, false"
    })
    @DisplayName("lies behind a finding of the rules, and is a matter of pace unless of heat, hygiene or order")
    void behind(Cause cause, Factor factor, boolean pace) {
        assertEquals(factor, Factor.behind(cause));
        assertEquals(pace, Effects.ofPace(cause));
        assertTrue(factor.agrees(cause));
    }

    @ParameterizedTest
    @CsvSource({
        "FOOD, LACKS_NITROGEN, true",
        "FOOD, COARSE_WOOD, true",
        "SIZE, TOO_SMALL_FOR_COLD, true",
        "SHELTER, FROZEN_IN, true",
        "WATER, TOO_AIRY, true",
        "WATER, TOO_WET, false",
        "AIR, TOO_DRY, false",
        "SIZE, TOO_DRY, false"
    })
    @DisplayName("agrees with a finding that the same would put right")
    void agrees(Factor factor, Cause cause, boolean agrees) {
        assertEquals(agrees, factor.agrees(cause));
    }

    @ParameterizedTest
    @EnumSource(Factor.class)
    @DisplayName("can be mended where it is of the mix")
    void mendable(Factor factor) {
        EnumSet<Factor> ofTheMix =
                EnumSet.of(Factor.WATER, Factor.AIR, Factor.NITROGEN, Factor.ACID, Factor.PIECES, Factor.FOOD);
        assertEquals(ofTheMix.contains(factor), factor.mendable());
    }

    @Test
    @DisplayName("wins nothing that could be told where nothing can be worked out")
    void unknown() {
        assertEquals(Optional.empty(), Effects.unknown().of(Remedy.TURN_FULLY, List.of()));
        assertFalse(Effects.ofPace(Cause.FIRE_RISK));
    }
}
