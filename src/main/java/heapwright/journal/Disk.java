package heapwright.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The real disk. */
final class Disk implements FileOps {

    private static final Logger LOG = LoggerFactory.getLogger(Disk.class);

    @Override
    public void write(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    @Override
    public void append(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE,
                StandardOpenOption.APPEND,
                LinkOption.NOFOLLOW_LINKS)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public void sync(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows opens no folders; there a rename may be lost with the power, and then the old file stands whole.
            LOG.debug("The folder {} could not be synced.", folder, e);
        }
    }
}
