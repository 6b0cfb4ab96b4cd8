package heapwright.load;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Many people at once, each asking the next thing a pause after the answer to the last. */
final class Crowd {

    private static final long SEED = 7;

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final ScheduledExecutorService clock = Executors.newScheduledThreadPool(2);
    private final Map<String, ConcurrentLinkedQueue<Long>> times = new ConcurrentHashMap<>();
    private final Map<String, Integer> faults = new ConcurrentHashMap<>();
    private final Visitor visitor;
    private final long pauseMs;

    Crowd(Visitor visitor, long pauseMs) {
        this.visitor = visitor;
        this.pauseMs = pauseMs;
    }

    /** Runs and prints the figures, all together and by kind of request. */
    void run(int clients, int seconds) throws IOException, InterruptedException {
        Visitor.Person warm = new Visitor.Person(SEED);
        for (int i = 0; i < visitor.warmUp(); i++) {
            HttpResponse<String> answer = client.send(visitor.next(warm), BodyHandlers.ofString());
            warm.saw(answer.body());
        }
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        CountDownLatch done = new CountDownLatch(clients);
        for (int i = 0; i < clients; i++) {
            Visitor.Person person = new Visitor.Person(SEED + 1 + i);
            // One after another within the first pause: drawn by lot from neighbouring seeds, they would come at once.
            clock.schedule(() -> next(person, end, done), pauseMs * i / clients, TimeUnit.MILLISECONDS);
        }
        done.await();
        clock.shutdown();
        System.out.printf(Locale.ROOT, "%d clients, %d s, pause %d ms%n", clients, seconds, pauseMs);
        print("all", times.values().stream().flatMap(q -> q.stream()).mapToLong(t -> t), seconds);
        times.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> print(e.getKey(), e.getValue().stream().mapToLong(t -> t), seconds));
        faults.forEach((fault, count) -> System.out.println(count + " × " + fault));
    }

    private static void print(String what, java.util.stream.LongStream nanos, int seconds) {
        long[] sorted = nanos.sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%-14s %6d (%5.1f/s) ms p50 %.1f p95 %.1f p99 %.1f max %.1f%n",
                what,
                sorted.length,
                (double) sorted.length / seconds,
                at(sorted, 0.50),
                at(sorted, 0.95),
                at(sorted, 0.99),
                at(sorted, 1));
    }

    private static double at(long[] sorted, double share) {
        return sorted.length == 0
                ? Double.NaN
                : sorted[(int) Math.min(sorted.length - 1L, Math.round(share * sorted.length))] / 1e6;
    }

    private void next(Visitor.Person person, long end, CountDownLatch done) {
        if (System.nanoTime() > end) {
            done.countDown();
            return;
        }
        HttpRequest request = visitor.next(person);
        long start = System.nanoTime();
        client.sendAsync(request, BodyHandlers.ofString()).whenComplete((answer, fault) -> {
            String kind = request.method() + " " + kind(request.uri().getPath());
            times.computeIfAbsent(kind, k -> new ConcurrentLinkedQueue<>()).add(System.nanoTime() - start);
            if (fault != null) {
                faults.merge(kind + ": " + fault, 1, Integer::sum);
            } else {
                person.saw(answer.body());
                visitor.fault(person, answer).ifPresent(told -> faults.merge(kind + ": " + told, 1, Integer::sum));
            }
            clock.schedule(() -> next(person, end, done), pauseMs, TimeUnit.MILLISECONDS);
        });
    }

    /** The address without the name of the pile. */
    private static String kind(String path) {
        return path.replaceFirst("^/piles/[^/]+", "/piles/…");
    }
}
