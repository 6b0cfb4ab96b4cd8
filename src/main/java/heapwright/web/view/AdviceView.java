package heapwright.web.view;

import heapwright.knowledge.CautionInfo.Severity;
import heapwright.report.DoseWords;
import java.util.List;
import java.util.Optional;

/**
 * Advice, ready to be shown.
 *
 * @param name what the pile is called
 * @param day the day of the advice
 * @param headline what stands, in a sentence
 * @param danger whether people, animals or buildings are at stake
 * @param well whether there is nothing to mend
 * @param work one afternoon's work, if there is any
 * @param rest the steps after it
 * @param cautions what to beware of, the gravest first
 * @param findings what is likely, and why
 * @param held what is held back
 * @param aside what is explained by something else
 * @param questions what would settle the rest
 * @param readings the figures behind it
 * @param clashes answers and figures that cannot both be so, and what to look at again
 * @param dangerWhy why a danger stands; none without one
 * @param whenSafe when the danger is over, and what else was found and waits
 */
public record AdviceView(
        String name,
        String day,
        String headline,
        boolean danger,
        boolean well,
        Optional<WorkView> work,
        List<StepView> rest,
        List<CautionView> cautions,
        List<FindingView> findings,
        List<Line> held,
        List<Line> aside,
        List<QuestionView> questions,
        List<String> readings,
        List<String> clashes,
        List<String> dangerWhy,
        List<String> whenSafe) {

    /** The first job, if there is any. */
    public Optional<StepView> first() {
        return work.map(w -> w.jobs().get(0));
    }

    /** Cautions where people, animals or buildings are at stake. */
    public List<CautionView> dangers() {
        return cautions.stream().filter(CautionView::grave).toList();
    }

    /** The other cautions. */
    public List<CautionView> otherCautions() {
        return cautions.stream().filter(c -> !c.grave()).toList();
    }

    /**
     * A step.
     *
     * @param rank its place
     * @param id its remedy
     * @param name what to do
     * @param doses how much of what
     * @param when how soon
     * @param how how to do it
     * @param remarks what to know about the amounts
     * @param why for which causes and why
     * @param expect what to look for
     * @param look on which days
     * @param otherwise what if it does not come
     * @param notWhen when not to
     * @param others other ways of which one is enough
     * @param cautions titles of what to beware of
     */
    public record StepView(
            int rank,
            String id,
            String name,
            List<DoseWords.Told> doses,
            String when,
            String how,
            List<String> remarks,
            String why,
            String expect,
            String look,
            String otherwise,
            String notWhen,
            List<Line> others,
            List<String> cautions) {}

    /**
     * One afternoon's work.
     *
     * @param when how soon, as a heading
     * @param fetch what to fetch; empty where nothing is needed
     * @param others that somebody else should do it; empty where that is not so
     * @param jobs the steps, in the order of the work
     * @param care what to beware of, a line a severity, the gravest first
     * @param date the day on which to look again, ISO
     * @param look when to look again, in words
     * @param expect what should show then
     * @param otherwise what to do if it does not
     */
    public record WorkView(
            String when,
            String fetch,
            String others,
            List<StepView> jobs,
            List<CareView> care,
            String date,
            String look,
            String expect,
            String otherwise) {}

    /** What to beware of with one severity: its id and word, and the titles of the cautions; of a danger also the text. */
    public record CareView(String severity, String word, String text) {}

    /** A caution: severity id and word, title, text, reason, and whose rules come first. */
    public record CautionView(
            String id, String severity, String word, String title, String text, String why, Optional<String> rules) {
        /** Whether people, animals or buildings are at stake. */
        public boolean grave() {
            return severity.equals(Severity.DANGER.id());
        }

        /** Whether no grave injury is at stake, so that its title is enough at first sight. */
        public boolean minor() {
            return severity.equals(Severity.CAUTION.id()) || severity.equals(Severity.NOTICE.id());
        }
    }

    /**
     * A finding.
     *
     * @param id its cause
     * @param kind danger, trouble or well
     * @param name its name
     * @param grade how likely, in a word
     * @param inHundred how likely, of a hundred such piles
     * @param summary a sentence to the person
     * @param why the mechanism
     * @param tellApart what would settle it
     * @param supports evidence for it
     * @param opposes evidence against it
     * @param days days of the pile's course that the evidence rests on, ISO dates
     */
    public record FindingView(
            String id,
            String kind,
            String name,
            String grade,
            String inHundred,
            String summary,
            String why,
            String tellApart,
            List<EvidenceView> supports,
            List<EvidenceView> opposes,
            List<String> days) {}

    /** A piece of evidence: how firmly, on what facts, by which reason, from which source, known how, and whether counted. */
    public record EvidenceView(
            String strength,
            String because,
            String reason,
            String rule,
            String source,
            String known,
            boolean counted) {}

    /** A line of two parts: what, and why or how. */
    public record Line(String id, String what, String why) {}

    /** A question: sign, question, how to check, and how the answer helps. */
    public record QuestionView(String sign, String ask, String how, String helps) {}
}
