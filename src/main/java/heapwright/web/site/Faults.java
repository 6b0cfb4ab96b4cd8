package heapwright.web.site;

import heapwright.journal.JournalFault;
import heapwright.web.guard.ProblemResponse;
import heapwright.web.guard.Refusal;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Turns every way of failing into an answer a person or a program can use; a stack trace goes to the log only. A form
 * that was sound and could not be taken comes back with all that was typed, to be sent again.
 */
public final class Faults {

    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);
    private static final int OURS = 500;
    private static final int BUSY = 503;

    /** When a program that was told to come back may do so, in seconds; a save that goes before takes far less. */
    private static final String SOON = "2";

    /** What is over by itself. */
    private static final Set<String> PASSING = Set.of("locked", "crowded");

    private final Renderer renderer;

    Faults(Renderer renderer) {
        this.renderer = renderer;
    }

    void register(RoutesConfig routes) {
        routes.exception(Refusal.class, this::tell);
        routes.exception(
                HttpResponseException.class,
                (fault, ctx) -> page(ctx, new Refusal(fault.getStatus(), key(fault.getStatus()))));
        routes.exception(ProblemResponse.class, (trouble, ctx) -> trouble.send(ctx));
        routes.exception(JournalFault.class, (fault, ctx) -> {
            LOG.warn("The folder of piles: {}", fault.getMessage(), fault);
            tell(surroundings(fault), ctx);
        });
        routes.exception(Exception.class, (fault, ctx) -> {
            LOG.error("A request failed", fault);
            tell(new Refusal(OURS, "ours"), ctx);
        });
    }

    /** What stood in the way, for a person: the message of the fault itself names the folder, which is nobody's business. */
    private static Refusal surroundings(JournalFault fault) {
        return switch (fault.kind()) {
            case FULL -> new Refusal(507, "full");
            case READ_ONLY -> new Refusal(BUSY, "read-only");
            case UNREADABLE -> new Refusal(BUSY, "unreadable");
            case LOCKED -> new Refusal(BUSY, "locked");
            case CROWDED -> new Refusal(BUSY, "crowded");
            case NO_FOLDER -> new Refusal(BUSY, "no-folder");
            case OBSTRUCTED -> new Refusal(409, "obstructed", fault.name());
            case FAILED -> new Refusal(BUSY, "disk");
        };
    }

    private void tell(Refusal refusal, Context ctx) {
        if (PASSING.contains(refusal.key())) {
            ctx.header("Retry-After", SOON);
        }
        if (!api(ctx) && refusal.canBeSentAgain() && new SentForm(ctx).isOne()) {
            renderer.again(ctx, refusal);
        } else {
            page(ctx, refusal);
        }
    }

    private void page(Context ctx, Refusal refusal) {
        if (api(ctx)) {
            ProblemResponse.of(refusal.status(), renderer.text(refusal)).send(ctx);
        } else {
            renderer.refusal(ctx, refusal);
        }
    }

    private static boolean api(Context ctx) {
        return ctx.path().startsWith("/api/");
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
