package heapwright.web.view;

import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A pile of the folder.
 *
 * @param address its address
 * @param id its id
 * @param name its name
 * @param built when it was built, in words
 * @param made what it was built from
 * @param course its course
 * @param earlier how many rows of it are left out, the earliest
 * @param headline what stands, in a sentence
 * @param danger whether people, animals or buildings are at stake
 * @param first the step to do first, if any
 * @param asks what was taken on and should show by now, by the day of the advice
 * @param taken what was taken on, is not to be looked at yet and not told to be done
 * @param waits what was done and is not to be looked at yet, with the day, and what else is to be noted, in words
 * @param keeps whether today's work can be taken on
 * @param clashes answers and figures that cannot both be so, and what to look at again
 * @param note the form for noting
 * @param notes how many notes there are, those taken back among them
 * @param saved what was just done, in words
 */
public record PileView(
        String address,
        String id,
        String name,
        String built,
        List<String> made,
        CourseView course,
        int earlier,
        String headline,
        boolean danger,
        Optional<String> first,
        List<TakenView> asks,
        List<TakenView> taken,
        List<String> waits,
        boolean keeps,
        List<String> clashes,
        NoteView note,
        int notes,
        Optional<String> saved) {

    /**
     * What was taken on.
     *
     * @param text what it was, in words
     * @param steps the steps; where there are several each can be answered by itself
     */
    public record TakenView(String text, List<StepView> steps) {

        /** The day of the advice as ISO, the id of a step and its name. */
        public record StepView(String date, String id, String name) {}
    }

    /**
     * The form for noting.
     *
     * @param typed what was typed, by field; kept when something is wrong with it
     * @param signs what can be noticed, by sense
     * @param actions what can be done
     * @param tests home tests and how they may come out
     * @param units units of amounts
     * @param temperatureUnit the unit of temperatures
     * @param materials names that can be picked
     * @param faults what is wrong with what was typed
     */
    public record NoteView(
            Map<String, String> typed,
            List<SignsView> signs,
            List<Choice> actions,
            List<TestChoices> tests,
            List<Choice> units,
            String temperatureUnit,
            List<String> materials,
            List<Fault> faults) {

        public String typed(String field) {
            return typed.getOrDefault(field, "");
        }
    }

    /** A home test and how it may come out. */
    public record TestChoices(String id, String name, List<Choice> results) {}

    /** What one sense can notice: its id and name, whether it stands open, the signs to tick. */
    public record SignsView(String id, String name, boolean open, List<Choice> signs) {}

    /**
     * The folder.
     *
     * @param folder where it is; left out for other machines
     * @param piles what is in it
     * @param removed what was deleted and can be fetched back, the first of it
     * @param removedInAll how much that is in all
     * @param justRemoved the id of what was deleted just now
     * @param faults what is wrong with what was typed
     * @param typed what was typed
     * @param keeper who looks after another pile and may look after a new one
     */
    public record ShelfView(
            Optional<String> folder,
            PartView piles,
            List<FileView> removed,
            int removedInAll,
            Optional<FileView> justRemoved,
            List<Fault> faults,
            Map<String, String> typed,
            Optional<KeeperView> keeper) {}

    /**
     * A page of a list that may be long.
     *
     * @param files those that it shows
     * @param range which of how many they are
     * @param before the address of the page before
     * @param after the address of the next page
     */
    public record PartView(List<FileView> files, String range, Optional<String> before, Optional<String> after) {}

    /** A file: id, address, name, a line about it, and what is wrong if it is broken. */
    public record FileView(String id, String address, String name, String about, List<String> problems) {
        public boolean broken() {
            return !problems.isEmpty();
        }
    }
}
