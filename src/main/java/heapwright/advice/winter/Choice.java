package heapwright.advice.winter;

import heapwright.knowledge.Id;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Retrace;
import java.util.List;

/** Another way to build the same pile. Sizes of the changes are judgement. */
public enum Choice implements Id {
    BIGGER,
    INSULATED,
    FINER,
    WETTER,
    DRIER,
    LOOSER,
    NITROGEN,
    LESS_SOUR,
    OPEN_COVER,
    UNDISTURBED,
    EARLIER;

    private static final double TWICE = 2;
    private static final double GOOD_MOISTURE = 0.57;
    private static final double DRY = 0.52;
    private static final double WET = 0.63;
    private static final double DENSE = 620;
    private static final double LOOSE = 500;
    private static final double GOOD_RATIO = 30;
    private static final double POOR_RATIO = 36;
    private static final double GOOD_CM = 4;
    private static final double LONG_CM = 6;

    /** The pile built so; null where it was so already. */
    Hindsight.Built built(PileState s, List<Event> events) {
        Matter m = s.matter();
        double wet = m.dryKg() + m.waterKg();
        return switch (this) {
            case BIGGER -> new Hindsight.Built(scaled(s, TWICE), events);
            case INSULATED -> new Hindsight.Built(s.with(Surroundings.insulated(s.envelope())), events);
            case FINER -> m.pieceCm() > LONG_CM ? changed(s, m.withPieces(GOOD_CM), events) : null;
            case WETTER -> m.moisture() < DRY ? changed(s, watered(m, GOOD_MOISTURE, m.volumeM3()), events) : null;
            case DRIER ->
                m.moisture() > WET
                        ? changed(s, watered(m, GOOD_MOISTURE, Math.max(m.volumeM3(), wet / DENSE)), events)
                        : null;
            case LOOSER ->
                wet / m.volumeM3() > DENSE ? changed(s, watered(m, m.moisture(), wet / LOOSE), events) : null;
            case NITROGEN -> ratio(m) > POOR_RATIO ? changed(s, fed(m), events) : null;
            case LESS_SOUR -> m.acidIndex() > 0.4 ? changed(s, m.withAcid(0.15), events) : null;
            case OPEN_COVER ->
                s.envelope().topOpen() < 0.1
                        ? new Hindsight.Built(s.with(Surroundings.unsealed(s.envelope())), events)
                        : null;
            case UNDISTURBED ->
                Retrace.harmless(events).size() < events.size()
                        ? new Hindsight.Built(s, Retrace.harmless(events))
                        : null;
            case EARLIER -> null;
        };
    }

    private static Hindsight.Built changed(PileState s, Matter m, List<Event> events) {
        return new Hindsight.Built(s.with(m), events);
    }

    private static double ratio(Matter m) {
        return organic(m) / 2 / Math.max(1e-9, m.nitrogenKg());
    }

    private static double organic(Matter m) {
        return m.dryKg() * (m.quickShare() + m.slowShare() + m.ligninShare());
    }

    private static Matter watered(Matter m, double moisture, double volume) {
        return of(m, 1, m.dryKg() * moisture / (1 - moisture), m.nitrogenKg(), volume);
    }

    private static Matter fed(Matter m) {
        return of(m, 1, m.waterKg(), organic(m) / 2 / GOOD_RATIO, m.volumeM3());
    }

    /** A pile so many times as big, in the same shape. */
    static PileState scaled(PileState s, double times) {
        double side = Math.cbrt(times);
        Matter m = s.matter();
        Matter more = of(m, times, m.waterKg() * times, m.nitrogenKg() * times, m.volumeM3() * times);
        return new PileState(
                s.lengthM() * side, s.widthM() * side, more, s.coreC(), s.skinC(), s.envelope(), s.stage());
    }

    private static Matter of(Matter m, double times, double water, double nitrogen, double volume) {
        return new Matter(
                m.dryKg() * times,
                water,
                m.quickShare(),
                m.slowShare(),
                m.ligninShare(),
                nitrogen,
                Math.min(nitrogen, m.mineralNitrogenKg() * times),
                volume,
                m.pieceCm(),
                m.acidIndex());
    }
}
