package heapwright.web.work;

import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import java.util.Set;

/** What a request costs. */
enum Kind {
    /** Needs neither the rules nor the model nor the folder; answered at once, whatever else is going on. */
    LIGHT,
    /** Changes the folder, and so may wait for the disk or for another program; no thread that reckons waits with it. */
    CHANGE,
    /** Needs the rules, the model or all of the folder. */
    WORK;

    private static final Set<String> LIGHT_PATHS = Set.of(
            "/",
            "/settings",
            "/api/openapi.json",
            "/api/signs",
            "/api/causes",
            "/api/remedies",
            "/api/materials",
            "/api/sources");
    private static final Set<String> CHANGING_FORMS = Set.of(
            "/piles",
            "/build/keep",
            "/open/keep",
            "/piles/{id}/delete",
            "/piles/fetch-back",
            "/piles/{id}/edit",
            "/piles/{id}/note",
            "/piles/{id}/notes/{mark}",
            "/piles/{id}/notes/{mark}/take-back",
            "/piles/{id}/notes/{mark}/put-back",
            "/piles/{id}/checkup/note");

    /** The kind of an address; one that is not known here counts as work, so that nothing costly is forgotten. */
    static Kind of(Endpoint endpoint) {
        String path = endpoint.path;
        if (LIGHT_PATHS.contains(path) || path.startsWith("/assets/") || path.startsWith("/knowledge")) {
            return LIGHT;
        }
        boolean reads = endpoint.method == HandlerType.GET || endpoint.method == HandlerType.HEAD;
        boolean folder = path.startsWith("/api/piles") || path.startsWith("/api/removed");
        return !reads && (folder || CHANGING_FORMS.contains(path)) ? CHANGE : WORK;
    }
}
