package heapwright.journal;

import heapwright.journal.JournalFault.Kind;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets one writer at a time into a folder, among the threads of this program and among programs. Where another program
 * does not let go, one thread waits for it; the others are told soon, so that a server has threads left to answer with.
 */
final class FolderLock {

    /** The file that is locked; it stays, empty. */
    static final String FILE = ".heapwright-lock";

    private static final Duration PAUSE = Duration.ofMillis(5);

    /**
     * How long another program may write before threads behind the one that waits for it give up, and how often these
     * look whether it does: they leave their place in the queue for it. Our judgement.
     */
    private static final Duration GRACE = Duration.ofMillis(500);

    private final long patience;

    /** In the order in which they came: else one thread may be passed over until its patience is at an end. */
    private final ReentrantLock threads = new ReentrantLock(true);

    /** When the thread in front began to wait for another program; 0 while it does not. */
    private final AtomicLong waitsSince = new AtomicLong();

    /** @param patience how long to wait in all */
    FolderLock(Duration patience) {
        this.patience = patience.toNanos();
    }

    /** What is done under the lock. */
    interface Work<T> {
        T run() throws IOException;
    }

    /**
     * Does some work alone.
     *
     * @param folder the folder as its real path
     * @throws JournalFault when another program does not let go, or other threads of this one take too long
     * @throws IOException when the work fails
     */
    <T> T alone(Path folder, Work<T> work) throws IOException {
        long begin = System.nanoTime();
        queue(folder, begin);
        try {
            return alone(folder, begin, work);
        } finally {
            threads.unlock();
        }
    }

    private void queue(Path folder, long begin) throws IOException {
        try {
            while (!threads.tryLock(Math.min(GRACE.toNanos(), patience), TimeUnit.NANOSECONDS)) {
                long since = waitsSince.get();
                long now = System.nanoTime();
                if (since != 0 && (now - since > GRACE.toNanos() || now - begin > patience)) {
                    throw locked(folder);
                }
                if (now - begin > patience) {
                    throw crowded(folder);
                }
            }
        } catch (InterruptedException e) {
            throw interrupted(folder);
        }
    }

    private <T> T alone(Path folder, long begin, Work<T> work) throws IOException {
        // Closing one channel may let go of every lock this JVM holds on the file, so only one thread may have it open.
        // An interned string is the one monitor that all journals on a folder share; a program has one journal.
        synchronized (("heapwright.journal " + folder).intern()) {
            try (FileChannel channel = FileChannel.open(
                    folder.resolve(FILE),
                    StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS)) {
                try {
                    lock(channel, folder, begin);
                } finally {
                    waitsSince.set(0);
                }
                return work.run();
            }
        }
    }

    private void lock(FileChannel channel, Path folder, long begin) throws IOException {
        while (channel.tryLock() == null) {
            long now = System.nanoTime();
            waitsSince.compareAndSet(0, now);
            if (now - begin > patience) {
                throw locked(folder);
            }
            try {
                Thread.sleep(PAUSE.toMillis());
            } catch (InterruptedException e) {
                throw interrupted(folder);
            }
        }
    }

    private static JournalFault locked(Path folder) {
        return new JournalFault(
                Kind.LOCKED, "Another program is writing in " + folder + ". Try again when it is done.", null);
    }

    private static JournalFault crowded(Path folder) {
        return new JournalFault(
                Kind.CROWDED,
                "Other saves of this program in " + folder
                        + " took so long that this one did not come to its turn. Try again.",
                null);
    }

    private static InterruptedIOException interrupted(Path folder) {
        Thread.currentThread().interrupt();
        return new InterruptedIOException("interrupted while waiting for " + folder);
    }
}
