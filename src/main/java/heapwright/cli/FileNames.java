package heapwright.cli;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Paths from what a person typed. Where the system is set to plain ASCII, Java reads every other byte of a name as an
 * unknown letter and can make no path of it; but a listing of the folder gives the file all the same, so it is found by
 * the letters that are known.
 */
final class FileNames {

    private FileNames() {}

    /**
     * The path of that name.
     *
     * @throws UsageFault when the name cannot be a path on this system
     */
    static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException unnamable) {
            return found(name);
        }
    }

    private static Path found(String name) {
        Path path = Path.of(name.startsWith("/") ? "/" : "");
        for (String part : name.split("/")) {
            path = step(path, part, name);
        }
        return path;
    }

    private static Path step(Path folder, String part, String name) {
        try {
            return folder.resolve(part);
        } catch (InvalidPathException unnamable) {
            List<Path> alike = alike(folder, part);
            if (alike.size() == 1) {
                return alike.get(0);
            }
            throw new UsageFault(
                    "heapwright: \"" + name + "\" cannot be told from other names, or there is no such file:"
                            + " the system is set to plain ASCII, which has not all of its letters. Set LC_ALL to a UTF-8"
                            + " alphabet, then try again. Example: LC_ALL=C.UTF-8 heapwright checkup pile.json");
        }
    }

    private static List<Path> alike(Path folder, String part) {
        List<Path> alike = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                if (file.getFileName().toString().equals(part)) {
                    alike.add(folder.resolve(file.getFileName()));
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            return List.of();
        }
        return alike;
    }
}
