package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Precedes;
import heapwright.advice.fact.Replaces;
import heapwright.advice.fact.Withholds;
import heapwright.advice.winter.Effects;
import heapwright.advice.winter.Gain;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Puts the proposed steps in order: danger first and what it waits for, then the step of the likeliest finding, then by what
 * a step is expected to win over all likely causes, less its labour and its risk. Steps that undo each other never both
 * stand; of ways that do the same the best leads. The model of heat helps to order steps; it never withholds one.
 */
final class Arranger {

    /** Likelihoods nearer than this are told apart by nobody; judgement. */
    static final double AS_LIKELY = 0.05;

    private final Knowledge knowledge;
    private final Outcome outcome;
    private final LocalDate day;
    private final Function<Remedy, List<DoseAmount>> doses;
    private final Effects effects;
    private final AtHand atHand;
    private final Set<Remedy> failed;
    private final StepCautions cautions;
    private final Map<Remedy, List<RuleInfo>> heldBy = new EnumMap<>(Remedy.class);
    private final Map<Remedy, LocalDate> until = new EnumMap<>(Remedy.class);
    private final Map<Remedy, Remedy> undoneBy = new EnumMap<>(Remedy.class);

    Arranger(
            Knowledge knowledge,
            Outcome outcome,
            Pile pile,
            Function<Remedy, List<DoseAmount>> doses,
            Effects effects) {
        this.knowledge = knowledge;
        this.outcome = outcome;
        this.day = pile.asOf();
        this.doses = doses;
        this.effects = effects;
        this.atHand = AtHand.of(pile, knowledge);
        this.failed = Memory.of(pile).failed();
        this.cautions = new StepCautions(knowledge, outcome);
    }

    /** The steps in order, and what was held back on the way. */
    record Arranged(List<Step> steps, List<WithheldStep> withheld) {}

    Arranged arrange() {
        for (Firing firing : outcome.of(Withholds.class)) {
            Remedy remedy = ((Withholds) firing.result()).remedy();
            hold(remedy, firing.rule());
            WaitingDays.over(firing, day, knowledge).ifPresent(d -> until.merge(remedy, d, WaitingDays::later));
        }
        for (Firing firing : outcome.of(Replaces.class)) {
            hold(((Replaces) firing.result()).other(), firing.rule());
        }
        Map<Remedy, List<ProposalReason>> grounds = ProposalReason.byRemedy(outcome);
        Map<Remedy, Set<Remedy>> before = before();
        Set<Remedy> pressing = pressing(grounds.keySet(), before);
        List<Option> ranked = new ArrayList<>();
        grounds.forEach((remedy, why) -> {
            if (!heldBy.containsKey(remedy)) {
                ranked.add(option(remedy, why));
            }
        });
        List<Option> full =
                ranked.stream().filter(o -> StepValue.hadAll(o.doses())).toList();
        ranked.removeAll(full);
        Set<Remedy> leading = leading(ranked);
        ranked.sort(Comparator.comparing((Option o) -> !info(o).firstAid())
                .thenComparing((Option o) -> !pressing.contains(o.remedy()))
                .thenComparing((Option o) -> !leading.contains(o.remedy()))
                .thenComparing(Comparator.comparingDouble(Option::worth).reversed())
                .thenComparing(Option::remedy));
        List<Step> steps = steps(inSequence(withoutUndoing(ranked, pressing), before, pressing), pressing);
        List<WithheldStep> withheld = new ArrayList<>();
        heldBy.forEach((remedy, rules) -> {
            if (grounds.containsKey(remedy)) {
                withheld.add(new WithheldStep(remedy, rules, Optional.empty(), Optional.ofNullable(until.get(remedy))));
            }
        });
        full.forEach(o -> withheld.add(new WithheldStep(o.remedy(), List.of(), Optional.empty(), Optional.empty())));
        undoneBy.forEach(
                (remedy, by) -> withheld.add(new WithheldStep(remedy, List.of(), Optional.of(by), Optional.empty())));
        return new Arranged(steps, withheld);
    }

