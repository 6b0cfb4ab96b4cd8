package heapwright.advice.winter;

import heapwright.process.heat.Bounds;
import heapwright.process.heat.Event;
import heapwright.process.heat.Factors;
import heapwright.process.heat.StateMark;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** What a record says is amiss, without the model: see docs/method/winter.md. */
final class RecordedFaults {

    private static final int EVERY_DAYS = 4;
    private static final int OFTEN = 3;
    /** Moisture from which air is short, below which water is, and the acid index of pH 6. */
    private static final double SOAKED = 0.66;

    private static final double DRY = 0.42;
    private static final double SOUR = Factors.acidIndex(6);
    /** No bound of moisture. */
    private static final double WETTEST = 0.95;

    private RecordedFaults() {}

    /** Whether a mark has less water than a share, by what was measured or felt. */
    static boolean drier(StateMark mark, double share) {
        return most(mark) < share;
    }

    /** Whether a mark has more water than a share. */
    static boolean wetter(StateMark mark, double share) {
        return least(mark) > share;
    }

    private static double most(StateMark mark) {
        return mark.moisture().orElse(mark.bounds().map(Bounds::mostMoisture).orElse(1.0));
    }

    private static double least(StateMark mark) {
        return mark.moisture().orElse(mark.bounds().map(Bounds::leastMoisture).orElse(0.0));
    }

    /** Whether a mark says that food lies without air. */
    static boolean airless(StateMark mark) {
        return mark.bounds().filter(b -> b.mostReach() < 1).isPresent();
    }

    /** Whether food lay without air by the last that was noticed of it up to a day. */
    static boolean airlessOn(int day, Collection<StateMark> marks) {
        return marks.stream()
                .filter(m -> m.day() <= day && m.bounds().isPresent())
                .max(Comparator.comparingInt(StateMark::day))
                .filter(last -> marks.stream().anyMatch(m -> m.day() == last.day() && airless(m)))
                .isPresent();
    }

    /** The faults that nose, hand and measurement tell of by their last word: what is put right by {@link Correction}. */
    static Set<Factor> seen(Collection<StateMark> marks) {
        Set<Factor> seen = EnumSet.noneOf(Factor.class);
        last(marks, m -> least(m) > 0 || most(m) < WETTEST).ifPresent(m -> {
            if (drier(m, Correction.DRY)) {
                seen.add(Factor.WATER);
            } else if (wetter(m, Correction.WET)) {
                seen.add(Factor.AIR);
            }
        });
        if (airlessOn(Integer.MAX_VALUE, marks)) {
            seen.add(Factor.AIR);
        }
        last(marks, m -> m.acidIndex().isPresent())
                .filter(m -> m.acidIndex().getAsDouble() > Correction.SOUR)
                .ifPresent(m -> seen.add(Factor.ACID));
        return seen;
    }

    private static Optional<StateMark> last(Collection<StateMark> marks, Predicate<StateMark> tells) {
        return marks.stream().filter(tells).max(Comparator.comparingInt(StateMark::day));
    }

    /** What the recipe does not explain, by what was measured or felt of water and acid; the last mark that tells. */
    static Factor by(Collection<StateMark> marks) {
        Factor factor = Factor.UNKNOWN;
        for (StateMark mark : marks) {
            if (least(mark) >= SOAKED || airless(mark)) {
                factor = Factor.AIR;
            } else if (most(mark) <= DRY) {
                factor = Factor.WATER;
            } else if (mark.acidIndex().orElse(0) >= SOUR) {
                factor = Factor.ACID;
            }
        }
        return factor;
    }

    /** Whether it was opened, turned or loosened every few days. The model reheats faster than life after a turning. */
    static boolean disturbed(List<Event> events) {
        int[] opened = events.stream()
                .filter(e -> e instanceof Event.Turn || e instanceof Event.Loosen)
                .mapToInt(Event::day)
                .distinct()
                .sorted()
                .toArray();
        return opened.length >= OFTEN && opened[opened.length - 1] - opened[0] <= EVERY_DAYS * opened.length;
    }
}
