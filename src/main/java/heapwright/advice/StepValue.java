package heapwright.advice;

import heapwright.advice.winter.Gain;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.Strength;
import heapwright.process.dose.Cap;
import heapwright.process.dose.DoseAmount;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a step is worth, in days. All figures are judgement; they order steps and are never shown as a promise. */
final class StepValue {

    /** An hour of work is reckoned as half a day of progress. */
    private static final double DAYS_PER_MINUTE = 0.5 / 60;

    private static final double DAYS_FOR_HEAVY_WORK = 0.5;
    private static final Map<RemedyInfo.Risk, Double> DAYS_FOR_RISK = Map.of(
            RemedyInfo.Risk.NONE, 0.0,
            RemedyInfo.Risk.LOW, 0.5,
            RemedyInfo.Risk.SOME, 2.0,
            RemedyInfo.Risk.HIGH, 6.0);
    private static final Map<Strength, Double> FIRMNESS = Map.of(
            Strength.SLIGHT, 0.25,
            Strength.FAIR, 0.5,
            Strength.STRONG, 0.8,
            Strength.DECISIVE, 1.0);

    /** A step whose own figures show no need for it, or that little of the need is met, is worth only this part; judgement. */
    static final double WITHOUT_NEED = 0.25;

    /** What can wait some weeks is worth half of what it would be if it were done at once; judgement. */
    private static final double FOR_LATER = 0.5;

    private StepValue() {}

    static boolean needed(List<DoseAmount> amounts) {
        return amounts.isEmpty() || amounts.stream().anyMatch(a -> !a.cap().equals(Optional.of(Cap.NO_NEED)));
    }

    /** Whether there is anything to give, or nothing to be weighed: not where something is wanted and none of it can be given. */
    static boolean gives(List<DoseAmount> amounts) {
        return amounts.isEmpty()
                || amounts.stream().anyMatch(DoseAmount::isNeeded)
                || amounts.stream().allMatch(a -> a.cap().equals(Optional.of(Cap.NO_NEED)));
    }

    /** Whether all that could be given at once is too little to be worth the work; the whole need may still be told. */
    static boolean tooLittle(List<DoseAmount> amounts) {
        return amounts.stream().anyMatch(a -> a.cap().equals(Optional.of(Cap.TOO_LITTLE)));
    }

    /** Whether the pile has had as much of it this season as it may. */
    static boolean hadAll(List<DoseAmount> amounts) {
        return !amounts.isEmpty()
                && amounts.stream().allMatch(a -> !a.isNeeded() && a.cap().equals(Optional.of(Cap.SEASON)));
    }

    /** Whether what there is of it gives a fair share of what the pile needs. */
    static boolean goesFar(List<DoseAmount> amounts) {
        return amounts.stream().allMatch(DoseAmount::goesFar);
    }

    /** Whether a step counts in full: something is wanted, and what can be given goes far or the whole need can be told. */
    static boolean inFull(List<DoseAmount> amounts) {
        return needed(amounts) && (gives(amounts) || tooLittle(amounts)) && goesFar(amounts);
    }

    /** @param days what the step wins if its cause is right: by the model, else by the table */
    static double of(RemedyInfo info, List<ProposalReason> why, double days) {
        double missed = 1;
        for (ProposalReason ground : why) {
            missed *= 1 - ground.likelihood() * firmness(ground);
        }
        double cost = info.effort().minutes() * DAYS_PER_MINUTE
                + (info.effort().heavy() ? DAYS_FOR_HEAVY_WORK : 0)
                + DAYS_FOR_RISK.get(info.risk());
        double soon = info.urgency() == Urgency.LATER ? FOR_LATER : 1;
        return (1 - missed) * days * soon - cost;
    }

    /**
     * What the model says, in the coin of the table, since many steps have no other: nothing won is the table's low
     * end, all the time looked at its high end.
     */
    static double inCoin(RemedyInfo info, Gain gain) {
        double low = info.effectDays().low();
        return low + gain.share() * (info.effectDays().high() - low);
    }

    static double firmness(ProposalReason ground) {
        return FIRMNESS.get(ground.rule().strength());
    }
}
