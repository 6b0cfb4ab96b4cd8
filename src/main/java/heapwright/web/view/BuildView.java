package heapwright.web.view;

import heapwright.report.Sections;
import heapwright.web.view.AdviceView.CautionView;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The recipe as it is typed, with its audit beside it.
 *
 * @param recipe rows of the recipe
 * @param atHand rows of what else is at hand
 * @param size the size of the bin, as typed
 * @param climates what the winters are like
 * @param lengthUnit the unit it is typed in
 * @param rows how many rows are shown
 * @param materials names that can be picked
 * @param faults what is wrong with what was typed
 * @param audit what it comes to; empty while there is no recipe
 * @param outlook the winter ahead of it; empty while there is no recipe, and where it follows
 * @param late whether the winter ahead follows when the page is shown already, in the place of {@link #LATE}
 * @param json the audit as JSON
 * @param keep the form that keeps it as a pile
 */
public record BuildView(
        List<RowView> recipe,
        List<RowView> atHand,
        Map<String, String> size,
        List<Choice> climates,
        String lengthUnit,
        int rows,
        List<String> materials,
        List<Fault> faults,
        Optional<AuditView> audit,
        Optional<OutlookView> outlook,
        boolean late,
        String json,
        KeepView keep) {

    /** Where in the page that follows which takes longer than the rest. */
    public static final String LATE = "<!--late-->";

    /**
     * Keeping the recipe as a pile: the recipe as an address carries it, what was typed, and what is wrong with it.
     *
     * @param keeper who looks after another pile and may look after this one; asked only where the form is shown
     */
    public record KeepView(
            String recipe, String name, String built, List<Fault> faults, Supplier<Optional<KeeperView>> keeper) {}

    /** A row: where its fields begin, its number, and what is in them. */
    public record RowView(
            String prefix, int number, String material, String amount, List<Choice> units, List<Choice> cuts) {}

    /**
     * An audit.
     *
     * @param mark id of the verdict
     * @param verdict the verdict in a sentence
     * @param sections the mend, the plan, what it becomes and what the numbers say
     * @param numbers the numbers with their spans
     * @param cautions what to beware of
     * @param shares what each material brings
     */
    public record AuditView(
            String mark,
            String verdict,
            List<Sections.Section> sections,
            List<String> numbers,
            List<CautionView> cautions,
            List<Share> shares) {}

    /** What one material brings: name, mass, water, carbon, nitrogen. */
    public record Share(String name, String wet, String water, String carbon, String nitrogen) {}

    /** Whether anything is named as at hand. */
    public boolean anyAtHand() {
        return atHand.stream()
                .anyMatch(row -> !row.material().isBlank() || !row.amount().isBlank());
    }

    public String size(String field) {
        return size.getOrDefault(field, "");
    }
}
