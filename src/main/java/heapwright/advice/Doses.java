package heapwright.advice;

import heapwright.advice.fact.Reads;
import heapwright.advice.observe.Tried;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.pile.Advised;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.DoseCalculator;
import heapwright.process.dose.DoseContext;
import heapwright.process.dose.Given;
import heapwright.process.dose.Limits;
import heapwright.process.dose.PileStock;
import heapwright.process.dose.Shape;
import heapwright.process.dose.Stocktaking;
import heapwright.process.dose.UsualDoses;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Works out the amounts of remedies for one pile, from what is known of it today. */
final class Doses implements Function<Remedy, List<DoseAmount>> {

    private final Knowledge knowledge;
    private final DoseContext context;
    private final Map<String, Double> measures;
    private final Container.Kind kind;
    private final List<Advised> takenOn;

    Doses(
            Pile pile,
            Knowledge knowledge,
            Materials materials,
            MixtureCalculator calculator,
            List<Reads> readings,
            boolean coldSeason) {
        this.knowledge = knowledge;
        this.measures = pile.measures();
        this.kind = pile.container().kind();
        this.takenOn = Tried.recent(pile);
        Map<Limit, Double> limits = new EnumMap<>(Limit.class);
        knowledge
                .limits()
                .forEach((limit, info) -> limits.put(limit, pile.limits().getOrDefault(limit.id(), info.value())));
        Limits given = new Limits(limits);
        PileStock stock = Stocktaking.of(pile, materials, calculator)
                .watered(Given.of(pile, materials).fertiliserWaterLitres(given));
        PileStock felt = felt(readings)
                .map(r -> stock.atMoisture(Band.around(r.low(), r.likely(), r.high()), Basis.REPORTED))
                .orElse(stock);
        Shape shape = Shape.of(pile.container(), felt.volumeM3().likely());
        this.context = DoseContext.of(pile, felt, shape, given, materials, coldSeason);
    }

    private static Optional<Reads> felt(List<Reads> readings) {
        return readings.stream()
                .filter(r -> r.reading() == Reading.MOISTURE && r.basis() == Reads.Basis.REPORTED)
                .findFirst();
    }

    /** The amounts of a remedy; none where it has no dose or the figures show no need. */
    @Override
    public List<DoseAmount> apply(Remedy remedy) {
        RemedyInfo info = knowledge.remedies().get(remedy);
        DoseContext fitted =
                context.fitting(info.stuffFor(kind)).given(context.given().since(takenOn(remedy)));
        return info.fittedTo(kind).dose().stream()
                .map(dose -> DoseCalculator.calculate(dose, fitted))
                .toList();
    }

    /** The first day on which a step was taken on lately. */
    private Optional<LocalDate> takenOn(Remedy remedy) {
        return takenOn.stream()
                .filter(a -> a.outcome() != Advised.Outcome.NOT_DONE && Tried.remedy(a) == remedy)
                .map(Advised::date)
                .min(LocalDate::compareTo);
    }

    /**
     * What the usual home doses amount to in this pile.
     *
     * @param standing the causes that stand
     */
    List<HomeRemedy> usual(Set<Cause> standing) {
        return knowledge.usualDoses().values().stream()
                .map(info -> new HomeRemedy(
                        info.id(),
                        UsualDoses.of(info.id(), context, litres("matchbox"), litres("tablespoon")),
                        info.forCauses().stream().anyMatch(standing::contains)))
                .toList();
    }

    private double litres(String measure) {
        return measures.getOrDefault(measure, knowledge.measures().get(measure).litres());
    }
}
