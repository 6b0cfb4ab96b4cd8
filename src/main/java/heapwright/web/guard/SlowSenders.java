package heapwright.web.guard;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Closes connections whose sender lets a request trickle in: a byte now and then is never idle, and would hold its place
 * for hours. A sender that says nothing at all is left to the idle limit of the connector, and an answer that takes long
 * to work out is nobody's fault.
 */
public final class SlowSenders implements Connection.Listener {

    /** How often a connection is looked at within the limit. */
    private static final int LOOKS = 4;

    private final long limit;
    private final Scheduler scheduler;

    /**
     * @param limit for the whole of a request from its first byte; it is kept to within half as much again
     * @param scheduler looks at connections from time to time
     */
    public SlowSenders(Duration limit, Scheduler scheduler) {
        this.limit = limit.toNanos();
        this.scheduler = scheduler;
    }

    @Override
    public void onOpened(Connection connection) {
        watch(connection, new Seen(0, 0, 0, false, 0));
    }

    private void watch(Connection connection, Seen before) {
        scheduler.schedule(() -> look(connection, before), limit / LOOKS, TimeUnit.NANOSECONDS);
    }

    private void look(Connection connection, Seen before) {
        if (!connection.getEndPoint().isOpen()) {
            return;
        }
        Seen now = before.next(connection, System.nanoTime());
        if (now.coming() && now.bytes() > before.bytes() && System.nanoTime() - now.since() > limit) {
            connection.getEndPoint().close(new TimeoutException("the request came too slowly"));
        } else {
            watch(connection, now);
        }
    }

    /**
     * What a connection had done at a look.
     *
     * @param asked requests whose head had come in whole
     * @param answered requests answered
     * @param bytes bytes that had come in
     * @param coming whether a request was coming in
     * @param since when it was first seen coming in
     */
    private record Seen(long asked, long answered, long bytes, boolean coming, long since) {

        private Seen next(Connection connection, long time) {
            long nowAsked = connection.getMessagesIn();
            long nowAnswered = connection.getMessagesOut();
            long nowBytes = connection.getBytesIn();
            boolean moved = nowAsked != asked || nowAnswered != answered;
            boolean starts = !moved && !coming && nowBytes != bytes;
            return new Seen(nowAsked, nowAnswered, nowBytes, starts || coming && !moved, starts ? time : since);
        }
    }
}
