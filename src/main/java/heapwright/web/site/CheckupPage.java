package heapwright.web.site;

import heapwright.knowledge.Sign;
import heapwright.web.view.CheckupView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Arrays;

/**
 * The checkup: questions by sense, with the most telling one on top. It changes nothing on this machine, so its form
 * needs no seal; the answers go on in the address.
 */
final class CheckupPage {

    private static final String HERE = "/checkup";

    private final Site site;
    private final Renderer renderer;
    private final Consultation consultation;

    CheckupPage(Site site, Renderer renderer) {
        this.site = site;
        this.renderer = renderer;
        this.consultation = new Consultation(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        routes.get(HERE, ctx -> show(ctx, Said.ofAddress(ctx::queryParam, site.today())));
        routes.post(HERE, this::answered);
        routes.post(HERE + "/live", this::live);
    }

    private void show(Context ctx, Said said) {
        Consultation.Consulted consulted = consultation.of(said, Look.of(ctx).units());
        if (!consulted.faults().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        CheckupViews views = new CheckupViews(renderer.words(ctx), renderer.texts());
        CheckupView view = views.view(said, consulted, Look.of(ctx).us());
        renderer.page(ctx, renderer.texts().of("checkup.title"), Page.Door.CHECKUP, "checkup", view);
    }

    private void answered(Context ctx) {
        Said said = form(ctx);
        if (!consultation.of(said, Look.of(ctx).units()).faults().isEmpty()) {
            show(ctx, said);
        } else if (ctx.formParam("next") != null) {
            ctx.redirect(HERE + "?" + said.query() + "#next", HttpStatus.SEE_OTHER);
        } else {
            ctx.redirect("/result?" + said.query(), HttpStatus.SEE_OTHER);
        }
    }

    private void live(Context ctx) {
        Said said = form(ctx);
        Consultation.Consulted consulted = consultation.of(said, Look.of(ctx).units());
        ctx.header("X-Heapwright-Address", HERE + "?" + said.query());
        renderer.part(ctx, "live", new CheckupViews(renderer.words(ctx), renderer.texts()).live(said, consulted));
    }

    /** The form's answers, with the answer to the question on top where its button was pressed. */
    private Said form(Context ctx) {
        Said said = Said.ofForm(ctx::formParam, site.today());
        String next = ctx.formParam("next");
        if (next == null) {
            return said;
        }
        int colon = next.lastIndexOf(':');
        String id = next.substring(0, Math.max(0, colon));
        return Arrays.stream(Sign.values())
                .filter(s -> s.id().equals(id))
                .findFirst()
                .map(s -> said.with(s, next.substring(colon + 1)))
                .orElse(said);
    }
}
