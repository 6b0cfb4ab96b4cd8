package heapwright.web.guard;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Semaphore;

/**
 * Hears a sender out before it is answered. Who is answered and cut off while still sending does not read the answer: a
 * browser says that the connection broke. So whatever of a body nobody has read, for whatever reason, is read and thrown
 * away, up to a bound.
 */
public final class BodyDrain implements Handler {

    private static final int AT_ONCE = 16;
    private static final int BUFFER = 8 * 1024;

    /** A body that is not kept is listened to for so many times the longest that is: a picture sent by mistake. Judgement. */
    private static final int HEARD_OUT = 16;

    private final long most;
    private final Semaphore places = new Semaphore(AT_ONCE);

    /** @param longest the longest body that is read, in bytes */
    public BodyDrain(long longest) {
        this.most = HEARD_OUT * longest;
    }

    /** Reads what is left of the body; nothing, where sixteen others are being heard out at this moment. */
    @Override
    public void handle(Context ctx) {
        boolean none = ctx.req().getContentLengthLong() <= 0 && ctx.header("Transfer-Encoding") == null;
        if (none || !places.tryAcquire()) {
            return;
        }
        try {
            InputStream in = ctx.req().getInputStream();
            byte[] buffer = new byte[BUFFER];
            long rest = most;
            for (int read = 0; read >= 0 && rest > 0; rest -= read) {
                read = in.read(buffer);
            }
        } catch (IOException | RuntimeException broken) {
            // Jetty tells of a broken chunk by either. There is no more to hear, and what to answer is known by now.
            return;
        } finally {
            places.release();
        }
    }
}
