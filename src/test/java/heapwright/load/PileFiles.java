package heapwright.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.web.WebServer;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Random;

/** Pile documents of any length: the example that the page shows, with an invented record of readings. */
public final class PileFiles {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final LocalDate LAST = LocalDate.of(2026, 11, 21);
    private static final int LONGEST_LOG = 5_000;
    private static final int DAYS = 300;
    private static final int NOTE = 1_000;

    private PileFiles() {}

    /** Writes piles "Heap 1", "Heap 2" … into a folder. */
    public static void plant(Path folder, int count, int readings) throws IOException {
        Files.createDirectories(folder);
        for (int i = 1; i <= count; i++) {
            byte[] bytes = MAPPER.writeValueAsBytes(document("Heap " + i, readings, i));
            Files.write(folder.resolve("heap-" + i + ".json"), bytes);
        }
    }

    /** A document with as many readings, at most 5000: one a day, or more where the days are not enough. */
    public static ObjectNode document(String name, int readings, long seed) throws IOException {
        ObjectNode document = example();
        Random random = new Random(seed);
        LocalDate built = LAST.minusDays(Math.min(DAYS, readings) + 1L);
        document.put("name", name);
        document.put("built", built.toString());
        document.put("asOf", LAST.toString());
        ArrayNode log = document.putArray("log");
        for (int i = 0; i < readings; i++) {
            long day = 1 + (long) i * Math.min(DAYS, readings) / readings;
            ObjectNode entry = log.addObject();
            entry.put("date", built.plusDays(day).toString());
            ObjectNode measured = entry.putObject("measured");
            double core = 12 + 45 * Math.exp(-day / 25.0) + 3 * random.nextGaussian();
            temperature(measured.putObject("core"), core);
            temperature(measured.putObject("outdoor"), 10 - day / 20.0 + 3 * random.nextGaussian());
        }
        return document;
    }

    /** A document that the reader takes, of at least as many bytes and hardly more: as many readings as fit, then notes. */
    public static byte[] ofBytes(int bytes, long seed) throws IOException {
        ObjectNode document = document("Heap " + seed, LONGEST_LOG, seed);
        int entry = MAPPER.writeValueAsBytes(document).length / LONGEST_LOG;
        if (bytes < entry * LONGEST_LOG) {
            document = document("Heap " + seed, Math.max(1, bytes / entry), seed);
        }
        int missing = bytes - MAPPER.writeValueAsBytes(document).length;
        for (JsonNode one : document.withArray("log")) {
            if (missing <= 0) {
                break;
            }
            int length = Math.min(NOTE, missing);
            ((ObjectNode) one).put("note", "n".repeat(length));
            missing -= length + ",\"note\":\"\"".length();
        }
        return MAPPER.writeValueAsBytes(document);
    }

    private static void temperature(ObjectNode node, double celsius) {
        node.put("value", Math.round(celsius * 10) / 10.0).put("unit", "C");
    }

    private static ObjectNode example() throws IOException {
        try (InputStream in = WebServer.class.getResourceAsStream("example.json")) {
            return (ObjectNode) MAPPER.readTree(in);
        }
    }
}
