package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/**
 * A document with what was advised and what came of it changed, and all else as it was typed.
 *
 * @param bytes the document
 */
public record AdvisedDocument(byte[] bytes) {

    /**
     * With these steps taken on. One that is open already on the same day is told anew.
     *
     * @throws IOException when the document is not JSON
     */
    public AdvisedDocument keeping(List<Advised> steps) throws IOException {
        ObjectNode tree = tree();
        ArrayNode all = tree.withArray("advised");
        for (Advised step : steps) {
            for (int i = all.size() - 1; i >= 0; i--) {
                if (open(all.get(i)) && is(all.get(i), step.date(), step.step())) {
                    all.remove(i);
                }
            }
            all.add(PileWriter.advised(step));
        }
        return written(tree);
    }

    /**
     * With what came of steps. The day of advice, where the document names one that is earlier, moves on to the day for
     * which that was told.
     *
     * @param told the steps with their outcome
     * @throws IOException when the document is not JSON
     */
    public AdvisedDocument telling(List<Advised> told) throws IOException {
        ObjectNode tree = tree();
        for (JsonNode one : tree.withArray("advised")) {
            for (Advised step : told) {
                if (open(one) && is(one, step.date(), step.step())) {
                    ((ObjectNode) one).put("outcome", step.outcome().token());
                    ((ObjectNode) one).put("told", step.since().toString());
                    advance(tree, step.since());
                }
            }
        }
        return written(tree);
    }

    private static void advance(ObjectNode tree, LocalDate day) {
        if (tree.has("asOf") && LocalDate.parse(tree.get("asOf").asText()).isBefore(day)) {
            tree.put("asOf", day.toString());
        }
    }

    private ObjectNode tree() throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(bytes);
    }

    private static AdvisedDocument written(ObjectNode tree) {
        return new AdvisedDocument((Pretty.print(tree) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static boolean open(JsonNode one) {
        return !one.has("outcome")
                || Arrays.stream(Advised.Outcome.values())
                        .anyMatch(o ->
                                o.open() && o.token().equals(one.get("outcome").asText()));
    }

    private static boolean is(JsonNode one, LocalDate date, String step) {
        return one.get("date").asText().equals(date.toString())
                && one.get("step").asText().equals(step);
    }
}
