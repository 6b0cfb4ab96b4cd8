package heapwright.web.work;

import heapwright.web.guard.BodyDrain;
import heapwright.web.guard.SoundRequests;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import io.javalin.router.HandlerWrapper;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.CompletableFuture;

/**
 * Bounds the work of the server. What needs the rules, the model or the whole folder is done by a few threads of its
 * own, the large documents by one more, so that the threads which listen are free for the rest. Who finds the queue
 * full, or waits in it too long, is asked to come again: 503 with Retry-After.
 */
public final class Workload implements HandlerWrapper, AutoCloseable {

    private static final Set<HandlerType> REQUESTS = Set.of(
            HandlerType.GET,
            HandlerType.HEAD,
            HandlerType.POST,
            HandlerType.PUT,
            HandlerType.PATCH,
            HandlerType.DELETE);

    private final Intake intake;
    private final BodyDrain drain;
    private final Lane usual;
    private final Lane large;

    /**
     * @param bounds how much at once
     * @param largestBody the longest body that is read, in bytes
     * @param drain hears out who sends a body where none is wanted, before any work is done
     * @param stop how long work under way may take when the server is stopped
     */
    public Workload(Bounds bounds, long largestBody, BodyDrain drain, Duration stop) {
        this.drain = drain;
        this.intake = new Intake(bounds.largeBody(), bounds.large(), largestBody);
        this.usual = new Lane("work", bounds.threads(), bounds.waiting(), bounds.patience(), stop);
        this.large = new Lane("large", 1, bounds.large(), bounds.largePatience(), stop);
    }

    @Override
    public Handler wrap(Endpoint endpoint) {
        if (!REQUESTS.contains(endpoint.method)) {
            // What comes before a request must not take its body in: guards and bounds stand first.
            return endpoint.handler;
        }
        Handler handler = SoundRequests.read(endpoint.handler);
        Handler bounded =
                switch (Kind.of(endpoint)) {
                    case LIGHT -> handler;
                    case CHANGE -> ctx -> change(ctx, handler);
                    case WORK -> ctx -> work(ctx, handler);
                };
        return ctx -> {
            intake.bound(ctx);
            if (!SoundRequests.takesBody(ctx)) {
                drain.handle(ctx);
            }
            bounded.handle(ctx);
        };
    }

    private void change(Context ctx, Handler handler) throws Exception {
        if (!intake.large(ctx)) {
            handler.handle(ctx);
            return;
        }
        intake.enter(ctx);
        try {
            handler.handle(ctx);
        } finally {
            intake.leave();
        }
    }

    private void work(Context ctx, Handler handler) {
        if (!intake.large(ctx)) {
            SoundRequests.hearOut(ctx);
            ctx.future(() -> usual.submit(() -> handler.handle(ctx), () -> Busy.refusal(ctx)));
            return;
        }
        intake.enter(ctx);
        CompletableFuture<Void> done;
        try {
            SoundRequests.hearOut(ctx);
            done = large.submit(() -> handler.handle(ctx), () -> Busy.refusal(ctx));
        } catch (RuntimeException fault) {
            intake.leave();
            throw fault;
        }
        CompletableFuture<Void> left = done.whenComplete((nothing, fault) -> intake.leave());
        ctx.future(() -> left);
    }

    @Override
    public void close() {
        usual.close();
        large.close();
    }
}
