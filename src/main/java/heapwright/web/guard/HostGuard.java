package heapwright.web.guard;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Locale;
import java.util.Set;

/**
 * Serves only requests that name this machine in their Host header. A page elsewhere whose name is made to point here
 * (DNS rebinding) names itself, and is turned away.
 */
public final class HostGuard implements Handler {

    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    private final String host;
    private final boolean everywhere;

    /** @param host the address that the server listens on */
    public HostGuard(String host) {
        this.host = host.toLowerCase(Locale.ROOT);
        this.everywhere = Addresses.everywhere(host);
    }

    @Override
    public void handle(Context ctx) {
        String given = ctx.header("Host");
        if (given == null
                || !allowed(name(given.toLowerCase(Locale.ROOT)), ctx.req().getLocalAddr())) {
            throw new Refusal(421, "host");
        }
    }

    private boolean allowed(String name, String local) {
        if (LOOPBACK.contains(name) || name.equals(host) || name.equals("[" + host + "]")) {
            return true;
        }
        return everywhere && (name.equals(local) || Addresses.own(name));
    }

    private static String name(String header) {
        int colon = header.lastIndexOf(':');
        return colon > header.lastIndexOf(']') ? header.substring(0, colon) : header;
    }
}
