package heapwright.cli;

import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The log as it begins: silent, so that a command says on the terminal what its help says and no more. Named in the
 * property {@code java.util.logging.config.class}, which saves each start the reading of a file.
 */
public final class QuietLog {

    /** The platform makes one when the log is first wanted. */
    public QuietLog() {
        Logger.getLogger("").setLevel(Level.OFF);
    }

    /** Makes it the beginning; to be called before anything is logged. */
    static void choose() {
        System.setProperty("java.util.logging.config.class", QuietLog.class.getName());
    }
}
