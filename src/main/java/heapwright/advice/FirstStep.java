package heapwright.advice;

import heapwright.advice.danger.DangerGate;
import heapwright.advice.engine.Outcome;
import heapwright.advice.winter.Effects;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * What to do first on one pile, by run after run of the rules on what might be answered. The amounts are those of the pile
 * as it is known now and each is worked out once; the model tries no steps. May be shared between threads.
 */
final class FirstStep implements Function<Outcome, Optional<Remedy>> {

    private final Knowledge knowledge;
    private final DangerGate gate;
    private final Pile pile;
    private final Function<Remedy, List<DoseAmount>> doses;
    private final Map<Remedy, List<DoseAmount>> known = new ConcurrentHashMap<>();

    FirstStep(Knowledge knowledge, DangerGate gate, Pile pile, Function<Remedy, List<DoseAmount>> doses) {
        this.knowledge = knowledge;
        this.gate = gate;
        this.pile = pile;
        this.doses = doses;
    }

    /** The first step of the advice on a run; empty where there is none. */
    @Override
    public Optional<Remedy> apply(Outcome outcome) {
        return gate.alarm(outcome.facts(), outcome.firings())
                .map(alarm -> alarm.steps().stream().map(s -> s.remedy()).findFirst())
                .orElseGet(() -> new Arranger(
                                knowledge,
                                outcome,
                                pile,
                                remedy -> known.computeIfAbsent(remedy, doses),
                                Effects.unknown())
                        .arrange().steps().stream().map(s -> s.main().remedy()).findFirst());
    }
}
