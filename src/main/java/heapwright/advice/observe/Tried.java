package heapwright.advice.observe;

import heapwright.advice.fact.Failed;
import heapwright.advice.fact.Helped;
import heapwright.advice.fact.Underway;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.Sign;
import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;

/** What came of the steps that were taken on, as facts, and what that says of the signs that they mend. */
public final class Tried {

    /** Longer ago than this, since it was told what came of it, a step may be tried afresh, days; judgement. */
    static final int REMEMBERED = 60;

    private final Pile pile;
    private final Map<Remedy, RemedyInfo> infos;
    private final int freshDays;

    /**
     * Prepares.
     *
     * @param pile the pile
     * @param infos what is said of each remedy
     * @param freshDays for how many days an answer holds: that a step helped is one
     */
    public Tried(Pile pile, Map<Remedy, RemedyInfo> infos, int freshDays) {
        this.pile = pile;
        this.infos = infos;
        this.freshDays = freshDays;
    }

    /** The steps of the last two months, or of which something was told in them, in order of the day of advice. */
    public static List<Advised> recent(Pile pile) {
        LocalDate from = pile.asOf().minusDays(REMEMBERED);
        return pile.advised().stream()
                .filter(a -> !a.since().isBefore(from) && !a.date().isAfter(pile.asOf()))
                .toList();
    }

    /** The remedy of a step that was advised. */
    public static Remedy remedy(Advised advised) {
        return EnumSet.allOf(Remedy.class).stream()
                .filter(r -> r.id().equals(advised.step()))
                .findFirst()
                .orElseThrow();
    }

    /** Of each step what came of it last. To rest or to watch is no work that could be done with. */
    public List<Object> facts() {
        Map<Remedy, Advised> last = new EnumMap<>(Remedy.class);
        for (Advised one : recent(pile)) {
            if (one.outcome() != Outcome.OPEN && one.outcome() != Outcome.NOT_DONE) {
                last.put(remedy(one), one);
            }
        }
        List<Object> facts = new ArrayList<>();
        last.forEach((remedy, one) -> {
            int days = (int) ChronoUnit.DAYS.between(one.since(), pile.asOf());
            if (infos.get(remedy).urgency() == Urgency.REST || days < 0) {
                return;
            }
            if (one.outcome() == Outcome.DID_NOT_HELP) {
                facts.add(new Failed(remedy, days));
            } else if (one.outcome() == Outcome.DONE && pile.asOf().isBefore(one.look())) {
                facts.add(new Underway(remedy));
            } else if (one.outcome() == Outcome.HELPED && days <= freshDays && !seenSince(remedy, one.since())) {
                facts.add(new Helped(remedy, days));
            }
        });
        return facts;
    }

    /** Whether a sign that a step mends was seen on the day for which it was told to have helped, or later. */
    private boolean seenSince(Remedy remedy, LocalDate day) {
        List<String> mends = infos.get(remedy).mends().stream().map(Sign::id).toList();
        return pile.log().stream()
                .filter(e -> !e.date().isBefore(day) && !e.date().isAfter(pile.asOf()))
                .anyMatch(e -> e.seen().stream().anyMatch(mends::contains));
    }

    /**
     * Whether a sign that was seen on a day was mended since: the step helped, or it was done and it is not known yet
     * whether it did.
     */
    boolean mended(Sign sign, LocalDate seen) {
        return recent(pile).stream()
                .filter(a -> mends(a, sign))
                .anyMatch(a -> a.outcome() == Outcome.HELPED && outlives(a, seen)
                        || a.outcome() == Outcome.DONE && !a.since().isBefore(seen) && seen.isBefore(pile.asOf()));
    }

    /** A sign of the day for which a step is told to have helped was seen in spite of it. */
    private static boolean outlives(Advised helped, LocalDate seen) {
        return helped.told().isPresent() ? seen.isBefore(helped.since()) : !seen.isAfter(helped.date());
    }

    /** Whether a step against a sign was told not to have helped, last of all and after the day the sign was seen. */
    boolean stands(Sign sign, LocalDate seen) {
        return recent(pile).stream()
                .filter(a -> mends(a, sign) && !a.since().isBefore(seen))
                .filter(a -> a.outcome() == Outcome.HELPED || a.outcome() == Outcome.DID_NOT_HELP)
                .reduce((first, second) -> second)
                .filter(a -> a.outcome() == Outcome.DID_NOT_HELP)
                .isPresent();
    }

    private boolean mends(Advised one, Sign sign) {
        return infos.get(remedy(one)).mends().contains(sign);
    }
}
