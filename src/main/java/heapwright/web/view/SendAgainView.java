package heapwright.web.view;

import java.util.List;

/**
 * A form that was not taken, with all that was typed, to be sent again.
 *
 * @param reason why, and what to do
 * @param action where it is sent
 * @param typed what a person typed, in words
 * @param carried all fields, as they came
 */
public record SendAgainView(String reason, String action, List<Line> typed, List<Line> carried) {
    public SendAgainView {
        typed = List.copyOf(typed);
        carried = List.copyOf(carried);
    }

    /** A field: what it is called, and what stands in it. */
    public record Line(String label, String value) {}
}
