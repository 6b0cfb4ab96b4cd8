package heapwright.journal;

import java.io.IOException;
import java.nio.file.Path;

/**
 * What the surroundings of the journal did not allow: not a fault of the program, nor of what was to be saved. Nothing
 * was changed but, at most, the version before. The message is for the log, as it names the folder; what is told to a
 * person follows from the {@link #kind}.
 */
public final class JournalFault extends IOException {

    private static final long serialVersionUID = 1;

    /** What stood in the way. */
    public enum Kind {
        /** There is no room left on the disk, or in the share of it that this person has. */
        FULL,
        /** Nothing may be written in the folder. */
        READ_ONLY,
        /** The folder may not be read. */
        UNREADABLE,
        /** Another program is writing in the folder and does not let go. */
        LOCKED,
        /** Other saves of this same program took so long that this one did not come to its turn. */
        CROWDED,
        /** What should be the folder is something else, or stands below a file. */
        NO_FOLDER,
        /** A name that the journal needs in its folder is taken by something of another kind, such as a link. */
        OBSTRUCTED,
        /** The disk failed in another way. */
        FAILED
    }

    private final Kind kind;
    private final String name;

    JournalFault(Kind kind, String message, Throwable cause) {
        this(kind, "", message, cause);
    }

    private JournalFault(Kind kind, String name, String message, Throwable cause) {
        super(message, cause);
        this.kind = kind;
        this.name = name;
    }

    /** A name in the folder of the journal is taken by something else than the journal put there. */
    static JournalFault obstructed(Path taken, Throwable cause) {
        return new JournalFault(
                Kind.OBSTRUCTED,
                taken.getFileName().toString(),
                "\"" + taken + "\" is not what the journal keeps by that name. Give it another name, then try again.",
                cause);
    }

    public Kind kind() {
        return kind;
    }

    /** The name that is taken, without its folder; empty but for {@link Kind#OBSTRUCTED}. */
    public String name() {
        return name;
    }
}
