package heapwright.web.guard;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;

/**
 * Reads a request before a page does. Whatever goes wrong in the reading of what came in is the fault of what came in,
 * however the library below says so: a broken escape in the address, an alphabet nobody knows, a chunk or a part that is
 * none. What is read once is kept by the library, so nothing is read twice.
 */
public final class SoundRequests {

    private static final Set<String> WITH_BODY = Set.of("POST", "PUT", "PATCH");

    /** How Jetty says that parts go beyond its limits; it has no exception of their own for it. */
    private static final Pattern TOO_LARGE = Pattern.compile("larger than|too many|exceed", Pattern.CASE_INSENSITIVE);

    private SoundRequests() {}

    /** Turns an address away that does not decode; the router would fail on it. */
    public static void address(Context ctx) {
        try {
            URLDecoder.decode(ctx.req().getRequestURI(), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException broken) {
            throw new Refusal(400, "request");
        }
    }

    /** Takes the body in before its turn comes, so that no slow sender holds up who works. Parts are taken one by one. */
    public static void hearOut(Context ctx) {
        sound(() -> {
            // An alphabet that is not known is found out when the type is asked for.
            String type = ctx.contentType();
            if (type == null || !type.startsWith("multipart/")) {
                ctx.bodyAsBytes();
            }
        });
    }

    /** Does what a handler does once the whole request has been read. */
    public static Handler read(Handler handler) {
        return ctx -> {
            if (WITH_BODY.contains(ctx.req().getMethod())) {
                hearOut(ctx);
                sound(() -> {
                    if (ctx.isFormUrlencoded() || ctx.isMultipartFormData()) {
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
        } catch (HttpResponseException told) {
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
            if (cause instanceof IllegalStateException
                    && TOO_LARGE.matcher(String.valueOf(cause.getMessage())).find()) {
                return new Refusal(413, "large");
            }
        }
        return new Refusal(400, "request");
    }
}
