package heapwright.logger;

/** A logger's file that cannot be used as it is; the message says what was found and what would help. */
public final class LoggerFault extends RuntimeException {

    LoggerFault(String message) {
        super(message, null, false, false);
    }
}
