package heapwright.web.guard;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeoutException;

/**
 * Reads a request before a page does. Whatever goes wrong in the reading of what came in is the fault of what came in,
 * however the library below says so: a broken escape in the address, an alphabet nobody knows, a chunk that is none. Parts
 * are never looked into, since but one form of ours sends any. What is read once is kept by the library, so nothing is read
 * twice.
 */
public final class SoundRequests {

    /** The one address that takes a file, and so a form in parts; they are read by {@link SentFile}. */
    public static final String OPEN = "/open";

    private static final Set<String> WITH_BODY = Set.of("POST", "PUT", "PATCH");

    private SoundRequests() {}

    /** Turns an address away that does not decode; the router would fail on it. */
    public static void address(Context ctx) {
        try {
            URLDecoder.decode(ctx.req().getRequestURI(), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            throw new Refusal(400, "request");
        }
    }

    /** Whether requests of this method bring a body that somebody reads. */
    public static boolean takesBody(Context ctx) {
        return WITH_BODY.contains(ctx.req().getMethod());
    }

    /**
     * Takes the body in, if somebody reads it, before its turn comes, so that no slow sender holds up who works.
     *
     * @throws Refusal when it does not read, or comes in parts
     */
    public static void hearOut(Context ctx) {
        if (!takesBody(ctx)) {
            return;
        }
        sound(() -> {
            // An alphabet that is not known is found out when the type is asked for.
            String type = ctx.contentType();
            if (type != null
                    && type.toLowerCase(Locale.ROOT).strip().startsWith("multipart/")
                    && !ctx.path().equals(OPEN)) {
                throw new Refusal(415, "parts");
            }
            ctx.bodyAsBytes();
        });
    }

    /** Does what a handler does once the whole request has been read. */
    public static Handler read(Handler handler) {
        return ctx -> {
            if (takesBody(ctx)) {
                hearOut(ctx);
                sound(() -> {
                    if (ctx.isFormUrlencoded()) {
                        ctx.formParamMap();
                    }
                });
            }
            handler.handle(ctx);
        };
    }

    /** The reading of something that came in. */
    private interface Reading {
        void read() throws Exception;
    }

    private static void sound(Reading reading) {
        try {
            reading.read();
        } catch (HttpResponseException | Refusal told) {
            throw told;
        } catch (Exception broken) {
            throw refusal(broken);
        }
    }

    private static Refusal refusal(Exception broken) {
        for (Throwable cause = broken; cause != null; cause = cause.getCause()) {
            if (cause instanceof TimeoutException) {
                return new Refusal(408, "slow");
            }
        }
        return new Refusal(400, "request");
    }
}
