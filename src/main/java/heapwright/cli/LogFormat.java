package heapwright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.logging.Formatter;
import java.util.logging.LogRecord;

/** Time, weight, place and what happened in one line; below it the trace, if there is one. */
final class LogFormat extends Formatter {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    @Override
    public String format(LogRecord event) {
        StringWriter text = new StringWriter();
        PrintWriter lines = new PrintWriter(text);
        lines.println(TIME.format(LocalDateTime.ofInstant(event.getInstant(), ZoneId.systemDefault())
                        .truncatedTo(ChronoUnit.SECONDS))
                + " " + event.getLevel().getName() + " " + event.getLoggerName() + ": "
                + oneLine(formatMessage(event)));
        trace(event.getThrown(), lines);
        lines.flush();
        return text.toString();
    }

    /** What was sent from outside must not look like a line of ours. */
    private static String oneLine(String message) {
        return message.replaceAll("\\p{Cntrl}+", " ");
    }

    private static void trace(Throwable thrown, PrintWriter lines) {
        for (Throwable one = thrown; one != null; one = one.getCause()) {
            lines.println((one == thrown ? "  " : "  caused by ") + oneLine(one.toString()));
            for (StackTraceElement place : one.getStackTrace()) {
                lines.println("    at " + place);
            }
        }
    }
}
