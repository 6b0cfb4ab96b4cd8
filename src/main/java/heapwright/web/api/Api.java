package heapwright.web.api;

import heapwright.web.site.Site;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;

/** The interface for programs; {@code /api/openapi.json} describes it. */
public final class Api {

    private static final String DESCRIPTION = "/heapwright/web/openapi.json";

    private final Site site;

    public Api(Site site) {
        this.site = site;
    }

    /** Makes its addresses known. */
    public void register(RoutesConfig routes) {
        Documents documents = new Documents(site.reader(), site.catalogue());
        AdviceApi advice = new AdviceApi(site, documents);
        routes.get("/api/openapi.json", Api::describe);
        advice.register(routes);
        new PilesApi(site, documents, advice).register(routes);
        new KnowledgeApi(site.advisor().knowledge()).register(routes);
    }

    private static void describe(Context ctx) throws IOException {
        try (InputStream in = Api.class.getResourceAsStream(DESCRIPTION)) {
            ctx.contentType("application/json").result(in.readAllBytes());
        }
    }
}
