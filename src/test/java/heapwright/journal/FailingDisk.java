package heapwright.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** A disk on which one step fails. After a crash nothing more is done, as the program is gone. */
final class FailingDisk implements FileOps {

    /** The program ends in the middle of a step. */
    static final class Crash extends Error {}

    private final Disk disk = new Disk();
    private final int failing;
    private final boolean crash;
    private final boolean half;
    private int steps;

    /**
     * @param failing the step that fails, from 0
     * @param crash whether the program ends there; if not, the step throws and the program goes on
     * @param half whether a write that fails leaves half of the file
     */
    FailingDisk(int failing, boolean crash, boolean half) {
        this.failing = failing;
        this.crash = crash;
        this.half = half;
    }

    boolean failed() {
        return steps > failing;
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
        if (steps == failing && half) {
            disk.write(file, Arrays.copyOf(content, content.length / 2));
        }
        step();
        disk.write(file, content);
    }

    @Override
    public void append(Path file, byte[] content) throws IOException {
        if (steps == failing && half) {
            disk.append(file, Arrays.copyOf(content, content.length / 2));
        }
        step();
        disk.append(file, content);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step();
        disk.rename(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
        step();
        disk.delete(file);
    }

    @Override
    public void sync(Path folder) {
        int step = steps++;
        if (crash && step >= failing) {
            throw new Crash();
        }
        disk.sync(folder);
    }

    private void step() throws IOException {
        int step = steps++;
        if (crash && step >= failing) {
            throw new Crash();
        }
        if (step == failing) {
            throw new IOException("no space left");
        }
    }
}
