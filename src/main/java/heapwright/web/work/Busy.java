package heapwright.web.work;

import heapwright.web.guard.Refusal;
import io.javalin.http.Context;

/** Turns a request away for now. */
final class Busy {

    private static final int UNAVAILABLE = 503;

    /** When to ask again, in seconds: a usual queue has emptied by then. Our judgement. */
    private static final String RETRY_AFTER = "5";

    private Busy() {}

    static Refusal refusal(Context ctx) {
        ctx.header("Retry-After", RETRY_AFTER);
        return new Refusal(UNAVAILABLE, "busy");
    }
}
