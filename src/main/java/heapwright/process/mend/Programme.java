package heapwright.process.mend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The goals as a linear programme in the kilograms of each offer. Every goal is a row that must be zero or more, with a
 * shortfall allowed at a price, so that there is always an answer: first the least shortfall, then the least work for
 * that shortfall. What is in range stays in range: a mend that trades one fault for another is none.
 *
 * <p>One unit of shortfall is a point of moisture, a unit of C:N, or ten kg per cubic metre of the pile as it was.
 */
final class Programme {

    private static final double DENSITY_UNIT = 10;

    /** Slack given to the second step, so that rounding in the first does not shut it out. */
    private static final double ROUNDING = 1e-7;

    private final List<Offer> offers;
    private final List<Row> rows;

    private record Row(double[] perKg, double atStart) {}

    Programme(Heap heap, List<Offer> offers, Goals goals) {
        this.offers = offers;
        this.rows = rows(heap, offers, goals);
    }

    /** Kilograms of each offer, in order, zero or more. */
    double[] solve() {
        double[] point = nearest();
        double[] least = shortfalls(point);
        double[] work = new double[offers.size() + rows.size()];
        for (int i = 0; i < offers.size(); i++) {
            work[i] = offers.get(i).effortPerKg();
        }
        List<LinearConstraint> constraints = constraints();
        for (int k = 0; k < rows.size(); k++) {
            constraints.add(upTo(offers.size() + k, least[k] + ROUNDING));
        }
        return kilograms(optimize(work, constraints).orElse(point));
    }

    /** The point with the least shortfall; nothing added where the solver finds none. */
    private double[] nearest() {
        double[] price = new double[offers.size() + rows.size()];
        Arrays.fill(price, offers.size(), price.length, 1);
        return optimize(price, constraints()).orElse(new double[price.length]);
    }

    private double[] shortfalls(double[] point) {
        double[] shortfalls = Arrays.copyOfRange(point, offers.size(), point.length);
        return Arrays.stream(shortfalls).map(value -> Math.max(0, value)).toArray();
    }

    private List<LinearConstraint> constraints() {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int k = 0; k < rows.size(); k++) {
            double[] left = Arrays.copyOf(rows.get(k).perKg(), offers.size() + rows.size());
            left[offers.size() + k] = 1;
            constraints.add(
                    new LinearConstraint(left, Relationship.GEQ, -rows.get(k).atStart()));
        }
        for (int k = 0; k < rows.size(); k++) {
            if (rows.get(k).atStart() >= 0) {
                constraints.add(upTo(offers.size() + k, 0));
            }
        }
        for (int i = 0; i < offers.size(); i++) {
            if (Double.isFinite(offers.get(i).mostKg())) {
                constraints.add(upTo(i, offers.get(i).mostKg()));
            }
        }
        return constraints;
    }

    private LinearConstraint upTo(int variable, double most) {
        double[] left = new double[offers.size() + rows.size()];
        left[variable] = 1;
        return new LinearConstraint(left, Relationship.LEQ, most);
    }

    /** Empty where amounts too far apart for the solver's tolerance, as no real pile has them, make it lose its way. */
    private static Optional<double[]> optimize(double[] price, List<LinearConstraint> constraints) {
        try {
            return Optional.of(new SimplexSolver()
                    .optimize(
                            new LinearObjectiveFunction(price, 0),
                            new LinearConstraintSet(constraints),
                            GoalType.MINIMIZE,
                            new NonNegativeConstraint(true))
                    .getPoint());
        } catch (MathIllegalStateException lost) {
            return Optional.empty();
        }
    }

    private double[] kilograms(double[] point) {
        double[] kilograms = new double[offers.size()];
        for (int i = 0; i < kilograms.length; i++) {
            kilograms[i] = Math.min(offers.get(i).mostKg(), Math.max(0, point[i]));
        }
        return kilograms;
    }

    private static List<Row> rows(Heap heap, List<Offer> offers, Goals goals) {
        double moistureUnit = heap.wetKg() / 100;
        double ratioUnit = Math.max(heap.nitrogenKg(), heap.carbonKg() / goals.ratioHigh());
        List<Row> rows = new ArrayList<>(List.of(
                row(heap, offers, moistureUnit, one -> one.waterKg() - goals.moistureLowPct() / 100 * one.wetKg()),
                row(heap, offers, moistureUnit, one -> goals.moistureHighPct() / 100 * one.wetKg() - one.waterKg())));
        if (ratioUnit > 0) {
            rows.add(row(heap, offers, ratioUnit, one -> one.carbonKg() - goals.ratioLow() * one.nitrogenKg()));
            if (Double.isFinite(goals.ratioHigh())) {
                rows.add(row(heap, offers, ratioUnit, one -> goals.ratioHigh() * one.nitrogenKg() - one.carbonKg()));
            }
        }
        if (Double.isFinite(goals.densityMostKgM3())) {
            double unit = DENSITY_UNIT * heap.volumeM3();
            rows.add(row(heap, offers, unit, one -> goals.densityMostKgM3() * one.volumeM3() - one.wetKg()));
        }
        return rows;
    }

    /** A goal that is linear in the masses: what each kilogram moves it by, and where it starts. */
    private static Row row(Heap heap, List<Offer> offers, double unit, java.util.function.ToDoubleFunction<Heap> goal) {
        double[] perKg = offers.stream()
                .mapToDouble(offer -> goal.applyAsDouble(new Heap(0, 0, 0, 0, 0).with(offer, 1)) / unit)
                .toArray();
        return new Row(perKg, goal.applyAsDouble(heap) / unit);
    }
}
