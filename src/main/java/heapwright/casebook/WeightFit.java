package heapwright.casebook;

import heapwright.casebook.Scored.Stated;
import heapwright.knowledge.Strength;
import heapwright.knowledge.Weights;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Fits what the words of strength weigh, and how little a second piece of one witness adds, to cases whose source says what
 * is so. Least is the logarithmic loss (I. J. Good, Rational Decisions, 1952; from memory) and a penalty for leaving the
 * figures that were chosen beforehand, so that few cases move them little. Five figures, the same for all rows: which row
 * is fair and which is strong is no matter of the fit. The same cases give the same weights.
 */
public final class WeightFit {

    /**
     * The figures before any fit: Good's scale in round steps and a quarter for what is told again; judgement. A weight
     * twice or half as large costs {@link #PENALTY} times the square of ln 2.
     */
    static final Weights BEFORE = new Weights(
            Map.of(Strength.SLIGHT, 2.0, Strength.FAIR, 5.0, Strength.STRONG, 10.0, Strength.DECISIVE, 20.0), 0.25);

    /** Chosen among 1, 3, 10, 30 and 100 by the loss on sources left out. */
    static final double PENALTY = 10;

    private static final double FIRST_STEP = 0.1;
    private static final double STILL = 1e-6;
    private static final int MOST_TRIALS = 3_000;
    private static final double SURE = 1e-9;
    private static final int AGAIN = Strength.values().length;

    private final double penalty;

    public WeightFit() {
        this(PENALTY);
    }

    WeightFit(double penalty) {
        this.penalty = penalty;
    }

    /** The weights that fit best what was stated on these cases. */
    public Weights fit(Collection<Scored> scored) {
        List<Stated> stated = scored.stream().flatMap(s -> s.stated().stream()).toList();
        double[] best = new SimplexOptimizer(new SimpleValueChecker(STILL, STILL))
                .optimize(
                        new MaxEval(MOST_TRIALS),
                        GoalType.MINIMIZE,
                        new InitialGuess(new double[AGAIN + 1]),
                        new NelderMeadSimplex(AGAIN + 1, FIRST_STEP),
                        new ObjectiveFunction(moves -> loss(stated, moves)))
                .getPoint();
        return weights(best);
    }

    /** For each source the weights that fit the cases of all other sources. */
    public Map<String, Weights> leavingOut(Collection<Scored> scored) {
        return scored.stream()
                .map(s -> s.tested().source())
                .collect(Collectors.toCollection(TreeSet::new))
                .parallelStream()
                .collect(Collectors.toMap(
                        source -> source,
                        source -> fit(scored.stream()
                                .filter(s -> !s.tested().source().equals(source))
                                .toList()),
                        (a, b) -> a,
                        TreeMap::new));
    }

    private double loss(List<Stated> stated, double[] moves) {
        double loss = 0;
        for (double move : moves) {
            loss += penalty * move * move;
        }
        if (!rising(moves)) {
            return Double.MAX_VALUE;
        }
        Weights weights = weights(moves);
        for (Stated one : stated) {
            double likelihood = one.weighed().under(weights).likelihood();
            loss -= Math.log(Math.max(SURE, one.so() ? likelihood : 1 - likelihood));
        }
        return loss;
    }

    private static boolean rising(double[] moves) {
        double last = 0;
        for (Strength strength : Strength.values()) {
            double weight = moved(strength, moves);
            if (!(weight > last)) {
                return false;
            }
            last = weight;
        }
        return true;
    }

    /** Moves are the logarithm of how many times a weight, or the odds of the part told again, grew. */
    private static Weights weights(double[] moves) {
        Map<Strength, Double> decibans = new EnumMap<>(Strength.class);
        Stream.of(Strength.values()).forEach(s -> decibans.put(s, moved(s, moves)));
        double odds = BEFORE.again() / (1 - BEFORE.again()) * Math.exp(moves[AGAIN]);
        return new Weights(decibans, odds / (1 + odds));
    }

    private static double moved(Strength strength, double[] moves) {
        return BEFORE.of(strength) * Math.exp(moves[strength.ordinal()]);
    }
}
