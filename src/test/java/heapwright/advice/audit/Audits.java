package heapwright.advice.audit;

import heapwright.advice.Advisor;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;
import heapwright.report.Catalogue;
import heapwright.report.Units;
import heapwright.report.Words;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;

/** Audits of recipes written down in a line, for tests. */
public final class Audits {

    private Audits() {}

    /** The advisor with the shipped tables and rules. */
    public static Advisor advisor() {
        return Once.ADVISOR;
    }

    /** Words in metric or US units. */
    public static Words words(Units units) {
        return new Words(advisor().knowledge(), Catalogue.english(), units);
    }

    /** The audit of a recipe: a JSON list of ingredients, and more fields of a pile document, each with a comma before it. */
    public static Audit of(String recipe, String more) {
        return of(pile(recipe, more));
    }

    /** The audit of a pile that has a recipe. */
    public static Audit of(Pile pile) {
        return advisor().audit(pile, OptionalDouble.empty()).orElseThrow();
    }

    /** A pile document with a recipe, built and asked about on the same day in autumn. */
    public static Pile pile(String recipe, String more) {
        String text =
                "{\"heapwright\":\"pile/1\",\"name\":\"Test\",\"asOf\":\"2026-10-18\",\"built\":\"2026-10-18\",\"recipe\":["
                        + recipe + "]" + more + "}";
        Knowledge knowledge = advisor().knowledge();
        ReadResult result = new PileReader(knowledge.vocabulary()).read("test", text.getBytes(StandardCharsets.UTF_8));
        if (result instanceof ReadResult.Accepted accepted) {
            return accepted.value();
        }
        throw new AssertionError(result.problems().toString());
    }

    /** One ingredient, or one thing at hand. */
    public static String some(String material, double amount, String unit) {
        return "{\"material\":\"" + material + "\",\"amount\":" + amount + ",\"unit\":\"" + unit + "\"}";
    }

    /** Holds the rules until a test asks for them. */
    private static final class Once {
        static final Advisor ADVISOR = Advisor.packed(KnowledgeReader.packed());
    }
}
