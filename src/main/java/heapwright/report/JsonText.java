package heapwright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.engine.RuleInfo;
import heapwright.process.mixture.Band;
import java.io.UncheckedIOException;

/** Writes JSON for people and programs: pretty, in a stable order, line feeds only. */
public final class JsonText {

    private static final String SCHEMA = "1.0";

    private static final double GRAIN = 1000;

    private JsonText() {}

    /** The root of an answer of a kind, with the version of its shape. */
    public static ObjectNode object(String kind) {
        return JsonNodeFactory.instance.objectNode().put("heapwright", kind).put("schemaVersion", SCHEMA);
    }

    /** The text of a document. */
    public static String write(JsonNode root) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
        try {
            return new JsonMapper().writer(printer).writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a rule says of itself. */
    public static void rule(ObjectNode row, RuleInfo rule) {
        row.put("id", rule.id());
        row.put("name", rule.name());
        row.put("pass", rule.pass().id());
        row.put("strength", rule.strength().id());
        row.put("evidence", rule.evidence().id());
        row.put("source", rule.source());
        row.put("rationale", rule.rationale());
    }

    /** A figure to three decimals: finer would show the noise of floating point, not knowledge. */
    public static double fine(double value) {
        return Math.abs(value) < Long.MAX_VALUE / GRAIN ? Math.round(value * GRAIN) / GRAIN : value;
    }

    /** A quantity as low, likely and high. */
    public static void band(ObjectNode node, String field, Band band) {
        node.putObject(field)
                .put("low", fine(band.low()))
                .put("likely", fine(band.likely()))
                .put("high", fine(band.high()));
    }
}
