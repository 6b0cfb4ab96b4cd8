package heapwright.web;

/** The port cannot be had; the message says what to do. */
public final class PortTakenException extends RuntimeException {

    private final int port;

    PortTakenException(int port, Throwable cause) {
        super("Port " + port + " cannot be used: " + cause.getMessage(), cause);
        this.port = port;
    }

    public int port() {
        return port;
    }
}
