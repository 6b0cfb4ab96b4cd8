package heapwright.web.view;

import heapwright.web.view.AdviceView.QuestionView;
import java.util.List;
import java.util.Optional;

/**
 * The checkup with what was answered so far.
 *
 * @param senses the questions by sense
 * @param fields the fields about the pile itself
 * @param temperatureUnit the unit in which temperatures are typed
 * @param live what changes with every answer
 * @param faults what is wrong with what was typed
 * @param passed questions passed over, for a hidden field
 * @param on the day, for a hidden field
 * @param action the address that takes the answers
 * @param pile the name of the pile of the folder that they are about
 */
public record CheckupView(
        List<SenseView> senses,
        FieldsView fields,
        String temperatureUnit,
        LiveView live,
        List<Fault> faults,
        String passed,
        String on,
        String action,
        Optional<String> pile) {

    /** Questions of one sense: its id and name, how many are answered. */
    public record SenseView(String id, String name, int answered, List<SignView> signs) {}

    /** One question with its answer: "yes", "no" or empty. */
    public record SignView(String id, String ask, String how, String answer) {}

    /** Choices and typed figures about the pile. */
    public record FieldsView(
            String built, List<Choice> sizes, List<Choice> kinds, List<Choice> uses, String core, String out) {}

    /** Something to choose. */
    public record Choice(String value, String name, boolean chosen) {}

    /** Something wrong with a field: which, and a sentence. */
    public record Fault(String field, String text) {}

    /**
     * What changes with every answer.
     *
     * @param next the question that helps most now
     * @param headline what stands so far; empty before the first answer
     * @param danger whether people, animals or buildings are at stake
     * @param first the step to do first, if any
     * @param amount its amount, if any
     * @param answered how many questions are answered
     * @param result the address of the whole result
     */
    public record LiveView(
            Optional<QuestionView> next,
            Optional<String> headline,
            boolean danger,
            Optional<String> first,
            Optional<String> amount,
            int answered,
            String result) {}
}
