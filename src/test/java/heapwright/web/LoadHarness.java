package heapwright.web;

import heapwright.knowledge.Sign;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;

/**
 * Many people at once doing checkups on a server that runs elsewhere on this machine. Every person answers questions of
 * their own, one after another, with a pause to look at the pile; nothing is asked twice, so nothing is answered from
 * memory. Started by hand: {@code LoadHarness ADDRESS CLIENTS SECONDS PAUSE_MS [PID]}; the process id is for its memory.
 */
public final class LoadHarness {

    private static final long SEED = 7;
    private static final int WARM_UP = 400;
    private static final int MOST_TOLD = 5;

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final ScheduledExecutorService clock = Executors.newScheduledThreadPool(1);
    private final ConcurrentLinkedQueue<Long> times = new ConcurrentLinkedQueue<>();
    private final AtomicInteger dangers = new AtomicInteger();
    private final ConcurrentLinkedQueue<String> errors = new ConcurrentLinkedQueue<>();
    private final String address;
    private final long pauseMs;

    private LoadHarness(String address, long pauseMs) {
        this.address = address;
        this.pauseMs = pauseMs;
    }

    /** Runs the load and prints the figures. */
    public static void main(String[] args) throws IOException, InterruptedException, ExecutionException {
        LoadHarness harness = new LoadHarness(args[0], Long.parseLong(args[3]));
        int clients = Integer.parseInt(args[1]);
        int seconds = Integer.parseInt(args[2]);
        Random warm = new Random(SEED);
        for (int i = 0; i < WARM_UP; i++) {
            harness.client.send(harness.checkup(warm), BodyHandlers.ofString());
        }
        String pid = args.length > 4 ? args[4] : "";
        System.out.println("memory before: " + memory(pid));
        harness.run(clients, seconds);
        System.out.println("memory after: " + memory(pid));
    }

    private void run(int clients, int seconds) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        CountDownLatch done = new CountDownLatch(clients);
        for (int i = 0; i < clients; i++) {
            Random random = new Random(SEED + 1 + i);
            clock.schedule(() -> next(random, end, done), random.nextInt((int) pauseMs + 1), TimeUnit.MILLISECONDS);
        }
        done.await();
        clock.shutdown();
        long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%d clients, %d s, pause %d ms: %d checkups (%.0f/s), %d of them with danger, %d errors, ms p50 %.1f p95 %.1f p99 %.1f max %.1f%n",
                clients,
                seconds,
                pauseMs,
                sorted.length,
                (double) sorted.length / seconds,
                dangers.get(),
                errors.size(),
                at(sorted, 0.50),
                at(sorted, 0.95),
                at(sorted, 0.99),
                at(sorted, 1));
        errors.stream().limit(MOST_TOLD).forEach(System.out::println);
    }

    private static double at(long[] sorted, double share) {
        return sorted.length == 0
                ? Double.NaN
                : sorted[(int) Math.min(sorted.length - 1L, Math.round(share * sorted.length))] / 1e6;
    }

    private void next(Random random, long end, CountDownLatch done) {
        if (System.nanoTime() > end) {
            done.countDown();
            return;
        }
        long start = System.nanoTime();
        client.sendAsync(checkup(random), BodyHandlers.ofString()).whenComplete((answer, fault) -> {
            times.add(System.nanoTime() - start);
            if (fault != null) {
                errors.add(fault.toString());
            } else {
                judge(answer);
            }
            clock.schedule(() -> next(random, end, done), pauseMs, TimeUnit.MILLISECONDS);
        });
    }

    /** A checkup asks a next question, or tells of a danger, which then stands alone. */
    private void judge(HttpResponse<String> answer) {
        boolean whole = answer.statusCode() == 200 && answer.body().contains("</html>");
        boolean danger = answer.body().contains("class=\"card sofar danger\"");
        if (whole && danger) {
            dangers.incrementAndGet();
        } else if (!whole || !answer.body().contains("id=\"next-ask\"")) {
            errors.add(answer.statusCode() + " " + answer.uri());
        }
    }

    private HttpRequest checkup(Random random) {
        String yes = some(random, 3);
        String no = some(random, 5);
        return HttpRequest.newBuilder(
                        URI.create(address + "checkup?y=" + yes + "&n=" + no + "&out=" + (random.nextInt(20) - 10)))
                .build();
    }

    private static String some(Random random, int count) {
        Sign[] all = Sign.values();
        return Arrays.stream(random.ints(count, 0, all.length).toArray())
                .mapToObj(i -> all[i].id())
                .distinct()
                .collect(Collectors.joining("."));
    }

    private static String memory(String pid) throws IOException {
        if (pid.isEmpty()) {
            return "not asked";
        }
        return Files.readAllLines(Path.of("/proc", pid, "status")).stream()
                .filter(line -> line.startsWith("VmRSS"))
                .findFirst()
                .orElse("not known");
    }
}
