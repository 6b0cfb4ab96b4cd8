package heapwright.process.use;

import heapwright.knowledge.HomeTestInfo;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Ripeness;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Wait;
import heapwright.pile.Entry;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.pile.Tested;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The home tests of a record: of each the latest that says something counts. A result that is as old as the table allows,
 * or older than what went in last, says nothing of today.
 *
 * @param latest of each test the latest result that says something
 * @param changed tests whose latest result says otherwise than the one before
 */
public record TestResults(Map<HomeTest, OnDay> latest, List<HomeTest> changed) {
    public TestResults {
        latest = Map.copyOf(latest);
        changed = List.copyOf(changed);
    }

    /**
     * A result on a day.
     *
     * @param result the result
     * @param day the day on which it was read
     * @param counts whether it still says something of today
     */
    public record OnDay(Tested.Result result, LocalDate day, boolean counts) {

        public boolean good() {
            return counts && result == Tested.Result.GOOD;
        }

        public boolean poor() {
            return counts && result == Tested.Result.POOR;
        }
    }

    private record Read(HomeTest test, Tested.Result result, LocalDate day) {}

    /** The tests of a pile up to its day; those of weedkiller count however old, since it does not fade by itself. */
    public static TestResults of(Pile pile, Knowledge knowledge, PileDays days) {
        LocalDate holds = days.today().minusDays(days.wait(Wait.TEST_HOLDS).days());
        LocalDate fresh = days.lastFresh();
        LocalDate from = holds.isAfter(fresh) ? holds : fresh;
        Map<HomeTest, OnDay> latest = new EnumMap<>(HomeTest.class);
        List<HomeTest> changed = new ArrayList<>();
        for (Read read : reads(pile, knowledge)) {
            boolean counts = !read.day().isBefore(from) || read.test() == HomeTest.PEAS;
            OnDay before = latest.put(read.test(), new OnDay(read.result(), read.day(), counts));
            changed.remove(read.test());
            if (before != null && opposite(before.result(), read.result())) {
                changed.add(read.test());
            }
        }
        return new TestResults(latest, changed);
    }

    private static boolean opposite(Tested.Result one, Tested.Result other) {
        return one != other && (one == Tested.Result.POOR || other == Tested.Result.POOR);
    }

    /** In order of day; of one day the worst last, so that it counts. */
    private static List<Read> reads(Pile pile, Knowledge knowledge) {
        List<Read> all = new ArrayList<>();
        for (Entry entry : pile.log()) {
            if (entry.date().isAfter(pile.asOf())) {
                continue;
            }
            entry.tested().stream()
                    .filter(t -> t.result() != Tested.Result.UNCLEAR)
                    .forEach(t -> all.add(new Read(t.test(), t.result(), entry.date())));
            for (HomeTestInfo info : knowledge.endUse().tests().values()) {
                info.signIfPoor().map(Sign::id).ifPresent(sign -> {
                    if (entry.seen().contains(sign)) {
                        all.add(new Read(info.id(), Tested.Result.POOR, entry.date()));
                    } else if (entry.notSeen().contains(sign)) {
                        all.add(new Read(info.id(), Tested.Result.GOOD, entry.date()));
                    }
                });
            }
        }
        all.sort(Comparator.comparing(Read::day).thenComparing(Read::result));
        return all;
    }

    public Optional<OnDay> of(HomeTest test) {
        return Optional.ofNullable(latest.get(test));
    }

    public boolean good(HomeTest test) {
        return of(test).filter(OnDay::good).isPresent();
    }

    public boolean poor(HomeTest test) {
        return of(test).filter(OnDay::poor).isPresent();
    }

    /** The most that all results that count allow. */
    public Ripeness allows(Knowledge knowledge) {
        Ripeness least = Ripeness.POTS;
        for (Map.Entry<HomeTest, OnDay> one : latest.entrySet()) {
            if (one.getValue().counts()) {
                least = least.and(knowledge
                        .endUse()
                        .tests()
                        .get(one.getKey())
                        .allows(one.getValue().result()));
            }
        }
        return least;
    }

    /** Whether one that counts came out so that it keeps the compost off beds; weedkiller is another matter. */
    public boolean failed(Knowledge knowledge) {
        return !allows(knowledge).atLeast(Ripeness.BEDS) && !poor(HomeTest.PEAS);
    }

    /** How many results count. */
    public int counting() {
        return (int) latest.values().stream().filter(OnDay::counts).count();
    }
}
