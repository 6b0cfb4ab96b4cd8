package heapwright.web;

import heapwright.web.FaultHarness.Outcome;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The server is killed while four people write, started again, and what got no answer is sent again. What was
 * acknowledged must be there, and everything once.
 */
final class KillTrial {

    private static final int PEOPLE = 4;

    /** Kills until the piles are laid aside for new ones, so that the files stay as long as those of a winter. */
    private static final int KILLS_PER_PILE = 25;

    private static final int BUSY = 503;

    private static final int LONGEST_WAIT_MS = 120;

    private static final int PAUSE_MS = 200;

    private final Path starter;
    private final Path scratch;
    private final Random random;
    private final Set<String> acknowledged = new ConcurrentSkipListSet<>();
    private final Queue<String> faults = new ConcurrentLinkedQueue<>();
    private final AtomicInteger busy = new AtomicInteger();
    private int unanswered;
    private int done;

    KillTrial(Path starter, Path scratch, long seed) {
        this.starter = starter;
        this.scratch = scratch;
        this.random = new Random(seed);
    }

    /** A note on its way. */
    private record Sent(String words, FormClient.Form form) {}

    Outcome run(int kills) throws Exception {
        int saves = 0;
        Path folder = scratch.resolve("killed");
        List<Sent> open = List.of();
        for (int kill = 0; kill < kills; kill++) {
            if (kill > 0 && kill % KILLS_PER_PILE == 0) {
                System.err.println("so far, " + outcome(kill, saves + acknowledged.size()));
            }
            if (kill % KILLS_PER_PILE == 0) {
                saves += acknowledged.size();
                acknowledged.clear();
                folder = scratch.resolve("killed-" + kill);
            }
            try (ServerProcess server = ServerProcess.start(starter, folder, scratch.resolve("killed.err"))) {
                open = round(server, kill, open);
            }
            if ((kill + 1) % KILLS_PER_PILE == 0 || kill + 1 == kills) {
                try (ServerProcess server = ServerProcess.start(starter, folder, scratch.resolve("killed.err"))) {
                    Writers person = new Writers(server.address());
                    settle(person, server, open);
                    open = List.of();
                }
            }
        }
        saves += acknowledged.size();
        return outcome(kills, saves);
    }

    private Outcome outcome(int kills, int saves) {
        faults.stream().limit(5).forEach(System.err::println);
        return new Outcome(
                "killed while saving",
                faults.isEmpty(),
                kills + " kills, " + saves + " notes acknowledged or sent again; " + unanswered
                        + " were on their way when it was killed, of which " + done + " had been kept; " + busy
                        + " answers of 503; "
                        + (faults.isEmpty()
                                ? "none lost, none doubled, no file broken, and each was there once in the end"
                                : faults.size() + " FAULTS"));
    }

    private List<Sent> round(ServerProcess server, int kill, List<Sent> open) throws Exception {
        Writers person = new Writers(server.address());
        settle(person, server, open);
        for (int i = 0; kill % KILLS_PER_PILE == 0 && i < PEOPLE; i++) {
            person.client().send(person.pile("Heap " + i));
        }
        ConcurrentLinkedQueue<Sent> unsure = new ConcurrentLinkedQueue<>();
        CountDownLatch writing = new CountDownLatch(PEOPLE);
        List<Thread> people = new ArrayList<>();
        for (int i = 0; i < PEOPLE; i++) {
            String pile = "heap-" + i;
            String name = kill + " " + i;
            Thread thread = new Thread(() -> write(person, pile, name, unsure, writing));
            thread.start();
            people.add(thread);
        }
        writing.await();
        Thread.sleep(random.nextInt(LONGEST_WAIT_MS));
        server.kill();
        for (Thread thread : people) {
            thread.join();
        }
        return List.copyOf(unsure);
    }

    /** Writes note after note until the server is gone. */
    private void write(Writers person, String pile, String name, Queue<Sent> unsure, CountDownLatch writing) {
        for (int i = 0; ; i++) {
            Sent sent = null;
            try {
                String words = "note " + name + " " + i;
                FormClient.Form form = person.note(pile, words);
                sent = new Sent(words, form);
                HttpResponse<String> answer = person.client().send(form);
                while (answer.statusCode() == BUSY) {
                    // On a busy machine a save may wait too long for its turn. A person sends it again before writing
                    // on: later it would meet a pile that has changed, and be kept beside it.
                    busy.incrementAndGet();
                    Thread.sleep(PAUSE_MS);
                    answer = person.client().send(form);
                }
                if (answer.statusCode() == 303) {
                    acknowledged.add(words);
                } else {
                    faults.add(words + " was answered with " + answer.statusCode());
                }
            } catch (IOException gone) {
                if (sent != null) {
                    unsure.add(sent);
                }
                writing.countDown();
                return;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            } finally {
                if (i >= 1) {
                    writing.countDown();
                }
            }
        }
    }

    /** After a start: what is there, then what got no answer once more, then what is there again. */
    private void settle(Writers person, ServerProcess server, List<Sent> open) throws Exception {
        person.open(server.address());
        Map<String, Integer> before = person.notes();
        unanswered += open.size();
        for (Sent sent : open) {
            done += before.containsKey(sent.words()) ? 1 : 0;
            HttpResponse<String> answer = person.again(sent.form());
            if (answer.statusCode() != 303) {
                faults.add(sent.words() + " sent again was answered with " + answer.statusCode());
            }
            acknowledged.add(sent.words());
        }
        Map<String, Integer> after = person.notes();
        after.forEach((words, times) -> {
            if (times != 1) {
                faults.add(words + " is there " + times + " times");
            }
        });
        Set<String> lost = new TreeSet<>(acknowledged);
        lost.removeAll(after.keySet());
        lost.forEach(words -> faults.add(words + " is lost"));
    }
}
