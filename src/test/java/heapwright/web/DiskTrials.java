package heapwright.web;

import heapwright.web.FaultHarness.Outcome;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A disk without room, with a little room, and one that turns read-only under the running server. */
final class DiskTrials {

    private static final int MOST_BLOCKS = 24;

    /** So many that a save takes several blocks. */
    private static final int NOTES = 120;

    private final Path starter;
    private final Path scratch;
    private final SmallDisk disk;

    DiskTrials(Path starter, Path scratch, SmallDisk disk) {
        this.starter = starter;
        this.scratch = scratch;
        this.disk = disk;
    }

    Outcome full() throws Exception {
        Path folder = disk.folder("full");
        try (ServerProcess server = ServerProcess.start(starter, folder, scratch.resolve("full.err"))) {
            Writers person = new Writers(server.address());
            person.open(server.address());
            expect(303, person.client().send(person.pile("Heap")));
            for (int i = 0; i < NOTES; i++) {
                expect(303, person.client().send(person.note("heap", i + " of many words".repeat(7))));
            }
            int full = 0;
            int taken = 0;
            for (int blocks = 0; blocks < MOST_BLOCKS; blocks++) {
                String words = "with " + blocks + " blocks left";
                FormClient.Form form = person.note("heap", words);
                FormClient.Form pile = person.pile("Heap " + blocks);
                disk.fill(blocks);
                HttpResponse<String> note = person.client().send(form);
                HttpResponse<String> made = person.client().send(pile);
                expect(200, person.client().get("/piles"));
                expect(200, person.client().get("/piles/heap"));
                disk.free();
                for (HttpResponse<String> answer : List.of(note, made)) {
                    if (answer.statusCode() == 507) {
                        full++;
                        hold(answer.body().contains(answer == note ? words : "Heap " + blocks), answer.body());
                        expect(
                                303,
                                person.client()
                                        .send(person.client().form(answer, answer == note ? form.action() : "/piles")));
                    } else {
                        expect(303, answer);
                        taken++;
                    }
                }
            }
            once(person, NOTES + MOST_BLOCKS);
            hold(person.piles() == MOST_BLOCKS + 1, "piles: " + person.piles());
            hold(full >= 2, "the disk was never full");
            return new Outcome(
                    "full disk",
                    true,
                    "0 to " + (MOST_BLOCKS - 1) + " blocks of 4 KiB left: " + taken + " saves taken, " + full
                            + " answered with 507 and what was typed, all there once after room was made");
        } finally {
            disk.free();
        }
    }

    Outcome readOnly() throws Exception {
        Path folder = disk.folder("read-only");
        try (ServerProcess server = ServerProcess.start(starter, folder, scratch.resolve("read-only.err"))) {
            Writers person = new Writers(server.address());
            person.open(server.address());
            expect(303, person.client().send(person.pile("Heap")));
            FormClient.Form form = person.note("heap", "on a disk for reading");
            FormClient.Form pile = person.pile("Other");
            disk.readOnly(true);
            HttpResponse<String> note;
            HttpResponse<String> made;
            try {
                note = expect(503, person.client().send(form));
                made = expect(503, person.client().send(pile));
                hold(note.body().contains("on a disk for reading"), note.body());
                hold(note.body().contains("nothing may be written"), note.body());
                expect(200, person.client().get("/piles/heap"));
                refusedAtStart(folder);
            } finally {
                disk.readOnly(false);
            }
            expect(303, person.client().send(person.client().form(note, form.action())));
            expect(303, person.client().send(person.client().form(made, "/piles")));
            once(person, 1);
            hold(person.piles() == 2, "piles: " + person.piles());
            return new Outcome(
                    "read-only disk",
                    true,
                    "2 saves answered with 503 and what was typed, both there once"
                            + " after it was set to writing; a start on it is refused with a message");
        }
    }

    private void refusedAtStart(Path folder) throws Exception {
        try (ServerProcess second = ServerProcess.start(starter, folder, scratch.resolve("refused.err"))) {
            throw new AssertionError("it started on a disk for reading, at " + second.address());
        } catch (IOException refused) {
            hold(refused.getMessage().contains("nothing may be written"), refused.getMessage());
        }
    }

    private static void once(Writers person, int notes) throws Exception {
        Map<String, Integer> all = new TreeMap<>(person.notes());
        hold(all.size() == notes && all.values().stream().allMatch(n -> n == 1), all.toString());
    }

    private static HttpResponse<String> expect(int status, HttpResponse<String> answer) {
        hold(answer.statusCode() == status, status + " was due, found " + answer.statusCode() + ": " + answer.body());
        return answer;
    }

    private static void hold(boolean holds, String found) {
        if (!holds) {
            throw new AssertionError(found);
        }
    }
}
