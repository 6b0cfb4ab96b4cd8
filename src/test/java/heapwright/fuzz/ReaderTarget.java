package heapwright.fuzz;

import heapwright.advice.TestPile;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;

/** Raw bytes to the reader: it answers with a pile or with problems, and throws nothing. */
public final class ReaderTarget {

    private static final PileReader READER = new PileReader(TestPile.KNOWLEDGE.vocabulary());

    private ReaderTarget() {}

    /** What the fuzzer calls, by its convention. */
    public static void fuzzerTestOneInput(byte[] document) {
        ReadResult answer = READER.read("fuzz", document);
        if (answer.pile().isEmpty() == answer.problems().isEmpty()) {
            throw new AssertionError("neither a pile nor a problem: " + answer);
        }
        answer.problems().forEach(problem -> {
            if (problem.toString().isBlank()) {
                throw new AssertionError("a problem without words");
            }
        });
    }
}
