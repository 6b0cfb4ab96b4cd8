package heapwright.web.view;

import heapwright.web.view.BuildView.RowView;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.CheckupView.Fault;
import java.util.List;
import java.util.Map;

/**
 * What a pile is, to be told or put right.
 *
 * @param name its name
 * @param pile its address
 * @param typed what was typed, by field
 * @param was how the page was opened, for a hidden field
 * @param recipe rows of its recipe
 * @param rows how many rows are shown
 * @param choices what can be chosen, by field
 * @param lengthUnit the unit of lengths
 * @param volumeUnit the unit of the volume
 * @param materials names that can be picked
 * @param faults what is wrong with what was typed
 */
public record EditView(
        String name,
        String pile,
        Map<String, String> typed,
        String was,
        List<RowView> recipe,
        int rows,
        Map<String, List<Choice>> choices,
        String lengthUnit,
        String volumeUnit,
        List<String> materials,
        List<Fault> faults) {

    public String typed(String field) {
        return typed.getOrDefault(field, "");
    }
}
