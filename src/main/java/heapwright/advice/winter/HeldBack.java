package heapwright.advice.winter;

import heapwright.process.heat.Event;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Stretch;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What held a pile back between two days of its way, both included. */
final class HeldBack {

    /** A factor must have held for this part of the time to be the answer (judgement). */
    private static final double PART = 0.3;

    private static final int EVERY_DAYS = 4;
    private static final int OFTEN = 3;
    /** Below this part of the rate that the recipe explains, something else held it back (judgement). */
    private static final double SLOW = 0.6;
    /** Moisture from which air is short, below which water is, and the acid index of pH 6: see docs/method/winter.md. */
    private static final double SOAKED = 0.66;

    private static final double DRY = 0.42;
    private static final double SOUR = 0.47;

    /** Days lost to each factor: one at a tenth of the rate left counts as 0.9. */
    private final Map<Factor, Double> lost = new EnumMap<>(Factor.class);

    private final Map<Factor, Integer> held = new EnumMap<>(Factor.class);
    private final double logRate;
    private final int days;

    HeldBack(List<Stretch> stretches, int from, int to) {
        double rates = 0;
        int all = 0;
        for (Stretch stretch : stretches) {
            int here = Math.min(stretch.to(), to) - Math.max(stretch.from(), from) + 1;
            if (here > 0) {
                Factor factor = Factor.of(stretch.factor());
                lost.merge(factor, here * (1 - stretch.value()), Double::sum);
                held.merge(factor, here, Integer::sum);
                rates += here * Math.log(stretch.rateBias());
                all += here;
            }
        }
        logRate = rates;
        days = all;
    }

    /** What cost it most days. */
    Factor worst() {
        return most(factor -> true);
    }

    /** The same, taken that something is wrong: first what can be mended, then what the record tells. */
    Factor fault(List<Event> events, List<StateMark> marks) {
        Factor mendable = most(Factor::mendable);
        if (mendable.mendable() && held.get(mendable) >= PART * days) {
            return mendable;
        }
        if (disturbed(events)) {
            return Factor.HANDLING;
        }
        return days > 0 && Math.exp(logRate / days) < SLOW ? marked(marks) : worst();
    }

    private Factor most(Predicate<Factor> wanted) {
        Factor most = Factor.NONE;
        for (Map.Entry<Factor, Double> one : lost.entrySet()) {
            if (wanted.test(one.getKey()) && one.getValue() > lost.getOrDefault(most, 0.0)) {
                most = one.getKey();
            }
        }
        return most;
    }

    /** What the recipe does not explain, by what was measured or felt of water and acid; the last mark that tells. */
    private static Factor marked(List<StateMark> marks) {
        Factor factor = Factor.UNKNOWN;
        for (StateMark mark : marks) {
            if (mark.moisture().orElse(0) >= SOAKED) {
                factor = Factor.AIR;
            } else if (mark.moisture().orElse(1) <= DRY) {
                factor = Factor.WATER;
            } else if (mark.acidIndex().orElse(0) >= SOUR) {
                factor = Factor.ACID;
            }
        }
        return factor;
    }

    /** Whether it was opened, turned or loosened every few days. The model reheats faster than life after a turning. */
    private static boolean disturbed(List<Event> events) {
        int[] opened = events.stream()
                .filter(e -> e instanceof Event.Turn || e instanceof Event.Loosen)
                .mapToInt(Event::day)
                .distinct()
                .sorted()
                .toArray();
        return opened.length >= OFTEN && opened[opened.length - 1] - opened[0] <= EVERY_DAYS * opened.length;
    }
}
