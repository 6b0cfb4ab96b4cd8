package heapwright.web.view;

import java.util.Optional;

/**
 * The page of a result.
 *
 * @param advice the advice
 * @param links where it goes on
 * @param assumed what was taken for granted because nobody told it
 * @param keeper who looks after another pile and may look after this one, where it can be kept as a new one
 */
public record ResultView(AdviceView advice, Links links, Optional<String> assumed, Optional<KeeperView> keeper) {

    /**
     * Where a result goes on.
     *
     * @param back the questions, with the answers
     * @param json the advice as JSON
     * @param calendar the follow-ups as a calendar
     * @param keep the answers, for keeping them; empty where there are none
     * @param into the pile of the folder that they can be noted in; else they are kept as a new one
     * @param document the document of a file that was opened and is not kept
     */
    public record Links(
            String back, String json, String calendar, String keep, Optional<Into> into, Optional<String> document) {

        /** Whether it can be kept as a new pile. */
        public boolean makesPile() {
            return document.isPresent() || into.isEmpty() && !keep.isEmpty();
        }
    }

    /**
     * A pile of the folder to note answers in.
     *
     * @param action the address that notes them
     * @param name its name
     * @param day the day of the entry, in words
     */
    public record Into(String action, String name, String day) {}
}
