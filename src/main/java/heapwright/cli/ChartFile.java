package heapwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Writes a picture to the file that a command names. */
final class ChartFile {

    private final String name;

    ChartFile(String name) {
        this.name = name;
    }

    /**
     * Writes, in place of what was there.
     *
     * @throws UsageFault when the file cannot be written
     */
    void write(String picture) {
        try {
            Files.writeString(Path.of(name), picture);
        } catch (IOException | InvalidPathException e) {
            throw new UsageFault("heapwright: the chart cannot be written to \"" + name + "\": " + e.getMessage()
                    + ". Give a file in a folder that exists. Example: --chart course.svg");
        }
    }
}
