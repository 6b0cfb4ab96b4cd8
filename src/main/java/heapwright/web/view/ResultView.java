package heapwright.web.view;

import java.util.Optional;

/**
 * The page of a result.
 *
 * @param advice the advice
 * @param links where it goes on
 * @param assumed what was taken for granted because nobody told it
 */
public record ResultView(AdviceView advice, Links links, Optional<String> assumed) {

    /**
     * Where a result goes on.
     *
     * @param back the questions, with the answers
     * @param json the advice as JSON
     * @param calendar the follow-ups as a calendar
     * @param keep the answers, for keeping them as a pile; empty where they are one already
     */
    public record Links(String back, String json, String calendar, String keep) {}
}
