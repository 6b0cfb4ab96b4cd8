package heapwright.cli;

/** What the person gave cannot be used; the message says what was found, what is allowed and an example. */
final class UsageFault extends RuntimeException {

    UsageFault(String message) {
        super(message);
    }
}
