package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.Spares;
import heapwright.advice.fact.Warns;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RemedyInfo;
import heapwright.process.dose.DoseAmount;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The cautions of a step on this pile and day: those that always go with the step or with the materials of its dose, as
 * far as they fit, and those that a rule adds, less those that a rule spares.
 */
final class StepCautions {

    private final Knowledge knowledge;
    private final Set<Condition> holding = EnumSet.noneOf(Condition.class);
    private final List<Warns> warnings;
    private final List<Spares> spared;

    StepCautions(Knowledge knowledge, Outcome outcome) {
        this.knowledge = knowledge;
        outcome.of(Holds.class).forEach(f -> holding.add(((Holds) f.result()).condition()));
        warnings = outcome.of(Warns.class).stream()
                .map(Firing::result)
                .map(Warns.class::cast)
                .toList();
        spared = outcome.of(Spares.class).stream()
                .map(Firing::result)
                .map(Spares.class::cast)
                .toList();
    }

    /** The gravest first. */
    List<Caution> of(RemedyInfo remedy, List<DoseAmount> amounts) {
        Set<Caution> all = EnumSet.noneOf(Caution.class);
        Stream.concat(
                        remedy.cautions().stream(),
                        amounts.stream()
                                .filter(DoseAmount::isNeeded)
                                .flatMap(a -> a.material().stream())
                                .flatMap(m -> m.cautions().stream()))
                .filter(c -> knowledge.cautions().get(c).fits().under(holding))
                .forEach(all::add);
        warnings.stream().filter(w -> w.remedy() == remedy.id()).forEach(w -> all.add(w.caution()));
        spared.stream().filter(s -> s.remedy() == remedy.id()).forEach(s -> all.remove(s.caution()));
        return knowledge.cautions().values().stream()
                .filter(c -> all.contains(c.id()))
                .sorted(Comparator.comparing(CautionInfo::severity))
                .map(CautionInfo::id)
                .toList();
    }
}
