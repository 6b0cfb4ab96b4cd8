package heapwright.advice;

import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Auditor;
import heapwright.advice.danger.Alarm;
import heapwright.advice.danger.DangerGate;
import heapwright.advice.danger.DangerWatch;
import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Rulebook;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Outdated;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.advice.fact.WarnsAlways;
import heapwright.advice.observe.PileFacts;
import heapwright.advice.observe.Quantities;
import heapwright.advice.winter.Effects;
import heapwright.advice.winter.ModelFacts;
import heapwright.advice.winter.StepTrials;
import heapwright.advice.winter.Story;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import heapwright.process.mixture.MixtureCalculator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Gives advice on a pile. The command line, the page, the cases and the Java API all call this. It keeps no state
 * between calls and may be shared between threads.
 */
public final class Advisor {

    private final Knowledge knowledge;
    private static final Set<Reading> OUTDOORS =
            EnumSet.of(Reading.OUTDOOR_TEMPERATURE, Reading.USUAL_OUTDOOR_TEMPERATURE);

    private final Supplier<Rulebook> rulebook;
    private final Inference inference;
    private final MixtureCalculator calculator;
    private final DangerGate gate;
    private final Auditor auditor;

    public Advisor(Knowledge knowledge, Rulebook rulebook) {
        this(knowledge, () -> rulebook);
    }

    /**
     * An advisor whose rules may still be loading: it works out what needs no rules meanwhile.
     *
     * @param rulebook asked whenever the rules are needed
     */
    public Advisor(Knowledge knowledge, Supplier<Rulebook> rulebook) {
        this.knowledge = knowledge;
        this.rulebook = rulebook;
        this.inference = new Inference(rulebook, knowledge);
        this.calculator = new MixtureCalculator();
        this.gate = new DangerGate(knowledge);
        this.auditor = new Auditor(knowledge, inference, new DangerWatch(knowledge, inference), calculator);
    }

    /** An advisor with the rules packed with the program. */
    public static Advisor packed(Knowledge knowledge) {
        return new Advisor(knowledge, Rulebook.packed());
    }

    public Knowledge knowledge() {
        return knowledge;
    }

    public Rulebook rulebook() {
        return rulebook.get();
    }

    /** What every rule and every row of evidence says of itself, in order of id. */
    public List<RuleInfo> rules() {
        return inference.rules();
    }

    /**
     * The same advisor without one rule or row of evidence: it shows what that is needed for.
     *
     * @param id the id of a rule or row
     * @throws IllegalArgumentException when there is none
     */
    public Advisor without(String id) {
        return knowledge.evidence().stream().anyMatch(row -> row.id().equals(id))
                ? new Advisor(knowledge.without(id), rulebook)
                : new Advisor(knowledge, rulebook().without(id));
    }

    /**
     * Audits the recipe of a pile.
     *
     * @param pile the pile
     * @param ownRatio the C:N that the person worked out, if they did
     * @return empty when the pile names no ingredients
     */
    public Optional<Audit> audit(Pile pile, OptionalDouble ownRatio) {
        return auditor.audit(pile, ownRatio);
    }

    /** What to say first and alone of a pile; empty while no danger stands. */
    public Optional<Alarm> alarm(Pile pile) {
        return new DangerWatch(knowledge, inference).of(pile);
    }

    /**
     * Advice on a pile for its day, with the questions that would settle the rest. The same pile gets the same advice,
     * however its record was kept: see {@link Gathered}.
     */
    public Advice advise(Pile pile) {
        return advise(pile, Set.of());
    }

    /**
     * The same without some questions.
     *
     * @param passed signs that the person could not tell
     */
    public Advice advise(Pile pile, Set<Sign> passed) {
        return asking(diagnosed(pile), passed);
    }

    /** The same with questions, which are most of the work, only where advice that has none yet should have some. */
    public Advice adviseAsking(Pile pile, Predicate<Advice> wanted) {
        Diagnosed diagnosed = diagnosed(pile);
        return wanted.test(diagnosed.advice()) ? asking(diagnosed, Set.of()) : diagnosed.advice();
    }

    private Advice asking(Diagnosed diagnosed, Set<Sign> passed) {
        Advice advice = diagnosed.advice();
        if (advice.alarm().isPresent()) {
            return advice.asking(GatedAdvice.questions(advice.alarm().get()).stream()
                    .filter(q -> !passed.contains(q.sign()))
                    .toList());
        }
        FirstStep first = new FirstStep(knowledge, gate, advice.pile(), diagnosed.doses());
        return advice.asking(new NextQuestions(inference, knowledge, first)
                .after(advice.outcome(), Askable.of(advice.pile(), advice.outcome(), knowledge.signs(), passed)));
    }

    /** Advice and the amounts behind it. */
    private record Diagnosed(Advice advice, Function<Remedy, List<DoseAmount>> doses) {}

    /** The same without questions, which are most of the work: enough for cases and for many piles at once. */
    public Advice diagnose(Pile pile) {
        return diagnosed(pile).advice();
    }

