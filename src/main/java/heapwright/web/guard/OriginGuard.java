package heapwright.web.guard;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Set;

/** Lets no other site's page send anything here: a browser says where a request comes from, and it must be from here. */
public final class OriginGuard implements Handler {

    private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN = Set.of("same-origin", "none");

    @Override
    public void handle(Context ctx) {
        if (READS.contains(ctx.req().getMethod())) {
            return;
        }
        String site = ctx.header("Sec-Fetch-Site");
        String origin = ctx.header("Origin");
        boolean foreignSite = site != null && !OWN.contains(site);
        boolean foreignOrigin = origin != null && !origin.equalsIgnoreCase("http://" + ctx.header("Host"));
        if (foreignSite || foreignOrigin) {
            throw new Refusal(403, "origin");
        }
    }
}
