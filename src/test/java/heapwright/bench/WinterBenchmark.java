package heapwright.bench;

import heapwright.process.heat.Constants;
import heapwright.process.heat.Course;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.HeatModel;
import heapwright.process.heat.Layer;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Spread;
import heapwright.process.heat.Weather;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of one winter of 180 days, and of a band of 64 winters. Goal: 2 ms a winter on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class WinterBenchmark {
    /** Whether the pile is wrapped in straw, and so stays warm longer, which needs shorter steps. */
    @Param({"false", "true"})
    public boolean insulated;

    private final Matter matter = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 4);
    private final Weather weather = Weather.monthly(
                    new double[] {-5, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3}, 304, 180)
            .restless(1, 4)
            .withPrecipitation(1.5);
    private final List<Event> events = List.of(new Event.Turn(21), new Event.Loosen(40), new Event.Water(60, 10, 30));

    private PileState start() {
        Envelope envelope = Envelope.slatted();
        return PileState.cube(
                matter, 12, insulated ? envelope.topped(Layer.straw(0.2)).wrapped(Layer.straw(0.15)) : envelope);
    }

    /** One winter. */
    @Benchmark
    public Course winter() {
        return HeatModel.run(start(), weather, events, 180, Constants.standard());
    }

    /** 64 sampled winters on all cores. */
    @Benchmark
    public Ensemble band() {
        return Ensemble.run(start(), weather, events, 180, Constants.standard(), Spread.usual(), 64);
    }
}
