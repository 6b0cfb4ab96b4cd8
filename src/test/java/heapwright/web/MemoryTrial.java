package heapwright.web;

import heapwright.web.FaultHarness.Outcome;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;

/** Twenty large, legal documents at once: the server may turn some away, but must not live on deaf. */
final class MemoryTrial {

    private static final int AT_ONCE = 20;
    private static final int BYTES = 560_000;

    private static final LocalDate BUILT = LocalDate.of(2026, 1, 5);

    private final Path starter;
    private final Path scratch;

    MemoryTrial(Path starter, Path scratch) {
        this.starter = starter;
        this.scratch = scratch;
    }

    Outcome run(int rounds) throws Exception {
        Path said = scratch.resolve("memory.err");
        try (ServerProcess server = ServerProcess.start(starter, scratch.resolve("memory"), said)) {
            HttpClient client =
                    HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
            Map<String, Integer> answers = new TreeMap<>();
            for (int round = 0; round < rounds && server.alive(); round++) {
                List<CompletableFuture<String>> sent = new ArrayList<>();
                for (int i = 0; i < AT_ONCE; i++) {
                    HttpRequest request = HttpRequest.newBuilder(URI.create(server.address() + "/api/checkup"))
                            .header("Content-Type", "application/json")
                            .timeout(Duration.ofMinutes(3))
                            .POST(BodyPublishers.ofString(document(round * AT_ONCE + i)))
                            .build();
                    sent.add(client.sendAsync(request, BodyHandlers.ofString())
                            .handle((answer, fault) -> fault == null ? "" + answer.statusCode() : "no answer"));
                }
                sent.forEach(each -> answers.merge(each.join(), 1, Integer::sum));
            }
            if (!server.alive() || server.endsWithin(1)) {
                boolean told = server.said().toLowerCase(Locale.ROOT).contains("memory");
                return new Outcome(
                        "memory",
                        told && server.exitCode() != 0,
                        answers + ", then it ended with " + server.exitCode()
                                + (told ? " and a message" : " and without a word of memory"));
            }
            String after = after(client, server);
            return new Outcome(
                    "memory",
                    after.equals("200") && !answers.containsKey("500") && !answers.containsKey("422"),
                    rounds + " times " + AT_ONCE + " documents of " + BYTES / 1_000 + " kB at once: " + answers
                            + ", then a page " + after + "; " + server.weight());
        }
    }

    private static String after(HttpClient client, ServerProcess server) throws InterruptedException {
        HttpRequest page = HttpRequest.newBuilder(URI.create(server.address() + "/settings"))
                .timeout(Duration.ofSeconds(60))
                .build();
        try {
            HttpResponse<String> answer = client.send(page, BodyHandlers.ofString());
            return String.valueOf(answer.statusCode());
        } catch (IOException deaf) {
            return "without an answer: it lives on deaf";
        }
    }

    /** A legal document; each is another, so that none is answered from memory. */
    private static String document(int number) {
        StringBuilder log = new StringBuilder();
        for (int day = 0; log.length() < BYTES; day++) {
            LocalDate date = BUILT.plusDays(day / 20);
            log.append(log.isEmpty() ? "" : ",")
                    .append("{\"date\":\"")
                    .append(date)
                    .append("\",\"measured\":{\"core\":{\"value\":")
                    .append(20 + day % 30 + number / 100.0)
                    .append(
                            ",\"unit\":\"C\"}},\"added\":[{\"material\":\"leaves-mixed\",\"amount\":0.1,\"unit\":\"kg\"}]}");
        }
        return "{\"heapwright\":\"pile/1\",\"built\":\"" + BUILT + "\",\"asOf\":\"2026-11-20\",\"log\":[" + log + "]}";
    }
}
