package heapwright.web.work;

import heapwright.web.guard.Refusal;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Semaphore;

/** Takes in the bodies of requests: only so many large ones at once, since each stays in memory until it is answered. */
final class Intake {

    private static final int DRAINED_AT_ONCE = 16;
    private static final int BUFFER = 8 * 1024;

    /** A body that is not read is listened to for so many times the longest that is: a picture sent by mistake. Judgement. */
    private static final int HEARD_OUT = 16;

    private static final int TOO_LARGE = 413;

    private final int largeBody;
    private final long longest;
    private final Semaphore places;
    private final Semaphore drains = new Semaphore(DRAINED_AT_ONCE);

    /**
     * @param largeBody from how many bytes a body is large
     * @param most how many of those may be here at once
     * @param longest the longest body that is read, in bytes
     */
    Intake(int largeBody, int most, long longest) {
        this.largeBody = largeBody;
        this.places = new Semaphore(most);
        this.longest = longest;
    }

    /** Whether the body of a request is large; one that does not say its length counts as such. */
    boolean large(Context ctx) {
        long length = ctx.req().getContentLengthLong();
        return length >= largeBody || length < 0 && ctx.header("Transfer-Encoding") != null;
    }

    /**
     * Turns a body away that says it is longer than any that is read.
     *
     * @throws Refusal when it is; the sender is heard out first, else it would not listen to the answer
     */
    void bound(Context ctx) throws IOException {
        if (ctx.req().getContentLengthLong() > longest) {
            drain(ctx);
            throw new Refusal(TOO_LARGE, "large");
        }
    }

    /**
     * Gives a large body a place; {@link #leave} when it is answered.
     *
     * @throws Refusal when there is none left; the sender is heard out first, else it would not listen to the answer
     */
    void enter(Context ctx) throws IOException {
        if (!places.tryAcquire()) {
            drain(ctx);
            throw Busy.refusal(ctx);
        }
    }

    void leave() {
        places.release();
    }

    private void drain(Context ctx) throws IOException {
        if (drains.tryAcquire()) {
            try {
                InputStream in = ctx.req().getInputStream();
                byte[] buffer = new byte[BUFFER];
                long rest = HEARD_OUT * longest;
                for (int read = 0; read >= 0 && rest > 0; rest -= read) {
                    read = in.read(buffer);
                }
            } finally {
                drains.release();
            }
        }
    }
}
