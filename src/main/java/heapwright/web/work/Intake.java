package heapwright.web.work;

import heapwright.web.guard.Refusal;
import heapwright.web.guard.SoundRequests;
import io.javalin.http.Context;
import java.util.concurrent.Semaphore;

/** Takes in the bodies of requests: only so many large ones at once, since each stays in memory until it is answered. */
final class Intake {

    private static final int TOO_LARGE = 413;

    private final int largeBody;
    private final long longest;
    private final Semaphore places;

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

    /** Whether a request brings a large body to be read; one that does not say its length counts as such. */
    boolean large(Context ctx) {
        if (!SoundRequests.takesBody(ctx)) {
            return false;
        }
        long length = ctx.req().getContentLengthLong();
        return length >= largeBody || length < 0 && ctx.header("Transfer-Encoding") != null;
    }

    /**
     * Turns a body away that says it is longer than any that is read.
     *
     * @throws Refusal when it is
     */
    void bound(Context ctx) {
        if (ctx.req().getContentLengthLong() > longest) {
            throw new Refusal(TOO_LARGE, "large");
        }
    }

    /**
     * Gives a large body a place; {@link #leave} when it is answered.
     *
     * @throws Refusal when there is none left
     */
    void enter(Context ctx) {
        if (!places.tryAcquire()) {
            throw Busy.refusal(ctx);
        }
    }

    void leave() {
        places.release();
    }
}
