package heapwright.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;

/** A pile's file anywhere on the disk, changed in one step: a crash leaves the whole old content or the whole new. */
public final class PlainFile {

    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Path file;
    private final SafeFile files;
    private final FolderLock lock;

    public PlainFile(Path file) {
        this(file, new Disk());
    }

    PlainFile(Path file, FileOps ops) {
        this.file = file.toAbsolutePath();
        this.files = new SafeFile(ops);
        this.lock = new FolderLock(PATIENCE);
    }

    /**
     * Puts new content in place of what was read.
     *
     * @param before what was read
     * @param after the new content
     * @return false where somebody else has changed the file meanwhile: then nothing was written
     * @throws JournalFault when the disk, the folder or another program stands in the way; the file is as it was
     */
    public boolean replace(byte[] before, byte[] after) throws IOException {
        // A link stays a link: what it points to is changed.
        Path real = file.toRealPath();
        try {
            return lock.alone(real.getParent(), () -> {
                if (!Arrays.equals(Files.readAllBytes(real), before)) {
                    return false;
                }
                files.write(real, after);
                return true;
            });
        } catch (JournalFault e) {
            throw e;
        } catch (IOException e) {
            throw Diagnosis.of(real.getParent(), e, true);
        }
    }
}
