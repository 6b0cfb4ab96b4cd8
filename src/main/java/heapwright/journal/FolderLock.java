package heapwright.journal;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;

/** Lets one writer at a time into a folder, among the threads of this program and among programs. */
final class FolderLock {

    /** The file that is locked; it stays, empty. */
    static final String FILE = ".heapwright-lock";

    private static final Duration PAUSE = Duration.ofMillis(5);

    private final Duration patience;

    /** @param patience how long to wait for another program */
    FolderLock(Duration patience) {
        this.patience = patience;
    }

    /** What is done under the lock. */
    interface Work<T> {
        T run() throws IOException;
    }

    /**
     * Does some work alone.
     *
     * @param folder the folder as its real path
     * @throws IOException when the work fails or another program does not let go
     */
    <T> T alone(Path folder, Work<T> work) throws IOException {
        // Closing one channel may let go of every lock this JVM holds on the file, so only one thread may have it open.
        // An interned string is the one monitor that all journals on a folder share.
        synchronized (("heapwright.journal " + folder).intern()) {
            try (FileChannel channel = FileChannel.open(
                    folder.resolve(FILE),
                    StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS)) {
                lock(channel, folder);
                return work.run();
            }
        }
    }

    private void lock(FileChannel channel, Path folder) throws IOException {
        long deadline = System.nanoTime() + patience.toNanos();
        while (channel.tryLock() == null) {
            if (System.nanoTime() - deadline > 0) {
                throw new IOException("Another program is writing in " + folder + ". Try again when it is done.");
            }
            try {
                Thread.sleep(PAUSE.toMillis());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new InterruptedIOException("interrupted while waiting for " + folder);
            }
        }
    }
}
