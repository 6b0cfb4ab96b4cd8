package heapwright.advice;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;
import java.nio.charset.StandardCharsets;

/** Piles for tests, written as a person would, and the advisor that all tests share: making one takes a second. */
public final class TestPile {

    public static final Knowledge KNOWLEDGE = KnowledgeReader.packed();

    public static final Advisor ADVISOR = Advisor.packed(KNOWLEDGE);

    private TestPile() {}

    /** A pile from a document without its version and with single quotes for double ones. */
    public static Pile of(String fields) {
        return read(("{'heapwright': 'pile/1', " + fields + "}").replace('\'', '"'));
    }

    /** A pile from a document. */
    public static Pile read(String document) {
        ReadResult result =
                new PileReader(KNOWLEDGE.vocabulary()).read("test", document.getBytes(StandardCharsets.UTF_8));
        return result.pile()
                .orElseThrow(() -> new AssertionError(result.problems().toString()));
    }

    /** Advice on such a pile. */
    public static Advice advice(String fields) {
        return ADVISOR.advise(of(fields));
    }

    /** A pile without a recipe on which signs were seen and not seen on the day of advice. */
    public static Pile seen(String seen, String notSeen) {
        return of("'built': '2026-10-31', 'log': [{'date': '2026-11-21', 'seen': " + list(seen) + ", 'notSeen': "
                + list(notSeen) + "}]");
    }

    private static String list(String ids) {
        return ids.isBlank() ? "[]" : "['" + String.join("','", ids.strip().split("\\s+")) + "']";
    }
}
