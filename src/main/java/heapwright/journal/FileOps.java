package heapwright.journal;

import java.io.IOException;
import java.nio.file.Path;

/** The steps by which files change on disk; tests put a failing disk in their place. */
interface FileOps {

    /** Writes a new file, and returns when its content is on the disk. Fails if there is one by that name. */
    void write(Path file, byte[] content) throws IOException;

    /** Adds to the end of a file, which is made if it is not there; not forced to the disk. */
    void append(Path file, byte[] content) throws IOException;

    /** Gives a file another name, in one step that is done whole or not at all; a file that had the name is gone. */
    void rename(Path from, Path to) throws IOException;

    /** Deletes a file if it is there. */
    void delete(Path file) throws IOException;

    /** Brings new names in a folder onto the disk, on systems that can; the others do it in their own time. */
    void sync(Path folder);
}
