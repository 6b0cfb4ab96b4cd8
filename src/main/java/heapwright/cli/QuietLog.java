package heapwright.cli;

import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The log of the platform as it begins where it is wanted at all: silent until {@link Log} opens it. Named in the
 * property {@code java.util.logging.config.class}, so that no file is read for it.
 */
public final class QuietLog {

    /** The platform makes one when the log is first wanted. */
    public QuietLog() {
        Logger.getLogger("").setLevel(Level.OFF);
    }
}
