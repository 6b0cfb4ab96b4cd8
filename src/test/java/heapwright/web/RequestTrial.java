package heapwright.web;

import heapwright.knowledge.Sign;
import heapwright.web.FaultHarness.Outcome;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** A long day: pages, checkups, notes and rubbish, by eight at once. */
final class RequestTrial {

    private static final int PEOPLE = 8;
    private static final List<String> PAGES = List.of(
            "/",
            "/settings",
            "/piles",
            "/checkup",
            "/build",
            "/knowledge",
            "/why",
            "/api/piles",
            "/api/signs",
            "/nowhere");

    private final Path starter;
    private final Path scratch;
    private final long seed;
    private final Map<String, Integer> answers = new ConcurrentSkipListMap<>();
    private final Set<String> acknowledged = new ConcurrentSkipListSet<>();
    private final AtomicInteger bad = new AtomicInteger();

    RequestTrial(Path starter, Path scratch, long seed) {
        this.starter = starter;
        this.scratch = scratch;
        this.seed = seed;
    }

    Outcome run(int requests) throws Exception {
        try (ServerProcess server =
                ServerProcess.start(starter, scratch.resolve("requests"), scratch.resolve("requests.err"))) {
            Writers person = new Writers(server.address());
            person.open(server.address());
            for (int i = 0; i < PEOPLE; i++) {
                person.client().send(person.pile("Heap " + i));
            }
            several(person, server, requests / 20);
            String before = server.weight();
            several(person, server, requests);
            Map<String, Integer> notes = person.notes();
            boolean kept = notes.keySet().equals(acknowledged)
                    && notes.values().stream().allMatch(times -> times == 1);
            return new Outcome(
                    "requests",
                    kept && bad.get() == 0 && server.alive(),
                    requests + " after a warm-up, answered " + answers + "; " + acknowledged.size() + " notes "
                            + (kept ? "all there once" : "NOT all there once: " + notes.size()) + "; before " + before
                            + "; after " + server.weight());
        }
    }

    private void several(Writers person, ServerProcess server, int requests) throws InterruptedException {
        answers.clear();
        ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
        for (int i = 0; i < PEOPLE; i++) {
            int number = i;
            people.submit(() -> {
                Random random = new Random(seed + number);
                for (int asked = 0; asked < requests / PEOPLE; asked++) {
                    count(one(person, server, number, requests + " " + asked, random));
                }
            });
        }
        people.shutdown();
        people.awaitTermination(1, TimeUnit.HOURS);
    }

    private void count(String status) {
        answers.merge(status, 1, Integer::sum);
        if (status.equals("500") || !status.matches("[0-9]{3}")) {
            bad.incrementAndGet();
        }
    }

    private String one(Writers person, ServerProcess server, int number, String words, Random random) {
        try {
            int kind = random.nextInt(20);
            if (kind < 10) {
                return status(person.client().get(PAGES.get(random.nextInt(PAGES.size()))));
            }
            if (kind < 12) {
                String yes = Sign.values()[random.nextInt(Sign.values().length)].id();
                return status(person.client().get("/result?y=" + yes));
            }
            if (kind == 12) {
                String note = number + " " + words;
                HttpResponse<String> answer = person.client().send(person.note("heap-" + number, note));
                if (answer.statusCode() == 303) {
                    acknowledged.add(note);
                }
                return status(answer);
            }
            List<RubbishIT.Sent> rubbish = RubbishIT.rubbish();
            return raw(
                    server.port(), rubbish.get(random.nextInt(rubbish.size())).request());
        } catch (IOException e) {
            return e.toString();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "interrupted";
        }
    }

    private static String status(HttpResponse<String> answer) {
        return String.valueOf(answer.statusCode());
    }

    private static String raw(int port, String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(60_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            InputStream in = socket.getInputStream();
            String answer = new String(in.readNBytes(12), StandardCharsets.ISO_8859_1);
            return answer.startsWith("HTTP/1.1 ") ? answer.substring(9) : "no answer";
        }
    }
}
