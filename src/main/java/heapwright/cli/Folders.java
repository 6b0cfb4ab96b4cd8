package heapwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/** Folders that a command names. */
final class Folders {

    private Folders() {}

    /**
     * The folder, which is there.
     *
     * @param example one that would do
     * @throws UsageFault when it is not
     */
    static Path there(Path folder, String example) {
        if (!Files.isDirectory(folder)) {
            throw new UsageFault("heapwright: there is no folder \"" + folder
                    + "\". Give the path of a folder. Example: " + example);
        }
        return folder;
    }
}
