package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;

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
     * With the outcome told of the open steps of a day.
     *
     * @param date the day of the advice
     * @param which the ids of steps that are meant
     * @param outcome what came of them
     * @throws IOException when the document is not JSON
     */
    public AdvisedDocument telling(LocalDate date, Predicate<String> which, Advised.Outcome outcome)
            throws IOException {
        ObjectNode tree = tree();
        for (JsonNode one : tree.withArray("advised")) {
            if (open(one)
                    && one.get("date").asText().equals(date.toString())
                    && which.test(one.get("step").asText())) {
                ((ObjectNode) one).put("outcome", outcome.token());
            }
        }
        return written(tree);
    }

    private ObjectNode tree() throws IOException {
        return (ObjectNode) new ObjectMapper().readTree(bytes);
    }

    private static AdvisedDocument written(ObjectNode tree) {
        return new AdvisedDocument((Pretty.print(tree) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private static boolean open(JsonNode one) {
        return !one.has("outcome") || one.get("outcome").asText().equals(Advised.Outcome.OPEN.token());
    }

    private static boolean is(JsonNode one, LocalDate date, String step) {
        return one.get("date").asText().equals(date.toString())
                && one.get("step").asText().equals(step);
    }
}
