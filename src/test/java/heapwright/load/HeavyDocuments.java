package heapwright.load;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;

/** Large documents, all legal, to the interface for programs at the same moment; then whether the server still answers. */
final class HeavyDocuments {

    private static final Duration LONGEST = Duration.ofMinutes(3);
    private static final Duration ALIVE = Duration.ofSeconds(10);

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final String address;

    HeavyDocuments(String address) {
        this.address = address;
    }

    void send(int atOnce, int bytes, int rounds) throws IOException, InterruptedException {
        for (int round = 0; round < rounds; round++) {
            long start = System.nanoTime();
            List<CompletableFuture<String>> answers = new ArrayList<>();
            for (int i = 0; i < atOnce; i++) {
                byte[] document = PileFiles.ofBytes(bytes, (long) round * atOnce + i);
                HttpRequest request = HttpRequest.newBuilder(URI.create(address + "api/checkup"))
                        .timeout(LONGEST)
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofByteArray(document))
                        .build();
                answers.add(client.sendAsync(request, BodyHandlers.ofString())
                        .handle((answer, fault) -> fault == null ? told(answer) : fault.toString()));
            }
            List<Double> light = light();
            Map<String, Integer> counts = new TreeMap<>();
            answers.forEach(a -> counts.merge(a.join(), 1, Integer::sum));
            System.out.printf(
                    "round %d: %d documents of %d bytes: %s in %.1f s; start page meanwhile, s: %s; afterwards: %s%n",
                    round + 1, atOnce, bytes, counts, (System.nanoTime() - start) / 1e9, light, alive());
        }
    }

    private static String told(HttpResponse<String> answer) {
        return "status " + answer.statusCode()
                + answer.headers()
                        .firstValue("Retry-After")
                        .map(s -> " (Retry-After " + s + ")")
                        .orElse("");
    }

    /** How long the page that needs no work takes while the documents are being worked on. */
    private List<Double> light() throws InterruptedException {
        List<Double> seconds = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            long start = System.nanoTime();
            String told = alive();
            seconds.add(told.equals("200") ? Math.round((System.nanoTime() - start) / 1e6) / 1e3 : Double.NaN);
            Thread.sleep(200);
        }
        return seconds;
    }

    private String alive() throws InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(address)).timeout(ALIVE).build();
        try {
            return Integer.toString(
                    client.send(request, BodyHandlers.discarding()).statusCode());
        } catch (IOException e) {
            return e.toString();
        }
    }
}
