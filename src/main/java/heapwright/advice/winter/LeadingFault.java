package heapwright.advice.winter;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which of the things that would have helped is named: a fault of the pile before what would help a sound pile too. */
final class LeadingFault {

    private static final Set<Factor> NOT_OF_THE_PILE = EnumSet.of(Factor.COLD, Factor.TIME, Factor.UNKNOWN);
    /** What would help a sound pile too: it is no fault. */
    private static final Set<Factor> NO_FAULT = EnumSet.of(Factor.SIZE, Factor.SHELTER, Factor.TIME, Factor.FOOD);
    /** Where a fault costs at least this part of what else would help most, the fault is named (judgement). */
    private static final double FAULT_FIRST = 0.5;

    private LeadingFault() {}

    /**
     * Of costs, the dearest first, the one to be named.
     *
     * @param seen faults of which nose, hand or measurement tell: of these it is sure that they are there, so that they
     *     are named where they cost anything at all
     */
    static Optional<HeldBack.Cost> faultFirst(List<HeldBack.Cost> dearestFirst, Set<Factor> seen) {
        Optional<HeldBack.Cost> first = dearestFirst.stream().findFirst();
        return dearestFirst.stream()
                .filter(c -> !NO_FAULT.contains(c.factor()))
                .findFirst()
                .filter(c -> c.kelvin() >= FAULT_FIRST * first.get().kelvin())
                .or(() -> dearestFirst.stream()
                        .filter(c -> seen.contains(c.factor()))
                        .findFirst())
                .or(() -> first);
    }

    /** Of what is of the pile itself; none below the error of such models. */
    static Factor dearest(int day, Map<Factor, double[]> smooth, Set<Factor> seen) {
        boolean sure = seen.stream().anyMatch(f -> smooth.containsKey(f) && smooth.get(f)[day] >= HeldBack.LEAST_K);
        Factor most = Factor.NONE;
        double costs = HeldBack.LEAST_K;
        for (Map.Entry<Factor, double[]> one : smooth.entrySet()) {
            double here = one.getValue()[day] * (!NO_FAULT.contains(one.getKey()) ? 1 : sure ? 0 : FAULT_FIRST);
            boolean itself = !NOT_OF_THE_PILE.contains(one.getKey()) && one.getValue()[day] >= HeldBack.LEAST_K;
            if (itself && (most == Factor.NONE || here >= costs)) {
                most = one.getKey();
                costs = here;
            }
        }
        return most;
    }
}
