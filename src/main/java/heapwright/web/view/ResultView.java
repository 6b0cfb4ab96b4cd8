package heapwright.web.view;

/**
 * The page of a result.
 *
 * @param advice the advice
 * @param links where it goes on
 */
public record ResultView(AdviceView advice, Links links) {

    /**
     * Where a result goes on.
     *
     * @param back the questions, with the answers
     * @param json the advice as JSON
     * @param calendar the follow-ups as a calendar
     * @param keep the answers, for keeping them as a pile; empty where they are one already
     * @param ageTaken whether the age was not given and taken as about a month
     */
    public record Links(String back, String json, String calendar, String keep, boolean ageTaken) {}
}
