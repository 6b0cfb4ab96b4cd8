package heapwright.web.site;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The questions of a checkup as a blank list, to be printed and taken out to the heap. */
final class ChecklistPage {

    private final Renderer renderer;

    ChecklistPage(Renderer renderer) {
        this.renderer = renderer;
    }

    void register(RoutesConfig routes) {
        routes.get("/checkup/blank", this::show);
    }

    private void show(Context ctx) {
        renderer.page(
                ctx,
                renderer.texts().of("checklist.title"),
                Page.Door.CHECKUP,
                "checklist",
                new CheckupViews(renderer.words(ctx), renderer.texts()).blank());
    }
}
