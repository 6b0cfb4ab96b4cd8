package heapwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.journal.JournalFault.Kind;
import heapwright.pile.TestVocabulary;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the surroundings do to a save is told by its name, and nothing is changed. Disks that fail are played here; the
 * real ones, full and read-only, are tried by the fault harness of the page.
 */
class JournalFaultTest {

    @TempDir
    Path home;

    private static void fault(Kind kind, Executable work) {
        JournalFault fault = assertThrows(JournalFault.class, work);
        assertEquals(kind, fault.kind(), fault::getMessage);
    }

    /** A disk as it is; for those that are not, some of it is played. */
    private static class Played implements FileOps {
        private final Disk disk = new Disk();

        @Override
        public void write(Path file, byte[] content) throws IOException {
            disk.write(file, content);
        }

        @Override
        public void append(Path file, byte[] content) throws IOException {
            disk.append(file, content);
        }

        @Override
        public void rename(Path from, Path to) throws IOException {
            disk.rename(from, to);
        }

        @Override
        public void delete(Path file) throws IOException {
            disk.delete(file);
        }

        @Override
        public void sync(Path folder) {
            disk.sync(folder);
        }
    }

    /** A disk that answers every write with the same failure. */
    private static FileOps failing(IOException failure) {
        return new Played() {
            @Override
            public void write(Path file, byte[] content) throws IOException {
                throw failure;
            }

            @Override
            public void append(Path file, byte[] content) throws IOException {
                throw failure;
            }

            @Override
            public void rename(Path from, Path to) throws IOException {
                throw failure;
            }
        };
    }

    private void told(Kind kind, IOException failure) throws IOException {
        Path folder = Files.createTempDirectory(home, "piles");
        Stored stored = Samples.saved(Samples.journal(folder).create(Samples.pile("Heap")));
        Journal journal = Samples.journal(folder, failing(failure));
        fault(kind, () -> journal.create(Samples.pile("Other")));
        fault(kind, () -> journal.create(Samples.pile("Other"), RequestKey.of("other")));
        fault(kind, () -> journal.save("heap", stored.version(), Samples.noted(stored.pile(), "one")));
        fault(kind, () -> journal.delete("heap"));
        assertEquals(List.of(Listed.of(stored)), Samples.journal(folder).list());
    }

    @Test
    void aFullDiskIsTold() throws IOException {
        told(Kind.FULL, new IOException("No space left on device"));
        told(Kind.FULL, new IOException("Disk quota exceeded"));
    }

    @Test
    void whatMayNotBeWrittenIsTold() throws IOException {
        told(Kind.READ_ONLY, new AccessDeniedException("heap.json"));
    }

    @Test
    void aDiskThatFailsOtherwiseIsTold() throws IOException {
        told(Kind.FAILED, new IOException("Input/output error"));
    }

    @Test
    void aFileInPlaceOfTheFolderIsToldWhetherReadOrWritten() throws IOException {
        Path file = Files.writeString(home.resolve("file"), "x");
        for (Path path : List.of(file, file.resolve("piles"))) {
            Journal journal = Samples.journal(path);
            assertEquals(Optional.of(Kind.NO_FOLDER), journal.obstacle().map(JournalFault::kind));
            fault(Kind.NO_FOLDER, () -> journal.create(Samples.pile("Heap")));
        }
        fault(Kind.NO_FOLDER, () -> Samples.journal(file).list());
        fault(Kind.NO_FOLDER, () -> Samples.journal(file).open("heap"));
        assertEquals("x", Files.readString(file));
    }

    @Test
    void nothingStandsInTheWayOfAFolderThatCanBeMade() throws IOException {
        assertEquals(Optional.empty(), Samples.journal(home).obstacle());
        assertEquals(Optional.empty(), Samples.journal(home.resolve("a/b")).obstacle());
        assertFalse(Files.exists(home.resolve("a")));
    }

    /**
     * A lock held from elsewhere keeps one thread waiting; those behind it are told before it gives up. The lock is
     * taken by this same program through a channel of its own, which the system call of Java refuses in another way, so
     * a program of its own holds it.
     */
    @Tag("thorough")
    @Test
    void notAllThreadsWaitBehindALock() throws Exception {
        Path folder = home.resolve("piles");
        Samples.journal(folder).create(Samples.pile("Heap"));
        Duration patience = Duration.ofSeconds(6);
        Journal journal = new Journal(folder, new TestVocabulary(), Samples.CLOCK, new Disk(), patience);
        Process holder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holder.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            assertEquals('r', holder.getInputStream().read());
            long begin = System.nanoTime();
            List<Callable<Kind>> saves = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                saves.add(() -> {
                    JournalFault fault = assertThrows(JournalFault.class, () -> journal.create(Samples.pile("Other")));
                    if (System.nanoTime() - begin < patience.toNanos()) {
                        return fault.kind();
                    }
                    throw new AssertionError("it waited to the end");
                });
            }
            int soon = 0;
            for (Future<Kind> save : threads.invokeAll(saves.subList(0, 8))) {
                try {
                    assertEquals(Kind.LOCKED, save.get());
                    soon++;
                } catch (java.util.concurrent.ExecutionException waited) {
                    assertEquals("it waited to the end", waited.getCause().getMessage());
                }
            }
            assertEquals(7, soon, "one waits to the end, the others are told");
            assertEquals(1, journal.list().size());
        } finally {
            threads.shutdownNow();
            holder.destroyForcibly().waitFor();
        }
        assertTrue(journal.delete("heap").isPresent());
    }

    /** A save that is held up by another of the same program blames no other program. */
    @Test
    void aSaveBehindAnotherOfTheSameProgramSaysSo() throws Exception {
        CountDownLatch writing = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        FileOps slow = new Played() {
            @Override
            public void write(Path file, byte[] content) throws IOException {
                writing.countDown();
                try {
                    go.await();
                } catch (InterruptedException e) {
                    throw new IOException(e);
                }
                super.write(file, content);
            }
        };
        Journal journal =
                new Journal(home.resolve("piles"), new TestVocabulary(), Samples.CLOCK, slow, Duration.ofMillis(200));
        ExecutorService thread = Executors.newSingleThreadExecutor();
        try {
            Future<Saving> first = thread.submit(() -> journal.create(Samples.pile("Heap")));
            writing.await();
            fault(Kind.CROWDED, () -> journal.create(Samples.pile("Other")));
            go.countDown();
            Samples.saved(first.get());
            assertEquals(1, journal.list().size());
        } finally {
            go.countDown();
            thread.shutdownNow();
        }
    }

    /** Holds the lock of a folder until it is ended. */
    static final class Holder {

        private Holder() {}

        public static void main(String[] args) throws Exception {
            Path file = Path.of(args[0]).resolve(FolderLock.FILE);
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.lock();
                System.out.print('r');
                System.out.flush();
                Thread.sleep(120_000);
            }
        }
    }
}
