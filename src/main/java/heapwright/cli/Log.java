package heapwright.cli;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.function.Consumer;
import java.util.logging.Formatter;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/**
 * What happens inside, told where a person can read and report it: one line an event, the trace of a failure below it.
 * A command is silent unless {@code --debug} is given; a server tells warnings and failures.
 */
final class Log extends Handler {

    /** The option that opens the log. */
    static final String DEBUG = "--debug";

    private static final String OURS = "heapwright";
    private static final String NOBODY = "org.slf4j.helpers.NOP_FallbackServiceProvider";

    private final PrintStream to;
    private final Consumer<Throwable> each;
    private final Formatter format = new LogFormat();

    /** Held here, since the platform forgets the level of a logger that nobody holds. */
    private final Logger ours = Logger.getLogger(OURS);

    private Log(PrintStream to, Consumer<Throwable> each) {
        this.to = to;
        this.each = each;
    }

    /**
     * Chooses who takes what is logged; to be called before anything is. A command that is to be silent has it taken by
     * nobody: to look for the log of the platform and set it up would cost each start some ten milliseconds.
     */
    static void choose(String[] args) {
        boolean server = args.length > 0 && args[0].equals(ServeCommand.NAME);
        if (server || debugs(args)) {
            System.setProperty("java.util.logging.config.class", QuietLog.class.getName());
        } else {
            System.setProperty("slf4j.provider", NOBODY);
            System.setProperty("slf4j.internal.verbosity", "WARN");
        }
    }

    /** Whether a command line asks for the log. */
    static boolean debugs(String[] args) {
        return Arrays.asList(args).contains(DEBUG);
    }

    /** Lets through what a person who looks for a fault wants to see. */
    static void debug(PrintStream to) {
        open(new Log(to, fault -> {}), Level.INFO, Level.ALL);
    }

    /** The server's own word that it did not start; the command tells why, in plain words. */
    private static boolean saidByTheCommand(LogRecord event) {
        return "io.javalin.Javalin".equals(event.getLoggerName())
                && event.getMessage().startsWith("Failed to start");
    }

    /**
     * Lets warnings and failures through.
     *
     * @param to where they are told
     * @param debug whether more is told
     * @param each sees each fault that is logged, by whomever
     */
    static void server(PrintStream to, boolean debug, Consumer<Throwable> each) {
        Log log = new Log(to, each);
        log.setFilter(event -> debug || !saidByTheCommand(event));
        open(log, debug ? Level.INFO : Level.WARNING, debug ? Level.ALL : Level.WARNING);
    }

    private static void open(Log log, Level all, Level ours) {
        Logger root = Logger.getLogger("");
        for (Handler old : root.getHandlers()) {
            root.removeHandler(old);
        }
        root.setLevel(all);
        log.ours.setLevel(ours);
        root.addHandler(log);
    }

    @Override
    public void publish(LogRecord event) {
        if (!isLoggable(event)) {
            return;
        }
        if (event.getThrown() != null) {
            each.accept(event.getThrown());
        }
        to.print(format.format(event));
        to.flush();
    }

    @Override
    public void flush() {
        to.flush();
    }

    /** The stream belongs to the terminal. */
    @Override
    public void close() {
        flush();
    }
}