    /** Whether a step is proposed for the pile's pace alone: only then do days won speak for it. */
    private static boolean ofPace(List<ProposalReason> why) {
        return why.stream().allMatch(g -> Effects.ofPace(g.cause()));
    }

    private void hold(Remedy remedy, RuleInfo rule) {
        if (knowledge.remedies().get(remedy).firstAid()) {
            return;
        }
        List<RuleInfo> rules = heldBy.computeIfAbsent(remedy, r -> new ArrayList<>());
        if (!rules.contains(rule)) {
            rules.add(rule);
        }
    }

    /**
     * The step of the likeliest finding: what is wrong first is put right first. Of findings as likely as that, the best
     * step leads, and one that did not help last time only where there is no other. What may wait, such as what not to use the compost for, leads only where it is very likely and nothing
     * else is likely, or nothing else is to do.
     */
    private Set<Remedy> leading(List<Option> all) {
        boolean other =
                all.stream().anyMatch(o -> info(o).urgency() != Urgency.LATER && o.chance() >= Grade.LIKELY.from());
        List<Option> soon = all.stream().filter(o -> !waits(o, other)).toList();
        List<Option> options = soon.isEmpty() ? all : soon;
        double likeliest = options.stream().mapToDouble(Option::chance).max().orElse(0);
        return options.stream()
                .filter(o -> o.chance() >= likeliest - AS_LIKELY)
                .max(Comparator.comparing((Option o) -> !spent(o))
                        .thenComparingDouble(Option::worth)
                        .thenComparing(Comparator.comparing(Option::remedy).reversed()))
                .map(o -> EnumSet.of(o.remedy()))
                .orElse(EnumSet.noneOf(Remedy.class));
    }

    /** Whether a step may wait some weeks, and something else is likely or its own finding is not beyond doubt. */
    private boolean waits(Option option, boolean other) {
        return info(option).urgency() == Urgency.LATER && (other || option.chance() < Grade.VERY_LIKELY.from());
    }

    private Option option(Remedy remedy, List<ProposalReason> why) {
        RemedyInfo info = knowledge.remedies().get(remedy);
        List<DoseAmount> amounts = doses.apply(remedy);
        Optional<Gain> gain = effects.of(remedy, amounts).filter(g -> !g.useless());
        // A model that cannot tell whether a step wins anything does not order it: the table does.
        double days = gain.filter(g -> ofPace(why) && (g.asleep() || g.tells()))
                .map(g -> StepValue.inCoin(info, g))
                .orElse(info.effectDays().likely());
        double whole = StepValue.of(info, why, days);
        double worth = StepValue.inFull(amounts) ? whole : Math.min(whole, whole * StepValue.WITHOUT_NEED);
        Option option = new Option(remedy, why, worth, amounts, cautions.of(info, amounts), gain);
        return spent(option) ? option.valued(worth * StepValue.WITHOUT_NEED) : option;
    }

    /**
     * Of two steps that undo each other the one for the likelier finding stands, so that a weak finding never keeps out the
     * cure of a stronger one; of those for findings as likely, the better one.
     */
    private List<Option> withoutUndoing(List<Option> ranked, Set<Remedy> pressing) {
        List<Option> standing = new ArrayList<>();
        ranked.stream()
                .sorted(Comparator.comparing((Option o) -> !info(o).firstAid())
                        .thenComparing(o -> !pressing.contains(o.remedy()))
                        .thenComparing(o -> -Math.round(o.chance() / AS_LIKELY)))
                .forEach(option -> standing.stream()
                        .filter(s -> info(s).undoes().contains(option.remedy()))
                        .findFirst()
                        .ifPresentOrElse(s -> undoneBy.put(option.remedy(), s.remedy()), () -> standing.add(option)));
        return ranked.stream().filter(standing::contains).toList();
    }

    /** What must come before each step. */
    private Map<Remedy, Set<Remedy>> before() {
        Map<Remedy, Set<Remedy>> before = new EnumMap<>(Remedy.class);
        for (Firing firing : outcome.of(Precedes.class)) {
            Precedes order = (Precedes) firing.result();
            before.computeIfAbsent(order.second(), r -> EnumSet.noneOf(Remedy.class))
                    .add(order.first());
        }
        return before;
    }

