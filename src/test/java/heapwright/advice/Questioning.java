package heapwright.advice;

import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Entry;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Plays the questioning of a person who says yes to what a pile's log has seen and no to all else. Whether anybody is hurt,
 * and all that is not an answer (age, recipe, measurements, work, place), is told beforehand. The full answers are those to
 * every sign that may be asked for.
 */
public final class Questioning {

    private final Advisor advisor;

    public Questioning(Advisor advisor) {
        this.advisor = advisor;
    }

    /**
     * In what order to ask.
     *
     * @param advice the advice on a pile as told so far and the signs asked for already
     * @param next which sign to ask for next; empty to stop
     */
    public record Order(
            BiFunction<Pile, Set<Sign>, Advice> advice, BiFunction<Advice, Set<Sign>, Optional<Sign>> next) {}

    /** The most telling question first, as long as one may change the first step. */
    public Order telling() {
        return new Order(
                advisor::advise,
                (advice, asked) -> advice.questions().stream()
                        .filter(q -> q.settles() > 0)
                        .map(Question::sign)
                        .findFirst());
    }

    /** As the table of signs has them, those left out that nobody would be asked. */
    public Order fixed() {
        return new Order(
                (pile, asked) -> advisor.diagnose(pile),
                (advice, asked) -> askable(advice, asked).stream().findFirst());
    }

    private List<Sign> askable(Advice advice, Set<Sign> asked) {
        return Askable.of(advice.pile(), advice.outcome(), advisor.knowledge().signs(), asked);
    }

    /**
     * What came of one questioning.
     *
     * @param questions how many were asked until the first step was the right one and stayed so
     * @param reached whether it was the right one at the end
     */
    public record Asked(int questions, boolean reached) {}

    /** The questioning about one pile in one order. */
    public Asked about(Pile whole, Order order) {
        Set<Sign> answered = Arrays.stream(Sign.values())
                .filter(s -> advisor.knowledge().signs().get(s).sense() == SignInfo.Sense.INCIDENT)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Sign.class)));
        Set<Sign> all = EnumSet.copyOf(answered);
        all.addAll(told(whole));
        all.addAll(askable(advisor.diagnose(with(whole, Set.of())), Set.of()));
        Optional<Remedy> right = first(advisor.diagnose(with(whole, all)));
        int questions = 0;
        int since = 0;
        Advice advice = order.advice().apply(with(whole, answered), answered);
        boolean so = first(advice).equals(right);
        for (Optional<Sign> next = order.next().apply(advice, answered);
                next.isPresent();
                next = order.next().apply(advice, answered)) {
            questions++;
            answered.add(next.get());
            advice = order.advice().apply(with(whole, answered), answered);
            boolean now = first(advice).equals(right);
            since = now && !so ? questions : since;
            so = now;
        }
        return new Asked(so ? since : questions, so);
    }

    private static Optional<Remedy> first(Advice advice) {
        return advice.steps().stream().map(s -> s.main().remedy()).findFirst();
    }

    /** The signs that a pile's log answers. */
    public static Set<Sign> told(Pile pile) {
        Set<String> ids = pile.log().stream()
                .flatMap(e -> Stream.concat(e.seen().stream(), e.notSeen().stream()))
                .collect(Collectors.toSet());
        return Arrays.stream(Sign.values())
                .filter(s -> ids.contains(s.id()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Sign.class)));
    }

    /** A pile with the answers to these signs alone: as its log has them, and no to the others. */
    private static Pile with(Pile whole, Set<Sign> answered) {
        Set<String> ids = answered.stream().map(Sign::id).collect(Collectors.toSet());
        Set<Sign> others = answered.isEmpty() ? EnumSet.noneOf(Sign.class) : EnumSet.copyOf(answered);
        others.removeAll(told(whole));
        List<Entry> log = new ArrayList<>();
        for (Entry e : whole.log()) {
            log.add(new Entry(
                    e.date(),
                    kept(e.seen(), ids),
                    kept(e.notSeen(), ids),
                    e.measured(),
                    e.done(),
                    e.added(),
                    e.note()));
        }
        log.add(new Entry(
                whole.asOf(),
                List.of(),
                others.stream().map(Sign::id).toList(),
                Measured.nothing(),
                List.of(),
                List.of(),
                ""));
        return whole.with(whole.name(), whole.asOf(), whole.recipe(), log);
    }

    private static List<String> kept(List<String> all, Set<String> ids) {
        return all.stream().filter(ids::contains).toList();
    }
}
