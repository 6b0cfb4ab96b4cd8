package heapwright.web;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A disk of a megabyte or so, mounted for the trial, that can be filled up and set to reading only. */
final class SmallDisk {

    private static final int BLOCK = 4096;

    private final Path root;

    SmallDisk(Path root) {
        this.root = root;
    }

    Path folder(String name) {
        return root.resolve(name);
    }

    /** Fills it but for some blocks of 4 KiB. */
    void fill(int blocksLeft) throws IOException {
        free();
        Path filler = root.resolve("filler");
        try (OutputStream out = Files.newOutputStream(filler)) {
            byte[] block = new byte[BLOCK];
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            // That is what was wanted.
            try (FileChannel channel = FileChannel.open(filler, StandardOpenOption.WRITE)) {
                channel.truncate(Math.max(0, channel.size() / BLOCK * BLOCK - (long) blocksLeft * BLOCK));
            }
        }
    }

    void free() throws IOException {
        Files.deleteIfExists(root.resolve("filler"));
    }

    void readOnly(boolean only) throws IOException, InterruptedException {
        String mode = only ? "remount,ro" : "remount,rw";
        int code = new ProcessBuilder("mount", "-o", mode, root.toString())
                .inheritIO()
                .start()
                .waitFor();
        if (code != 0) {
            throw new IOException("the disk could not be set to " + mode);
        }
    }
}
