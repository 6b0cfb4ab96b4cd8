package heapwright.advice.winter;

import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Retrace;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether a pile was ever warm, by what was measured and felt: that it was in the model proves nothing. */
public enum WarmOnce {
    YES,
    NO,
    UNTOLD;

    private static final Set<Sign> WAS = EnumSet.of(
            Sign.HEATED_THEN_COOLED,
            Sign.COOLING_FOR_DAYS,
            Sign.REHEATS_AFTER_TURNING,
            Sign.NO_REHEAT_AFTER_TURNING,
            Sign.CORE_WARM,
            Sign.CORE_HOT,
            Sign.STEAM,
            Sign.ASH_GREY_ZONES);

    /** By the whole record: warmth that was felt months ago was warmth. */
    static WarmOnce of(Pile pile, Collection<Sign> seen, Collection<CoreReading> cores) {
        Set<String> ids = WAS.stream().map(Sign::id).collect(Collectors.toSet());
        boolean felt = pile.log().stream()
                .filter(e -> !e.date().isAfter(pile.asOf()))
                .anyMatch(e -> e.seen().stream().anyMatch(ids::contains));
        return felt ? YES : of(seen, cores);
    }

    static WarmOnce of(Collection<Sign> seen, Collection<CoreReading> cores) {
        boolean measured = cores.stream().anyMatch(c -> c.celsius() >= Retrace.STALLED_C);
        if (measured || !Collections.disjoint(seen, WAS)) {
            return YES;
        }
        return seen.contains(Sign.NEVER_HEATED) ? NO : UNTOLD;
    }
}
