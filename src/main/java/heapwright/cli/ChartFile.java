package heapwright.cli;

import java.io.IOException;
import java.nio.file.Files;

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
            Files.writeString(FileNames.path(name), picture);
        } catch (IOException e) {
            throw new UsageFault("heapwright: the chart cannot be written to \"" + name + "\": " + e.getMessage()
                    + ". Give a file in a folder that exists. Example: --chart course.svg");
        }
    }
}
