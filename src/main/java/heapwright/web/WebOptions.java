package heapwright.web;

/**
 * Where the page is served.
 *
 * @param host the address to listen on; the loopback address unless the person says otherwise
 * @param port the port, 0 for any that is free
 */
public record WebOptions(String host, int port) {

    /** The address of this machine that no other can reach. */
    public static final String LOOPBACK = "127.0.0.1";

    /** The port that is tried when none is named. */
    public static final int USUAL_PORT = 7310;

    public static WebOptions loopback(int port) {
        return new WebOptions(LOOPBACK, port);
    }
}
