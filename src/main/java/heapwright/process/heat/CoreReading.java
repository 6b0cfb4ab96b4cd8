package heapwright.process.heat;

/**
 * A core temperature somebody measured.
 *
 * @param day day of the run, 0 or more
 * @param celsius −40 to 95 °C
 */
public record CoreReading(int day, double celsius) {
    public CoreReading {
        Checks.within("day", day, 0, 3650);
        Checks.within("celsius", celsius, -40, 95);
    }
}
