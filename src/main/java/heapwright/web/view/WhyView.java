package heapwright.web.view;

import heapwright.web.view.PileView.PartView;
import java.util.List;
import java.util.Optional;

/**
 * Why a pile has stopped.
 *
 * @param address the pile's own page; empty for the example
 * @param advice what is likely, and what to do
 * @param course its course
 * @param told the answer, and what the temperatures say
 * @param stretches what held it back when
 * @param assumed what was taken for granted because nobody told it
 * @param here the address of this page
 * @param trial steps to tick, where the model can try any
 */
public record WhyView(
        Optional<String> address,
        AdviceView advice,
        CourseView course,
        List<String> told,
        List<String> stretches,
        Optional<String> assumed,
        String here,
        Optional<TrialView> trial) {

    /** The choice of a pile, and who looks after another one and may look after a new one. */
    public record Choose(PartView piles, Optional<KeeperView> keeper) {}
}
