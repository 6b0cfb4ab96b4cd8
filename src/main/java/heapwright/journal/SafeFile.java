package heapwright.journal;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Writes files so that at every moment, also after a crash, the name stands for the whole old content or the whole new.
 * Only for one writer at a time: whoever calls holds the {@link FolderLock}.
 */
final class SafeFile {

    /** One name is enough under the lock, and a crash leaves no more than one such file. */
    static final String TEMPORARY = ".heapwright-unfinished";

    private final FileOps ops;

    SafeFile(FileOps ops) {
        this.ops = ops;
    }

    /** Writes a file, in place of the one that had the name. */
    void write(Path file, byte[] content) throws IOException {
        Path temporary = file.resolveSibling(TEMPORARY);
        ops.delete(temporary);
        try {
            ops.write(temporary, content);
            ops.rename(temporary, file);
        } catch (IOException e) {
            tidy(temporary, e);
            throw e;
        }
        ops.sync(file.getParent());
    }

    /** Moves a file to another folder of the same disk; the new name must be free. */
    void move(Path from, Path to) throws IOException {
        ops.rename(from, to);
        ops.sync(to.getParent());
        ops.sync(from.getParent());
    }

    private void tidy(Path temporary, IOException cause) {
        try {
            ops.delete(temporary);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }
}
