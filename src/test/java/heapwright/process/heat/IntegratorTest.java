package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The fast course against an independent adaptive integrator on the same equations. */
class IntegratorTest {
    private static final double DAY = 86400;

    /** The right-hand side as the integrator wants it; the weather is steady, so time does not enter. */
    private record Equations(RightHandSide rhs) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return rhs.dimension();
        }

        @Override
        public double[] computeDerivatives(double t, double[] y) {
            double[] dy = new double[y.length];
            rhs.rates(y, dy);
            return dy;
        }
    }

    private static void agree(PileState start, double airC, int days, int daysApart, double coreK, double share) {
        Constants c = Constants.standard();
        RightHandSide rhs = new RightHandSide(start, airC, airC, 2, c, Run.SHELLS);
        List<Double> cores = new ArrayList<>();
        double[] y = rhs.initial();
        double[] scale = y.clone();
        int n = Run.SHELLS;
        for (int i = 0; i < y.length; i++) {
            int quantity = i / n;
            double whole = 0;
            for (int j = quantity * n; j < Math.min(y.length, quantity * n + n); j++) {
                whole += Math.abs(y[j]);
            }
            scale[i] = 1e-6 * Math.max(whole / n, quantity == 0 ? 1e6 : 1e-3);
        }
        ODEIntegrator integrator = new DormandPrince853Integrator(1e-3, DAY, scale, new double[y.length]);
        ODEState state = new ODEState(0, y);
        for (int d = 0; d < days; d++) {
            // A day at a time: the integrator's interpolation between its own steps is not wanted.
            state = integrator.integrate(new Equations(rhs), state, (d + 1) * DAY);
            cores.add(rhs.coreC(state.getPrimaryState()));
        }
        y = state.getPrimaryState();
        Course fast = HeatModel.run(start, Weather.constant(airC, days), List.of(), days, c);
        double square = 0;
        for (int d = 0; d < days; d++) {
            double core = fast.days().get(d).coreC();
            // The plunge when the last water has frozen may fall a day apart.
            double early = cores.get(Math.max(0, d - daysApart));
            double late = cores.get(Math.min(days - 1, d + daysApart));
            double high = Math.max(early, cores.get(d));
            double low = Math.min(late, cores.get(d));
            double miss = Math.max(0, Math.max(core - high, low - core));
            square += miss * miss;
        }
        double spread = Math.sqrt(square / days);
        assertTrue(spread < coreK, "root mean square of the core's difference: " + spread + " K");
        double food = Tally.food(new Shells(start, n, Fixtures.seeded(1)));
        assertEquals(rhs.foodKg(y) / food, fast.last().foodLeftShare(), share);
        double water = fast.last().massKg() - fast.last().dryKg();
        assertEquals(rhs.waterKg(y), water, 0.02 * water);
    }

    @Test
    void aWarmStart() {
        agree(PileState.cube(Fixtures.good(1), 15, Envelope.slatted()), 12, 30, 0, 1.5, 0.01);
    }

    @Test
    void aPileThatFreezes() {
        agree(PileState.cube(Fixtures.good(0.3), 10, Envelope.slatted()), -8, 15, 1, 0.5, 0.01);
    }

    @Test
    void aLargePileInFrost() {
        agree(PileState.cube(Fixtures.rich(6), 15, Envelope.bare()), -5, 25, 0, 1.5, 0.01);
    }
}
