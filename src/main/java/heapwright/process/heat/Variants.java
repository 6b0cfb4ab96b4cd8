package heapwright.process.heat;

import java.util.List;

/** The same pile, made healthy. The figures of a healthy pile are judgement. */
final class Variants {
    private static final double GOOD_MOISTURE = 0.57;
    private static final double LEAST_MOISTURE = 0.50;
    private static final double MOST_MOISTURE = 0.62;
    private static final double GOOD_RATIO = 30;
    private static final double MOST_DENSITY = 600;
    private static final double GOOD_PIECE_CM = 5;
    private static final double GOOD_ACID = 0.1;

    private Variants() {}

    /** As told, but damp, airy, with nitrogen enough, not sour and not coarse. */
    static Matter healthy(Matter m) {
        double moisture = m.moisture() < LEAST_MOISTURE || m.moisture() > MOST_MOISTURE ? GOOD_MOISTURE : m.moisture();
        double most = MOST_DENSITY * m.volumeM3() * (1 - moisture);
        double dry = Math.min(m.dryKg(), most);
        return with(
                m,
                dry,
                moisture,
                Math.min(GOOD_RATIO, ratio(m)),
                Math.min(GOOD_PIECE_CM, m.pieceCm()),
                Math.min(GOOD_ACID, m.acidIndex()));
    }

    private static double ratio(Matter m) {
        double organic = m.dryKg() * (m.quickShare() + m.slowShare() + m.ligninShare());
        return organic * Matter.CARBON_SHARE / Math.max(1e-9, m.nitrogenKg());
    }

    private static Matter with(Matter m, double dry, double moisture, double ratio, double pieceCm, double acid) {
        double organic = dry * (m.quickShare() + m.slowShare() + m.ligninShare());
        double nitrogen = organic * Matter.CARBON_SHARE / Math.max(1e-6, ratio);
        return new Matter(
                dry,
                dry * moisture / (1 - moisture),
                m.quickShare(),
                m.slowShare(),
                m.ligninShare(),
                nitrogen,
                Math.min(nitrogen, m.mineralNitrogenKg()),
                m.volumeM3(),
                pieceCm,
                acid);
    }

    /** What is done to a healthy pile too: material and covers, but no mishaps. */
    static List<Event> harmless(List<Event> events) {
        return events.stream()
                .filter(e -> e instanceof Event.Add || e instanceof Event.Cover)
                .toList();
    }
}
