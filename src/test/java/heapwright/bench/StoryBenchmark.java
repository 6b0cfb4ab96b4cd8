package heapwright.bench;

import heapwright.advice.winter.Effects;
import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.StepTrials;
import heapwright.advice.winter.Story;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Remedy;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.process.mixture.Materials;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of what the model adds to an answer. Goal: 300 ms warm for the steps of a checkup. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class StoryBenchmark {
    private static final List<Remedy> STEPS = List.of(
            Remedy.TURN_FULLY,
            Remedy.LOOSEN_SIDES_AND_TOP,
            Remedy.INSULATE,
            Remedy.CHOP_COARSE,
            Remedy.SHELTER_FROM_WIND,
            Remedy.UNSEAL);

    private PileModel model;
    private Story story;

    /** Reads a pile of the winter cases. */
    @Setup
    public void read() throws IOException {
        Knowledge knowledge = KnowledgeReader.packed();
        Path file = Path.of("cases", "winter", "sealed-wet.json");
        Pile pile = new PileReader(knowledge.vocabulary())
                .read(file.toString(), Files.readAllBytes(file))
                .pile()
                .orElseThrow();
        model = PileModel.of(pile, Materials.of(knowledge.materials()), List.of(), List.of())
                .orElseThrow();
        story = Story.of(model);
    }

    /** The past, beside a healthy pile. */
    @Benchmark
    public Story past() {
        return Story.of(model);
    }

    /** Six steps tried. */
    @Benchmark
    public Effects steps() {
        Effects effects = new StepTrials(story.now());
        STEPS.forEach(r -> effects.of(r, List.of()));
        return effects;
    }

    /** An outlook with its plans. */
    @Benchmark
    public PileOutlook ahead() {
        return PileOutlook.of(model);
    }
}
