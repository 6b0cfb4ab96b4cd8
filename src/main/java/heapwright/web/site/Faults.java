package heapwright.web.site;

import heapwright.web.guard.Refusal;
import heapwright.web.guard.Trouble;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns every way of failing into an answer a person or a program can use; a stack trace goes to the log only. */
public final class Faults {

    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);
    private static final int OURS = 500;

    private final Renderer renderer;

    Faults(Renderer renderer) {
        this.renderer = renderer;
    }

    void register(RoutesConfig routes) {
        routes.exception(Refusal.class, (refusal, ctx) -> tell(ctx, refusal));
        routes.exception(
                HttpResponseException.class,
                (fault, ctx) -> tell(ctx, new Refusal(fault.getStatus(), key(fault.getStatus()))));
        routes.exception(Trouble.class, (trouble, ctx) -> trouble.send(ctx));
        routes.exception(Exception.class, (fault, ctx) -> {
            LOG.error("A request failed", fault);
            tell(ctx, new Refusal(OURS, "ours"));
        });
    }

    private void tell(Context ctx, Refusal refusal) {
        if (ctx.path().startsWith("/api/")) {
            Trouble.of(refusal.status(), renderer.texts().of("refused." + refusal.key()))
                    .send(ctx);
        } else {
            renderer.refusal(ctx, refusal);
        }
    }

    private static String key(int status) {
        return switch (status) {
            case 404 -> "missing";
            case 405 -> "method";
            case 413 -> "large";
            default -> "request";
        };
    }
}