    /** The steps that cannot wait: those against danger, and those that must be done before them. */
    private Set<Remedy> pressing(Set<Remedy> proposed, Map<Remedy, Set<Remedy>> before) {
        Set<Remedy> pressing = EnumSet.noneOf(Remedy.class);
        Deque<Remedy> open = new ArrayDeque<>();
        proposed.stream()
                .filter(r -> !heldBy.containsKey(r))
                .filter(r -> knowledge.remedies().get(r).urgency().compareTo(Urgency.NOW) <= 0)
                .forEach(open::add);
        while (!open.isEmpty()) {
            Remedy remedy = open.remove();
            if (pressing.add(remedy)) {
                open.addAll(before.getOrDefault(remedy, Set.of()));
            }
        }
        return pressing;
    }

    /** Moves a step in front of one that must come after it. */
    private List<Option> inSequence(List<Option> ranked, Map<Remedy, Set<Remedy>> before, Set<Remedy> pressing) {
        Map<Remedy, Option> sequence = new LinkedHashMap<>();
        for (Option option : ranked) {
            place(option, ranked, before, pressing, sequence, EnumSet.noneOf(Remedy.class));
        }
        return List.copyOf(sequence.values());
    }

    /**
     * Puts an option at the end, right behind those that must come before it; a circle is cut where it was entered. What
     * serves a finding that is only possible does not come before the cure of a likelier one; rest is no cure, and waits.
     */
    private void place(
            Option option,
            List<Option> ranked,
            Map<Remedy, Set<Remedy>> before,
            Set<Remedy> pressing,
            Map<Remedy, Option> sequence,
            Set<Remedy> entered) {
        if (sequence.containsKey(option.remedy()) || !entered.add(option.remedy())) {
            return;
        }
        Set<Remedy> first = before.getOrDefault(option.remedy(), Set.of());
        ranked.stream()
                .filter(o -> first.contains(o.remedy()))
                .filter(o -> pressing.contains(o.remedy())
                        || info(option).urgency() == Urgency.REST
                        || o.chance() >= Math.min(Grade.LIKELY.from(), option.chance() - AS_LIKELY))
                .forEach(o -> place(o, ranked, before, pressing, sequence, entered));
        sequence.put(option.remedy(), option);
    }

    private List<Step> steps(List<Option> sequence, Set<Remedy> pressing) {
        Map<String, List<Option>> groups = new TreeMap<>();
        List<Option> leaders = new ArrayList<>();
        for (Option option : sequence) {
            Optional<String> group = info(option).alternatives();
            if (group.isPresent() && groups.containsKey(group.get())) {
                groups.get(group.get()).add(option);
            } else {
                leaders.add(option);
                group.ifPresent(g -> groups.put(g, new ArrayList<>()));
            }
        }
        List<Step> steps = new ArrayList<>();
        for (Option first : leaders) {
            List<Option> ways = new ArrayList<>(List.of(first));
            ways.addAll(info(first).alternatives().map(groups::get).orElse(List.of()));
            List<Option> open = new ArrayList<>(ways);
            open.removeIf(this::spent);
            List<Option> giving =
                    open.stream().filter(w -> StepValue.gives(w.doses())).toList();
            Option leader = atHand.nearest(giving.isEmpty() ? open.isEmpty() ? ways : open : giving);
            RemedyInfo info = info(leader);
            open.removeIf(w -> w == leader || w != first && StepValue.tooLittle(w.doses()));
            steps.add(new Step(
                    steps.size() + 1,
                    leader,
                    pressing.contains(leader.remedy()) && !info.firstAid() ? Urgency.NOW : info.urgency(),
                    day.plusDays(info.expectDays().from()),
                    day.plusDays(info.expectDays().to()),
                    open,
                    failed.contains(leader.remedy())));
        }
        return steps;
    }

    /** Whether a step did not help last time and can give no more: of an amount the next portion may. */
    private boolean spent(Option option) {
        return failed.contains(option.remedy()) && option.doses().stream().noneMatch(DoseAmount::isNeeded);
    }

    private RemedyInfo info(Option option) {
        return knowledge.remedies().get(option.remedy());
    }
}
