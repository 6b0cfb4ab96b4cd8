package heapwright.web.site;

import heapwright.report.Units;
import heapwright.web.guard.Tokens;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;

/** Units and the size of the text. */
final class SettingsPage {

    private final Renderer renderer;
    private final Tokens tokens;

    SettingsPage(Renderer renderer, Tokens tokens) {
        this.renderer = renderer;
        this.tokens = tokens;
    }

    void register(RoutesConfig routes) {
        routes.get(
                "/settings",
                ctx -> renderer.page(
                        ctx,
                        renderer.texts().of("settings.title"),
                        Page.Door.SETTINGS,
                        "settings",
                        ctx.queryParam("saved") != null));
        routes.post("/settings", this::save);
    }

    private void save(Context ctx) {
        tokens.check(ctx);
        Units units = "us".equals(ctx.formParam("units")) ? Units.US : Units.METRIC;
        new DisplaySettings(units, "large".equals(ctx.formParam("text"))).keep(ctx);
        ctx.redirect("/settings?saved=1", HttpStatus.SEE_OTHER);
    }
}
