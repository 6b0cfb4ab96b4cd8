package heapwright.advice.observe;

import heapwright.advice.fact.Turned;
import heapwright.knowledge.Sign;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** What came of the last full turn, by the readings before and after it. */
final class Turns {

    /** A core that was measured longer before a turn tells nothing of what the turn did, days; judgement. */
    private static final int BEFORE = 7;

    /** A turned core is cool for a day or two and comes back, days; judgement. */
    private static final int SETTLES = 2;

    /** Weather told of so many days before or after a turn is taken as that of the turn; judgement. */
    private static final int ABOUT = 2;

    private final Pile pile;
    private final List<Entry> log;

    Turns(Pile pile) {
        this.pile = pile;
        this.log =
                pile.log().stream().filter(e -> !e.date().isAfter(pile.asOf())).toList();
    }

    /** The last turn; empty where there was none, or the core was not measured on both sides of it. */
    Optional<Turned> last() {
        return log.stream()
                .filter(e -> e.done().contains(Action.TURNED_FULLY))
                .map(Entry::date)
                .reduce((first, second) -> second)
                .flatMap(this::around);
    }

    private Optional<Turned> around(LocalDate day) {
        OptionalDouble before = core(e -> !e.date().isAfter(day) && days(e, day) <= BEFORE);
        OptionalDouble after = core(e -> e.date().isAfter(day) && days(e, day) >= SETTLES);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        List<Entry> about = log.stream().filter(e -> days(e, day) <= ABOUT).toList();
        double coldest = about.stream()
                .flatMapToDouble(e -> e.measured().outdoorC().stream())
                .min()
                .orElse(Double.NaN);
        boolean frost = about.stream().anyMatch(e -> e.seen().contains(Sign.FROST_AT_NIGHT.id()));
        return Optional.of(new Turned(
                (int) ChronoUnit.DAYS.between(day, pile.asOf()),
                before.getAsDouble() - after.getAsDouble(),
                coldest,
                frost));
    }

    /** The last reading of the core among some entries. */
    private OptionalDouble core(Predicate<Entry> which) {
        return log.stream()
                .filter(which)
                .flatMapToDouble(e -> e.measured().coreC().stream())
                .reduce((first, second) -> second);
    }

    private static long days(Entry entry, LocalDate day) {
        return Math.abs(ChronoUnit.DAYS.between(day, entry.date()));
    }
}
