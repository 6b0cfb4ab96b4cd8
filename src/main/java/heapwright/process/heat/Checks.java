package heapwright.process.heat;

/** Refuses figures out of range, naming the figure. */
final class Checks {
    private Checks() {}

    static void above(String name, double value, double low) {
        if (!(value > low) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be more than " + low + ", but is " + value);
        }
    }

    static void notBelow(String name, double value, double low) {
        if (!(value >= low) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be " + low + " or more, but is " + value);
        }
    }

    static void within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    name + " must lie between " + low + " and " + high + ", but is " + value);
        }
    }
}
