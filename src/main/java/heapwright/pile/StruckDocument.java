package heapwright.pile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/**
 * A document with an entry taken back or put back, and all else as it was typed.
 *
 * @param bytes the document
 */
public record StruckDocument(byte[] bytes) {

    private static final String LOG = "log";
    private static final String STRUCK = "struck";

    /**
     * With an entry taken back: it counts no longer, and is kept.
     *
     * @param day its day
     * @param number which of that day, from 0 on
     * @param asOf the day of advice afterwards, where the document names one
     * @throws IOException when the document is not JSON
     */
    public byte[] without(LocalDate day, int number, LocalDate asOf) throws IOException {
        return moved(LOG, STRUCK, day, number, asOf);
    }

    /**
     * With an entry put back that was taken back; as {@link #without}.
     *
     * @throws IOException when the document is not JSON
     */
    public byte[] with(LocalDate day, int number, LocalDate asOf) throws IOException {
        return moved(STRUCK, LOG, day, number, asOf);
    }

    private byte[] moved(String from, String to, LocalDate day, int number, LocalDate asOf) throws IOException {
        ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(bytes);
        ArrayNode source = tree.withArray(from);
        int place = place(source, day, number);
        JsonNode entry = source.remove(place);
        ArrayNode target = tree.withArray(to);
        int at = 0;
        while (at < target.size() && target.get(at).path("date").asText().compareTo(day.toString()) <= 0) {
            at++;
        }
        target.insert(at, entry);
        if (source.isEmpty()) {
            tree.remove(from);
        }
        if (tree.has("asOf")) {
            tree.put("asOf", asOf.toString());
        }
        return (Pretty.print(tree) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static int place(ArrayNode entries, LocalDate day, int number) {
        int seen = 0;
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).path("date").asText().equals(day.toString()) && seen++ == number) {
                return i;
            }
        }
        throw new IllegalArgumentException("no entry " + number + " of " + day);
    }
}
