package heapwright.knowledge;

/**
 * A figure of the tables with its span.
 *
 * @param low low end of the usual range
 * @param typical the single best figure
 * @param high high end of the usual range
 * @param source key of a source
 * @param known how it is known
 */
public record Figure(double low, double typical, double high, String source, Known known) {

    /** A figure without a span, as a person states it for their own material. */
    public static Figure exact(double value, String source, Known known) {
        return new Figure(value, value, value, source, known);
    }
}
