package heapwright.web;

import java.time.Duration;

/**
 * How long the server waits for others.
 *
 * @param idle for the next byte, either way
 * @param whole for the whole of a request from its first byte
 * @param stop for the requests under way when it is stopped
 */
record Timeouts(Duration idle, Duration whole, Duration stop) {

    /** A phone at the far end of the garden sends a pile document in a second or two. Our judgement. */
    static final Timeouts USUAL = new Timeouts(Duration.ofSeconds(30), Duration.ofSeconds(30), Duration.ofSeconds(5));
}
