package heapwright.web.guard;

import io.javalin.http.Context;
import io.javalin.http.Handler;

/** Headers of every answer: nothing from elsewhere is loaded, nothing in line is run, no other page may frame ours. */
public final class Headers implements Handler {

    private static final String POLICY = String.join(
            "; ",
            "default-src 'none'",
            "script-src 'self'",
            "style-src 'self'",
            "img-src 'self'",
            "connect-src 'self'",
            "form-action 'self'",
            "base-uri 'none'",
            "frame-ancestors 'none'");

    @Override
    public void handle(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("X-Frame-Options", "DENY");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        ctx.header("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()");
        ctx.header("Cache-Control", "no-cache, private");
    }
}
