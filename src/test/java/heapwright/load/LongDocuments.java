package heapwright.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The longest documents that the reader takes; all invented. As a program it writes them into a folder, to be tried with
 * the packed program.
 */
public final class LongDocuments {

    private static final int RECIPE = 500;
    private static final int ENTRIES = 5000;
    private static final int ADDED = 100;
    private static final int DAYS = 20;
    private static final String HEAD =
            "{\"heapwright\":\"pile/1\",\"name\":\"Heap\",\"built\":\"2026-10-31\",\"asOf\":\"2026-11-21\",\"recipe\":[";
    private static final String LEAVES = "{\"material\":\"leaves-mixed\",\"amount\":200,\"unit\":\"g\"}";
    private static final String SCRAPS =
            "{\"material\":\"kitchen-scraps\",\"amount\":20,\"unit\":\"g\",\"piece\":{\"value\":%d,\"unit\":\"mm\"}}";

    private LongDocuments() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        for (Map.Entry<String, String> each : all().entrySet()) {
            Files.writeString(folder.resolve(each.getKey() + ".json"), each.getValue());
        }
    }

    private static Map<String, String> all() {
        Map<String, String> all = new TreeMap<>();
        all.put("6500-ingredients", ingredients(60));
        all.put("11500-ingredients", ingredients(110));
        all.put("5000-readings-on-a-day", readingsOnADay(""));
        all.put("5000-readings-on-a-day-1-mb", readingsOnADay("n".repeat(130)));
        all.put("5000-readings-on-890-days", readingsOnManyDays());
        return all;
    }

    /** Five hundred things in the recipe, and a hundred more with each entry. */
    public static String ingredients(int entries) {
        String log = times(
                entries,
                entry -> String.format("{\"date\":\"2026-11-%02d\",\"added\":[", entry % DAYS + 1)
                        + times(ADDED, i -> String.format(SCRAPS, i + 1)) + "]}");
        return HEAD + times(RECIPE, i -> LEAVES) + "],\"log\":[" + log + "]}";
    }

    /** As many readings as a record may have, all on one day, each with a note. */
    public static String readingsOnADay(String note) {
        String log = times(
                ENTRIES,
                i -> "{\"date\":\"2026-11-21\",\"measured\":{\"core\":{\"value\":" + (8 + i % 30)
                        + ",\"unit\":\"C\"}},\"note\":\"" + note + "\"}");
        return HEAD + LEAVES + "," + LEAVES + "],\"log\":[" + log + "]}";
    }

    private static String readingsOnManyDays() {
        LocalDate built = LocalDate.parse("2024-06-10");
        String log = times(
                ENTRIES,
                i -> "{\"date\":\"" + built.plusDays(i % 890) + "\",\"measured\":{\"core\":{\"value\":" + (8 + i % 30)
                        + ",\"unit\":\"C\"}}}");
        return HEAD.replace("2026-10-31", built.toString()) + LEAVES + "," + LEAVES + "],\"log\":[" + log + "]}";
    }

    private static String times(int count, IntFunction<String> item) {
        return IntStream.range(0, count).mapToObj(item).collect(Collectors.joining(","));
    }
}
