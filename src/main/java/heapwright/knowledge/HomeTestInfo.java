package heapwright.knowledge;

import heapwright.pile.HomeTest;
import heapwright.pile.Tested;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A home test: what it needs, how it goes, how it is read.
 *
 * @param id the test
 * @param name what it is called
 * @param tells what it tells
 * @param needs what it needs
 * @param how how it goes
 * @param fromDays days until it can be read
 * @param toDays days until it is read at the latest
 * @param againDays days to wait after it came out badly
 * @param readings how it is read, the best first
 * @param signIfPoor the sign that a poor result is to the rules, where there is one; a good one denies it
 * @param forStuff traits of what went in that call for it; none where it is for any compost
 * @param limits the figures in its readings
 * @param sources keys of sources
 * @param known how its figures are known
 */
public record HomeTestInfo(
        HomeTest id,
        String name,
        String tells,
        String needs,
        String how,
        int fromDays,
        int toDays,
        int againDays,
        List<Outcome> readings,
        Optional<Sign> signIfPoor,
        List<Trait> forStuff,
        List<Edge> limits,
        List<String> sources,
        Known known) {
    public HomeTestInfo {
        readings = List.copyOf(readings);
        forStuff = List.copyOf(forStuff);
        limits = List.copyOf(limits);
        sources = List.copyOf(sources);
    }

    /** One way to read it, and what the compost may be used for at most then. */
    public record Outcome(Tested.Result result, String reads, Ripeness allows) {}

    /** A figure in its readings. */
    public record Edge(String name, double value, String unit) {}

    /** What a result allows at most; one that says nothing allows everything. */
    public Ripeness allows(Tested.Result result) {
        return readings.stream()
                .filter(r -> r.result() == result)
                .map(Outcome::allows)
                .findFirst()
                .orElse(Ripeness.POTS);
    }

    HomeTestInfo reworded(UnaryOperator<String> wording) {
        return new HomeTestInfo(
                id,
                name,
                wording.apply(tells),
                wording.apply(needs),
                wording.apply(how),
                fromDays,
                toDays,
                againDays,
                readings.stream()
                        .map(r -> new Outcome(r.result(), wording.apply(r.reads()), r.allows()))
                        .toList(),
                signIfPoor,
                forStuff,
                limits,
                sources,
                known);
    }
}
