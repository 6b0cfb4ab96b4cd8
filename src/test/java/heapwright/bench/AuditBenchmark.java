package heapwright.bench;

import heapwright.advice.Advisor;
import heapwright.advice.audit.Audit;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of one audit with bands, mend and plan: of twelve materials, and of a recipe that the mend cannot reach, which
 * costs most because every common material is tried. Goal: 20 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class AuditBenchmark {

    /** Which recipe of the demo. */
    @Param({"recipe-of-everything-in-the-yard", "recipe-of-leaves-with-a-bag-of-urea"})
    public String recipe;

    private Advisor advisor;
    private Pile pile;

    /** Loads rules, tables and recipe. */
    @Setup
    public void load() throws IOException {
        Knowledge knowledge = KnowledgeReader.packed();
        advisor = Advisor.packed(knowledge);
        Path file = Path.of("cases", "demo", recipe + ".json");
        ReadResult read = new PileReader(knowledge.vocabulary()).read(recipe, Files.readAllBytes(file));
        if (!(read instanceof ReadResult.Accepted accepted)) {
            throw new IllegalStateException(read.problems().toString());
        }
        pile = accepted.value();
    }

    /** One audit. */
    @Benchmark
    public Optional<Audit> audit() {
        return advisor.audit(pile, OptionalDouble.empty());
    }
}
