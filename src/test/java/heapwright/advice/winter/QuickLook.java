package heapwright.advice.winter;

import heapwright.advice.Advice;
import heapwright.advice.Forecaster;
import heapwright.advice.TestPile;
import java.util.List;
import java.util.Optional;

/** What lies ahead of a pile, by few samples: for tests that look at thousands. */
public final class QuickLook {

    private static final int SAMPLES = 8;

    private static final Forecaster FORECASTER = new Forecaster(TestPile.KNOWLEDGE);

    private QuickLook() {}

    /** Its course alone, or with all other ways; empty where the model has nothing to go by. */
    public static Optional<PileOutlook> of(Advice advice, boolean ways) {
        return advice.story()
                .map(Story::now)
                .or(() -> FORECASTER.now(advice.pile()))
                .map(now -> PileOutlook.of(now, SAMPLES, ways ? List.of(Plan.values()) : List.of()));
    }
}
