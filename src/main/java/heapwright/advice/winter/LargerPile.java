package heapwright.advice.winter;

import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;

/** More of the same. */
final class LargerPile {

    private LargerPile() {}

    /** A pile so many times as big, in the same shape. */
    static PileState pile(PileState s, double times) {
        double side = Math.cbrt(times);
        return new PileState(
                s.lengthM() * side,
                s.widthM() * side,
                matter(s.matter(), times),
                s.coreC(),
                s.skinC(),
                s.envelope(),
                s.stage());
    }

    /** What is done to it, in proportion. */
    static Event event(Event event, double times) {
        if (event instanceof Event.Add a) {
            return new Event.Add(a.day(), matter(a.matter(), times), a.temperatureC(), a.mixed());
        }
        if (event instanceof Event.Water w) {
            return new Event.Water(w.day(), w.kg() * times, w.temperatureC());
        }
        if (event instanceof Event.Feed f) {
            return new Event.Feed(f.day(), f.nitrogenKg() * times, f.waterKg() * times, f.temperatureC());
        }
        return event;
    }

    private static Matter matter(Matter m, double times) {
        return new Matter(
                m.dryKg() * times,
                m.waterKg() * times,
                m.quickShare(),
                m.slowShare(),
                m.ligninShare(),
                m.nitrogenKg() * times,
                m.mineralNitrogenKg() * times,
                m.volumeM3() * times,
                m.pieceCm(),
                m.acidIndex());
    }
}
