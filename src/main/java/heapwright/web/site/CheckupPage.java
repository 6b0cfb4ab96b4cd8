package heapwright.web.site;

import heapwright.journal.Noting;
import heapwright.journal.Stored;
import heapwright.knowledge.Sign;
import heapwright.pile.Entry;
import heapwright.pile.ReadResult;
import heapwright.web.view.CheckupView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The checkup: questions by sense, with the most telling one on top. It changes nothing on this machine, so its form
 * needs no seal; the answers go on in the address. Only noting them in a pile of the folder changes something.
 */
final class CheckupPage {

    private final Site site;
    private final Renderer renderer;
    private final Saver saver;
    private final Piles piles;
    private final Consultation consultation;

    CheckupPage(Site site, Renderer renderer, Saver saver) {
        this.site = site;
        this.renderer = renderer;
        this.saver = saver;
        this.piles = new Piles(site, renderer.texts());
        this.consultation = new Consultation(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        for (String here : List.of("/checkup", "/piles/{id}/checkup")) {
            routes.get(here, ctx -> show(ctx, CheckupAnswers.ofAddress(ctx::queryParam, site.today())));
            routes.post(here, this::answered);
            routes.post(here + "/live", this::live);
        }
        routes.post("/piles/{id}/checkup/note", this::note);
    }

    private Consultation.Consulted consulted(Context ctx, CheckupAnswers said) throws IOException {
        return consultation.of(
                said,
                DisplaySettings.of(ctx).units(),
                CheckupSubject.of(ctx, piles).pile());
    }

    private void show(Context ctx, CheckupAnswers said) throws IOException {
        show(ctx, said, consulted(ctx, said));
    }

    private void show(Context ctx, CheckupAnswers said, Consultation.Consulted consulted) throws IOException {
        if (!consulted.faults().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        CheckupViews views = new CheckupViews(renderer.words(ctx), renderer.texts());
        CheckupView view = views.view(
                said,
                consulted,
                CheckupSubject.of(ctx, piles),
                DisplaySettings.of(ctx).us());
        renderer.page(ctx, renderer.texts().of("checkup.title"), Page.Door.CHECKUP, "checkup", view);
    }

    private void answered(Context ctx) throws IOException {
        CheckupAnswers said = form(ctx);
        CheckupSubject subject = CheckupSubject.of(ctx, piles);
        if (!consulted(ctx, said).faults().isEmpty()) {
            show(ctx, said);
        } else if (ctx.formParam("next") != null) {
            ctx.redirect(subject.questions() + "?" + said.query() + "#next", HttpStatus.SEE_OTHER);
        } else {
            ctx.redirect(subject.result() + "?" + said.query(), HttpStatus.SEE_OTHER);
        }
    }

    private void live(Context ctx) throws IOException {
        CheckupAnswers said = form(ctx);
        CheckupSubject subject = CheckupSubject.of(ctx, piles);
        ctx.header("X-Heapwright-Address", subject.questions() + "?" + said.query());
        renderer.part(
                ctx,
                "live",
                new CheckupViews(renderer.words(ctx), renderer.texts()).live(said, consulted(ctx, said), subject));
    }

    /** Notes the answers in the log of the pile that they are about. */
    private void note(Context ctx) throws IOException {
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        String answers = Optional.ofNullable(ctx.formParam("answers")).orElse("");
        CheckupAnswers said = CheckupAnswers.ofQuery(answers, site.today());
        ReadResult read = consultation.read(said, DisplaySettings.of(ctx).units(), stored.pile());
        if (read.pile().isEmpty() || said.nothing()) {
            show(ctx, said);
            return;
        }
        Entry entry = Noting.last(read.pile().get(), said.on()).orElseThrow();
        saver.change(
                ctx,
                stored.id(),
                pile -> Noting.noted(pile, entry),
                "1",
                faults -> show(ctx, said, new Consultation.Consulted(Optional.empty(), Optional.empty(), faults)));
    }

    /** The form's answers, with the answer to the question on top where its button was pressed. */
    private CheckupAnswers form(Context ctx) {
        CheckupAnswers said = CheckupAnswers.ofForm(ctx::formParam, site.today());
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