    private Diagnosed diagnosed(Pile kept) {
        Pile pile = Gathered.of(kept);
        PileFacts known = PileFacts.of(pile, knowledge);
        Optional<Story> story = story(pile, known);
        List<Object> facts = new ArrayList<>(known.facts());
        story.map(ModelFacts::of).ifPresent(facts::addAll);
        Outcome told = inference.run(facts);
        Optional<Alarm> alarm = gate.alarm(facts, told.firings());
        if (alarm.isPresent()) {
            return new Diagnosed(
                    new GatedAdvice(knowledge).of(pile, alarm.get(), told, findings(told, false), known.readings()),
                    remedy -> List.of());
        }
        Outcome outcome = withoutOutdated(told);
        Doses doses = new Doses(
                pile,
                knowledge,
                known.materials(),
                calculator,
                known.readings(),
                coldSeason(known.quantities(), known.readings(), known.signs()));
        Arranger.Arranged arranged = new Arranger(
                        knowledge,
                        outcome,
                        pile,
                        doses,
                        story.map(Story::now).<Effects>map(StepTrials::new).orElseGet(Effects::unknown))
                .arrange();
        List<Finding> findings = findings(outcome, false);
        Set<Cause> standing = findings.stream().map(Finding::cause).collect(Collectors.toSet());
        Advice advice = new Advice(
                pile,
                Optional.empty(),
                findings,
                List.of(),
                findings(outcome, true),
                arranged.steps(),
                arranged.withheld(),
                cautions(outcome),
                List.of(),
                known.readings(),
                contradictions(outcome),
                doses.usual(standing),
                outcome,
                story);
        return new Diagnosed(advice, doses);
    }

    /** What the model says of the past; it needs a recipe and a measured core. */
    private static Optional<Story> story(Pile pile, PileFacts known) {
        boolean measured =
                pile.log().stream().anyMatch(e -> e.measured().coreC().isPresent());
        return measured
                ? Forecaster.model(pile, known)
                        .filter(m -> !m.cores().isEmpty())
                        .map(Story::of)
                : Optional.empty();
    }

    /**
     * Answers of different days that cannot both be so are no contradiction: the pile has changed, and the older answer
     * is out of date. So is one that a newer answer of another name has put right.
     */
    private Outcome withoutOutdated(Outcome outcome) {
        Map<Sign, Integer> daysAgo = new EnumMap<>(Sign.class);
        outcome.facts().stream()
                .filter(Seen.class::isInstance)
                .map(Seen.class::cast)
                .forEach(s -> daysAgo.put(s.sign(), s.daysAgo()));
        Set<Sign> outdated = EnumSet.noneOf(Sign.class);
        for (Contradicts pair : contradictions(outcome)) {
            int one = daysAgo.getOrDefault(pair.one(), 0);
            int other = daysAgo.getOrDefault(pair.other(), 0);
            if (one != other) {
                outdated.add(one > other ? pair.one() : pair.other());
            }
        }
        outcome.of(Outdated.class).forEach(f -> outdated.add(((Outdated) f.result()).sign()));
        if (outdated.isEmpty()) {
            return outcome;
        }
        return inference
                .run(outcome.facts().stream()
                        .filter(f -> !(f instanceof Seen s && outdated.contains(s.sign())))
                        .toList())
                .with(outcome.of(Outdated.class));
    }

    private static boolean coldSeason(Quantities quantities, List<Reads> readings, List<Object> signs) {
        return signs.stream().anyMatch(s -> s instanceof Seen seen && seen.sign() == Sign.FROST_AT_NIGHT)
                || readings.stream()
                        .anyMatch(r -> OUTDOORS.contains(r.reading())
                                && r.likelyBelow(quantities.limit(Limit.MEAN_COLD_SEASON)));
    }

    private List<Finding> findings(Outcome outcome, boolean aside) {
        Map<Cause, Firing> explained = new EnumMap<>(Cause.class);
        for (Firing firing : outcome.of(SetAside.class)) {
            explained.putIfAbsent(((SetAside) firing.result()).cause(), firing);
        }
        return outcome.weighed().values().stream()
                .filter(w -> w.grade().atLeast(Grade.POSSIBLE))
                .filter(w -> explained.containsKey(w.cause()) == aside)
                .map(w -> new Finding(w, Optional.ofNullable(explained.get(w.cause()))))
                .sorted(Comparator.comparingDouble(Finding::likelihood)
                        .reversed()
                        .thenComparing(Finding::cause))
                .toList();
    }

    private List<Caution> cautions(Outcome outcome) {
        Set<Caution> all = EnumSet.noneOf(Caution.class);
        outcome.of(WarnsAlways.class).forEach(f -> all.add(((WarnsAlways) f.result()).caution()));
        return all.stream()
                .sorted(Comparator.comparing(
                        (Caution c) -> knowledge.cautions().get(c).severity()))
                .toList();
    }

    private static List<Contradicts> contradictions(Outcome outcome) {
        return outcome.of(Contradicts.class).stream()
                .map(f -> (Contradicts) f.result())
                .distinct()
                .toList();
    }
}
