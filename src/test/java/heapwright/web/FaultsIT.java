package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.journal.Journal;
import heapwright.journal.Stored;
import heapwright.pile.Entry;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The surroundings fail while a person writes: it is told what failed, what was typed stands on the page, and sent again
 * it is there once. Full and read-only disks are tried on real ones by {@link FaultHarness}.
 */
@Timeout(300)
class FaultsIT {

    private static final String WORDS = "a note with <marks> & \"signs\"";

    @TempDir
    Path home;

    private Path folder;
    private TestServer server;
    private FormClient person;

    @BeforeEach
    void start() {
        folder = home.resolve("piles");
        server = TestServer.over(folder);
        person = new FormClient(server.at(""));
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private FormClient.Form newPile() throws IOException, InterruptedException {
        return person.form("/piles", "/piles").with("name", "Heap").with("built", "2026-11-01");
    }

    private FormClient.Form note(String words) throws IOException, InterruptedException {
        return person.form("/piles/heap", "/piles/heap/note")
                .with("core", "31")
                .with("seen", "smells-sour")
                .with("note", words);
    }

    private List<String> notes(String id) throws IOException {
        Stored stored = (Stored) server.site().journal().open(id).orElseThrow();
        return stored.pile().log().stream().map(Entry::note).toList();
    }

    private int piles() throws IOException {
        return server.site().journal().list().size();
    }

    /** What was typed stands on the page, in the words of the form, and goes out again with it. */
    private FormClient.Form kept(int status, String reason, HttpResponse<String> answer) {
        assertEquals(status, answer.statusCode(), answer.body());
        assertTrue(answer.body().contains(reason), answer.body());
        assertTrue(answer.body().contains("a note with &lt;marks&gt; &amp; \"signs\"</li>"), answer.body());
        assertTrue(answer.body().contains("31</li>") && answer.body().contains("sour"), answer.body());
        assertFalse(answer.body().contains("our fault"), answer.body());
        assertFalse(answer.body().contains(home.toString()), answer.body());
        return person.form(answer, "/piles/heap/note");
    }

    @Test
    void aPileThatIsSentTwiceIsMadeOnce() throws Exception {
        FormClient.Form form = newPile();
        HttpResponse<String> first = person.send(form);
        HttpResponse<String> again = person.send(form);
        assertEquals(303, again.statusCode());
        assertEquals(first.headers().firstValue("Location"), again.headers().firstValue("Location"));
        assertEquals(1, piles());
        assertEquals(303, person.send(newPile()).statusCode());
        assertEquals(2, piles(), "a form of its own makes a pile of its own");
    }

    @Test
    void whatIsSentTwiceAtOnceIsDoneOnce() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            FormClient.Form pile = newPile();
            allRedirect(threads, pile);
            assertEquals(1, piles());
            allRedirect(threads, note(WORDS));
            assertEquals(List.of(WORDS), notes("heap"));
            assertEquals(1, piles());
        } finally {
            threads.shutdownNow();
        }
    }

    private void allRedirect(ExecutorService threads, FormClient.Form form) throws Exception {
        List<Callable<HttpResponse<String>>> sends = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            sends.add(() -> person.send(form));
        }
        for (Future<HttpResponse<String>> answer : threads.invokeAll(sends)) {
            assertEquals(303, answer.get().statusCode(), answer.get().body());
        }
    }

    @Test
    void aNoteThatIsSentAgainLaterIsThereOnce() throws Exception {
        person.send(newPile());
        FormClient.Form form = note(WORDS);
        person.send(form);
        person.send(note("another"));
        HttpResponse<String> again = person.send(form);
        assertEquals(303, again.statusCode());
        assertEquals(List.of(WORDS, "another"), notes("heap"));
        assertEquals(1, piles());
        assertEquals(
                303,
                person.send(form.with("note", "changed on the page of before")).statusCode());
        assertEquals(
                List.of(WORDS, "another", "changed on the page of before"),
                notes("heap"),
                "another content is another note");
        assertEquals(1, piles());
    }

    @Test
    void afterARestartTheFormComesBackAndIsTakenOnce() throws Exception {
        person.send(newPile());
        FormClient.Form taken = note(WORDS);
        person.send(taken);
        FormClient.Form open = note(WORDS + "2");
        FormClient.Form made = newPile();
        person.send(made);
        assertEquals(2, piles());
        server.close();
        server = TestServer.over(folder);
        person.moveTo(server.at(""));
        for (FormClient.Form form : List.of(taken, open)) {
            FormClient.Form back = person.form(person.send(form), "/piles/heap/note");
            assertNotEquals(form.value("_seal"), back.value("_seal"));
            assertEquals(303, person.send(back).statusCode());
        }
        kept(403, "before the program was last started", person.send(taken));
        assertEquals(303, person.send(person.form(person.send(made), "/piles")).statusCode());
        assertEquals(List.of(WORDS, WORDS + "2"), notes("heap"));
        assertEquals(2, piles());
    }

    @Test
    void aPileDeletedMeanwhileIsToldAndTheNoteKept() throws Exception {
        person.send(newPile());
        FormClient.Form form = note(WORDS);
        server.site().journal().delete("heap");
        FormClient.Form back = kept(404, "fetched back", person.send(form));
        server.site().journal().undoDelete("heap");
        assertEquals(303, person.send(back).statusCode());
        assertEquals(List.of(WORDS), notes("heap"));
    }

    @Test
    void aPileBrokenMeanwhileIsToldAndTheNoteKept() throws Exception {
        person.send(newPile());
        FormClient.Form form = note(WORDS);
        Path file = folder.resolve("heap.json");
        byte[] whole = Files.readAllBytes(file);
        Files.writeString(file, "{");
        FormClient.Form back = kept(409, "cannot be read as a pile", person.send(form));
        assertEquals("{", Files.readString(file));
        Files.write(file, whole);
        assertEquals(303, person.send(back).statusCode());
        assertEquals(List.of(WORDS), notes("heap"));
    }

    @Test
    void aLockHeldElsewhereIsToldSoonAndHoldsUpNobodyElse() throws Exception {
        person.send(newPile());
        Process holder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holder.class.getName(),
                        folder.resolve(".heapwright-lock").toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        ExecutorService threads = Executors.newFixedThreadPool(60);
        FormClient.Form form = note(WORDS);
        FormClient.Form back;
        try {
            assertEquals('r', holder.getInputStream().read());
            List<Future<HttpResponse<String>>> sent = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                sent.add(threads.submit(() -> person.send(form)));
            }
            assertEquals(200, person.get("/settings").statusCode());
            for (Future<HttpResponse<String>> answer : sent) {
                back = kept(503, "another program is writing", answer.get());
                assertTrue(answer.get().headers().firstValue("Retry-After").isPresent());
            }
            HttpRequest put = HttpRequest.newBuilder(URI.create(server.at("/api/piles/heap")))
                    .DELETE()
                    .build();
            HttpResponse<String> program = person.send(put);
            assertEquals(503, program.statusCode());
            assertTrue(program.headers().firstValue("Content-Type").orElse("").startsWith("application/problem+json"));
            back = kept(503, "another program is writing", person.send(form));
        } finally {
            threads.shutdownNow();
            holder.destroyForcibly().waitFor();
        }
        assertEquals(303, person.send(back).statusCode());
        assertEquals(List.of(WORDS), notes("heap"));
    }

    /** Holds the lock of a folder until it is ended. */
    static final class Holder {

        private Holder() {}

        public static void main(String[] args) throws Exception {
            try (FileChannel channel = FileChannel.open(Path.of(args[0]), StandardOpenOption.WRITE)) {
                channel.lock();
                System.out.print('r');
                System.out.flush();
                Thread.sleep(240_000);
            }
        }
    }

    @Test
    void aFileInPlaceOfTheFolderIsToldAsSuch() throws Exception {
        FormClient.Form form = newPile();
        Files.writeString(folder, "x");
        for (String path : List.of("/piles", "/api/piles", "/piles/heap")) {
            HttpResponse<String> answer = person.get(path);
            assertEquals(503, answer.statusCode(), path);
            assertTrue(answer.body().contains("is a file"), answer.body());
            assertFalse(answer.body().contains(home.toString()), answer.body());
        }
        HttpResponse<String> answer = person.send(form);
        assertEquals(503, answer.statusCode());
        Files.delete(folder);
        assertEquals(303, person.send(person.form(answer, "/piles")).statusCode());
        assertEquals(1, piles());
    }

    @Test
    void aLinkNamedRemovedHidesNoListAndIsToldByADelete() throws Exception {
        person.send(newPile());
        Files.createSymbolicLink(folder.resolve(Journal.REMOVED), Files.createDirectory(home.resolve("elsewhere")));
        HttpResponse<String> list = person.get("/piles");
        assertEquals(200, list.statusCode());
        assertTrue(list.body().contains("href=\"/piles/heap\""), list.body());
        assertEquals(200, person.get("/api/removed").statusCode());
        HttpResponse<String> told = person.send(person.form("/piles/heap", "/piles/heap/delete"));
        assertEquals(409, told.statusCode());
        assertTrue(told.body().contains("Removed"), told.body());
        assertEquals(1, piles());
    }

    @Test
    void aProgramWithAKeyIsServedOnce() throws Exception {
        String document =
                "{\"heapwright\":\"pile/1\",\"name\":\"Heap\",\"built\":\"2026-11-01\",\"asOf\":\"2026-11-20\"}";
        HttpResponse<String> first = person.send(program("POST", "/api/piles", document, "a"));
        HttpResponse<String> again = person.send(program("POST", "/api/piles", document, "a"));
        assertEquals(201, again.statusCode());
        assertEquals(first.headers().firstValue("Location"), again.headers().firstValue("Location"));
        assertEquals(1, piles());
        assertEquals(
                201, person.send(program("POST", "/api/piles", document, "b")).statusCode());
        assertEquals(2, piles());
        String version = first.headers().firstValue("ETag").orElseThrow();
        String noted = document.replace("}", ",\"log\":[{\"date\":\"2026-11-20\",\"note\":\"one\"}]}");
        String other = document.replace("}", ",\"log\":[{\"date\":\"2026-11-20\",\"note\":\"two\"}]}");
        HttpResponse<String> put = person.send(program("PUT", "/api/piles/heap", noted, "c", "If-Match", version));
        assertEquals(200, put.statusCode(), put.body());
        String next = put.headers().firstValue("ETag").orElseThrow();
        assertEquals(
                200,
                person.send(program("PUT", "/api/piles/heap", other, "d", "If-Match", next))
                        .statusCode());
        assertEquals(
                200,
                person.send(program("PUT", "/api/piles/heap", noted, "c", "If-Match", version))
                        .statusCode());
        assertEquals(List.of("two"), notes("heap"), "the later save stands");
        assertEquals(2, piles());
    }

    private HttpRequest program(String method, String path, String document, String key, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.at(path)))
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", key)
                .method(method, BodyPublishers.ofString(document));
        return (headers.length == 0 ? request : request.headers(headers)).build();
    }
}
