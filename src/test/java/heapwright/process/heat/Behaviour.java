package heapwright.process.heat;

import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * One figure of the model beside what was published of it.
 *
 * @param row number in the acceptance list
 * @param what the figure and the pile it is of
 * @param source key and what it says
 * @param digits decimals shown
 * @param published range that was published or follows from it
 * @param held range the tests hold the model to: wider where sources disagree or the model is known to miss
 * @param model works the figure out
 */
public record Behaviour(
        int row, String what, String source, int digits, Band published, Band held, DoubleSupplier model) {

    /**
     * A range.
     *
     * @param low lowest, or −∞
     * @param high highest, or ∞
     */
    public record Band(double low, double high) {
        static Band of(double low, double high) {
            return new Band(low, high);
        }

        static Band atLeast(double low) {
            return new Band(low, Double.POSITIVE_INFINITY);
        }

        static Band atMost(double high) {
            return new Band(Double.NEGATIVE_INFINITY, high);
        }

        /** Whether a figure is in it. */
        public boolean holds(double figure) {
            return figure >= low && figure <= high;
        }

        private String words(int digits) {
            if (Double.isInfinite(low)) {
                return "≤ " + shown(high, digits);
            }
            return Double.isInfinite(high) ? "≥ " + shown(low, digits) : shown(low, digits) + "–" + shown(high, digits);
        }
    }

    private static String shown(double figure, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", figure).replace('-', '−');
    }

    /** A row of the table: the figure, and whether it lies in the published range. */
    public String line() {
        double figure = model.getAsDouble();
        String verdict = published.holds(figure) ? "yes" : held.holds(figure) ? "**no**, held" : "**NO**";
        return "| " + row + " | " + what + " | " + source + " | " + published.words(digits) + " | " + held.words(digits)
                + " | " + shown(figure, digits) + " | " + verdict + " |";
    }
}
