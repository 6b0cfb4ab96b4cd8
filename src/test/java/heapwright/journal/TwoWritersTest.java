package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.TestVocabulary;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two tabs, two journals or two programs write to one folder: no update is lost without a conflict. */
@Timeout(60)
class TwoWritersTest {

    private static final int NOTES = 60;

    @TempDir
    Path folder;

    /** What a writer was told. */
    private record Told(List<String> saved, List<String> conflicting) {
        Told {
            saved = List.copyOf(saved);
            conflicting = List.copyOf(conflicting);
        }
    }

    /** Opens the pile and saves it with one more note, again and again, and never tries twice. */
    static Told write(Journal journal, String writer, int notes) throws IOException {
        List<String> saved = new ArrayList<>();
        List<String> conflicting = new ArrayList<>();
        for (int i = 0; i < notes; i++) {
            String note = writer + " " + i;
            Stored opened = Samples.stored(journal, "heap");
            Saving saving = journal.save("heap", opened.version(), Samples.noted(opened.pile(), note));
            (saving instanceof Saving.Saved ? saved : conflicting).add(note);
        }
        return new Told(saved, conflicting);
    }

    private void nothingIsLost(List<Told> told) throws IOException {
        Journal journal = Samples.journal(folder);
        TreeSet<String> saved = new TreeSet<>();
        TreeSet<String> conflicting = new TreeSet<>();
        told.forEach(each -> {
            saved.addAll(each.saved());
            conflicting.addAll(each.conflicting());
        });
        assertEquals(
                saved,
                new TreeSet<>(Samples.notes(Samples.stored(journal, "heap").pile())));
        TreeSet<String> kept = new TreeSet<>();
        for (Listed file : journal.list()) {
            Stored stored = Samples.stored(journal, file.id());
            if (!stored.id().equals("heap")) {
                kept.addAll(Samples.notes(stored.pile()));
            }
        }
        assertTrue(kept.containsAll(conflicting), "a note in conflict was not kept");
        assertEquals(conflicting.size(), journal.list().size() - 1, "each conflict keeps one copy");
    }

    @Test
    void savingInTurnFromOneVersionTellsEverySecondOfAConflict() throws IOException {
        Journal one = Samples.journal(folder);
        Journal other = Samples.journal(folder);
        one.create(Samples.pile("Heap"));
        List<String> saved = new ArrayList<>();
        List<String> conflicting = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            Stored opened = Samples.stored(one, "heap");
            Stored same = Samples.stored(other, "heap");
            Samples.saved(one.save("heap", opened.version(), Samples.noted(opened.pile(), "one " + i)));
            Samples.conflict(other.save("heap", same.version(), Samples.noted(same.pile(), "other " + i)));
            saved.add("one " + i);
            conflicting.add("other " + i);
        }
        nothingIsLost(List.of(new Told(saved, conflicting)));
    }

    @Test
    void journalsOfOneProgramDoNotInterleave() throws Exception {
        Journal shared = Samples.journal(folder);
        shared.create(Samples.pile("Heap"));
        List<Callable<Told>> writers = List.of(
                () -> write(shared, "a", NOTES),
                () -> write(shared, "b", NOTES),
                () -> write(Samples.journal(folder), "c", NOTES),
                () -> write(Samples.journal(folder), "d", NOTES));
        ExecutorService threads = Executors.newFixedThreadPool(writers.size());
        try {
            List<Told> told = new ArrayList<>();
            for (Future<Told> done : threads.invokeAll(writers)) {
                told.add(done.get());
            }
            nothingIsLost(told);
        } finally {
            threads.shutdownNow();
        }
    }

    @Tag("thorough")
    @Test
    void programsDoNotInterleave() throws Exception {
        Samples.journal(folder).create(Samples.pile("Heap"));
        Process program = program("child", NOTES);
        try (BufferedReader lines = output(program)) {
            assertEquals("ready", lines.readLine());
            Told ours = write(Samples.journal(folder), "parent", NOTES);
            List<String> saved = new ArrayList<>();
            List<String> conflicting = new ArrayList<>();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                (line.startsWith("saved ") ? saved : conflicting).add(line.substring(line.indexOf(' ') + 1));
            }
            assertTrue(program.waitFor(30, TimeUnit.SECONDS));
            assertEquals(0, program.exitValue());
            assertEquals(NOTES, saved.size() + conflicting.size());
            nothingIsLost(List.of(ours, new Told(saved, conflicting)));
        } finally {
            program.destroyForcibly();
        }
    }

    @Tag("thorough")
    @Test
    void aProgramThatIsKilledWhileItSavesLeavesAWholeFile() throws Exception {
        Journal journal = Samples.journal(folder);
        journal.create(Samples.pile("Heap"));
        for (int round = 0; round < 3; round++) {
            Process program = program("killed " + round, 100_000);
            try (BufferedReader lines = output(program)) {
                assertEquals("ready", lines.readLine());
                String before = Samples.stored(journal, "heap").version();
                while (Samples.stored(journal, "heap").version().equals(before)) {
                    Thread.sleep(3);
                }
            } finally {
                program.destroyForcibly().waitFor();
            }
            Stored left = Samples.stored(journal, "heap");
            Samples.saved(journal.save("heap", left.version(), Samples.noted(left.pile(), "after " + round)));
            assertEquals(1, journal.list().size());
        }
    }

    @Test
    void aFolderThatStaysLockedIsGivenUpOn() throws Exception {
        Samples.journal(folder).create(Samples.pile("Heap"));
        Journal hasty = new Journal(folder, new TestVocabulary(), Samples.CLOCK, new Disk(), Duration.ofMillis(30));
        Process program = program("hold", 0);
        try (BufferedReader lines = output(program)) {
            assertEquals("ready", lines.readLine());
            IOException thrown = Assertions.assertThrows(IOException.class, () -> hasty.delete("heap"));
            assertTrue(thrown.getMessage().startsWith("Another program is writing in "), thrown::getMessage);
            assertEquals(1, hasty.list().size());
        } finally {
            program.destroyForcibly().waitFor();
        }
        assertEquals("heap", hasty.delete("heap").orElseThrow());
    }

    private Process program(String writer, int notes) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Program.class.getName(),
                        folder.toString(),
                        writer,
                        Integer.toString(notes))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static BufferedReader output(Process program) {
        return new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8));
    }

    /** The other program. */
    static final class Program {

        private Program() {}

        /** @param args folder, name of the writer or "hold", number of notes */
        public static void main(String[] args) throws Exception {
            Path folder = Path.of(args[0]);
            if (args[1].equals("hold")) {
                Path file = folder.resolve(FolderLock.FILE);
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                    channel.lock();
                    System.out.println("ready");
                    Thread.sleep(60_000);
                }
            }
            // A program that is just starting is slow; warmed up, it is a match for the one that waits for it.
            Journal warm = Samples.journal(folder.resolve("warm"));
            warm.create(Samples.pile("Heap"));
            write(warm, "warm", NOTES);
            System.out.println("ready");
            Told told = write(Samples.journal(folder), args[1], Integer.parseInt(args[2]));
            told.saved().forEach(note -> System.out.println("saved " + note));
            told.conflicting().forEach(note -> System.out.println("conflict " + note));
        }
    }
}
