package heapwright.knowledge;

import heapwright.pile.Container;
import heapwright.pile.Gear;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What the table of remedies says of one remedy.
 *
 * @param id the remedy
 * @param name what to do, in one line without amounts
 * @param how how to do it
 * @param gently how to do it, or whom to leave it to, where whoever does the work cannot lift; for all heavy work
 * @param urgency how soon
 * @param effort the work it takes
 * @param gear what to fetch for it besides the stuff of its dose
 * @param risk what it may cost the pile or the person
 * @param effectDays days of progress it wins where it fits: low, likely, high; judgement
 * @param dose the calculation that gives its amount, if it has one
 * @param expect what to look for afterwards
 * @param expectDays after how many days, from and to
 * @param otherwise what to do if that does not come
 * @param notWhen when not to do it
 * @param cautions the cautions that always go with it
 * @param does what doing it means for the pile and for the person
 * @param mends signs that are gone once it has helped: what was seen of them before counts little then
 * @param undoes remedies whose effect it would undo
 * @param alternatives name of the group of remedies of which one is enough, if any
 * @param ways how it is done where the pile is of a kind that asks for another way
 * @param sources keys of sources
 * @param known how it is known
 */
public record RemedyInfo(
        Remedy id,
        String name,
        String how,
        Optional<String> gently,
        Urgency urgency,
        Effort effort,
        List<Gear> gear,
        Risk risk,
        Effect effectDays,
        Optional<Dose> dose,
        String expect,
        Days expectDays,
        String otherwise,
        String notWhen,
        List<Caution> cautions,
        Does does,
        List<Sign> mends,
        List<Remedy> undoes,
        Optional<String> alternatives,
        List<Way> ways,
        List<String> sources,
        Known known) {
    /** The same as it is done with a pile of this kind. */
    public RemedyInfo fittedTo(Container.Kind kind) {
        return ways.stream()
                .filter(w -> w.kinds().contains(kind))
                .findFirst()
                .map(w -> told(
                        w.name(),
                        w.how(),
                        Optional.empty(),
                        w.gear(),
                        w.withoutDose() ? Optional.empty() : dose,
                        w.expect().orElse(expect),
                        w.otherwise().orElse(otherwise),
                        w.notWhen(),
                        List.of()))
                .orElse(this);
    }

    /** The same as somebody does it who cannot lift. */
    public RemedyInfo withoutLifting() {
        return gently.map(light -> told(name, light, gently, gear, dose, expect, otherwise, notWhen, ways))
                .orElse(this);
    }

    /** Ids of the materials that serve best with a pile of this kind, the best first; empty where it is as with a heap. */
    public List<String> stuffFor(Container.Kind kind) {
        return ways.stream()
                .filter(w -> w.kinds().contains(kind))
                .findFirst()
                .map(Way::stuff)
                .orElse(List.of());
    }

    /** The same with its sentences put another way; ids, names and figures stay. */
    RemedyInfo reworded(UnaryOperator<String> wording) {
        return told(
                name,
                wording.apply(how),
                gently.map(wording),
                gear,
                dose,
                wording.apply(expect),
                wording.apply(otherwise),
                wording.apply(notWhen),
                ways.stream()
                        .map(w -> new Way(
                                w.kinds(),
                                w.name(),
                                wording.apply(w.how()),
                                w.gear(),
                                w.expect().map(wording),
                                w.otherwise().map(wording),
                                wording.apply(w.notWhen()),
                                w.stuff(),
                                w.withoutDose()))
                        .toList());
    }

    private RemedyInfo told(
            String title,
            String doing,
            Optional<String> light,
            List<Gear> fetched,
            Optional<Dose> amount,
            String sign,
            String failing,
            String never,
            List<Way> others) {
        return new RemedyInfo(
                id,
                title,
                doing,
                light,
                urgency,
                effort,
                fetched,
                risk,
                effectDays,
                amount,
                sign,
                expectDays,
                failing,
                never,
                cautions,
                does,
                mends,
                undoes,
                alternatives,
                others,
                sources,
                known);
    }

    /** Whether it helps somebody who is hurt or ill: nothing ever holds that back. */
    public boolean firstAid() {
        return urgency == Urgency.FIRST_AID;
    }

    /**
     * How it is done with some kinds of pile.
     *
     * @param kinds the kinds
     * @param name what to do, in one line
     * @param how how to do it
     * @param gear what to fetch for it so
     * @param expect what to look for afterwards, where it is something else than usual
     * @param otherwise what to do where that is not to be seen, where it is something else than usual
     * @param notWhen when not to do it
     * @param stuff ids of the materials that serve best, the best first; empty where it is as with a heap
     * @param withoutDose whether the amount of the remedy has no meaning when it is done so
     */
    public record Way(
            List<Container.Kind> kinds,
            String name,
            String how,
            List<Gear> gear,
            Optional<String> expect,
            Optional<String> otherwise,
            String notWhen,
            List<String> stuff,
            boolean withoutDose) {

        public Way {
            gear = List.copyOf(gear);
            stuff = List.copyOf(stuff);
        }
    }

    /** How soon a remedy is wanted. */
    public enum Urgency implements Id {
        /** Before all else: somebody is hurt or ill. */
        FIRST_AID,
        /** At once: danger. */
        NOW,
        /** Within a day or two. */
        SOON,
        /** When it suits, within a few weeks. */
        LATER,
        /** Nothing to do but wait or watch. */
        REST
    }

    /** What a remedy may cost. */
    public enum Risk implements Id {
        NONE,
        LOW,
        SOME,
        HIGH
    }

    /**
     * The work a remedy takes on a pile of about a cubic metre.
     *
     * @param minutes time in minutes
     * @param heavy whether it is heavy work
     */
    public record Effort(int minutes, boolean heavy) {}

    /** Days of progress won. */
    public record Effect(double low, double likely, double high) {}

    /**
     * What doing a step means. Each is told for every remedy; nothing is taken for granted.
     *
     * @param opens it lets air in or heat out: by digging, forking, poking, lifting a lid or laying stuff inside
     * @param digsIn it digs into the pile and moves what lies inside, on which steam, gas, dust, germs and sleeping
     *     animals depend
     * @param turns it moves all of the pile or its hot part
     * @param wets it brings water to the pile
     * @param feeds it brings stuff to the pile that rots or burns
     * @param addsNitrogen it brings nitrogen
     * @param addsAlkali it brings ash or lime
     * @param addsDryStuff it works dry, carbon-rich stuff in
     * @param fromOutside it is done without touching the pile and without going into the room or pit where it stands
     */
    public record Does(
            boolean opens,
            boolean digsIn,
            boolean turns,
            boolean wets,
            boolean feeds,
            boolean addsNitrogen,
            boolean addsAlkali,
            boolean addsDryStuff,
            boolean fromOutside) {

        /** Whether it opens, turns, wets or feeds the pile: what nobody does to a pile in danger. */
        public boolean disturbs() {
            return opens || digsIn || turns || wets || feeds;
        }
    }

    /** A span of days. */
    public record Days(int from, int to) {}
}
