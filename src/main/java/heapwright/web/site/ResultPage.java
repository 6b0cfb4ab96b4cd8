package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.report.AdviceJson;
import heapwright.report.Words;
import heapwright.web.guard.Refusal;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.ResultView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The result of a checkup, as a page, as JSON and as a calendar of the follow-ups. */
final class ResultPage {

    private final Site site;
    private final Renderer renderer;
    private final Piles piles;
    private final Consultation consultation;
    private final Keepers keepers;

    ResultPage(Site site, Renderer renderer) {
        this.site = site;
        this.renderer = renderer;
        this.piles = new Piles(site, renderer.texts());
        this.consultation = new Consultation(site, renderer.texts());
        this.keepers = new Keepers(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        for (String here : List.of("/result", "/piles/{id}/checkup/result")) {
            routes.get(here, this::show);
            routes.get(here + "/advice.json", ctx -> json(ctx, advice(ctx)));
            routes.get(here + "/look-again.ics", ctx -> calendar(ctx, advice(ctx)));
        }
    }

    private void show(Context ctx) throws IOException {
        CheckupAnswers said = CheckupAnswers.ofAddress(ctx::queryParam, site.today());
        CheckupSubject subject = CheckupSubject.of(ctx, piles);
        Consultation.Consulted consulted =
                consultation.of(said, DisplaySettings.of(ctx).units(), subject.pile());
        if (consulted.advice().isEmpty() || said.nothing()) {
            ctx.redirect(subject.questions() + "?" + said.query(), HttpStatus.SEE_OTHER);
            return;
        }
        String query = "?" + said.query();
        show(
                ctx,
                consulted.advice().get(),
                new ResultView.Links(
                        subject.questions() + query,
                        subject.result() + "/advice.json" + query,
                        subject.result() + "/look-again.ics" + query,
                        said.query(),
                        subject.stored()
                                .map(s -> new ResultView.Into(
                                        subject.questions() + "/note", s.pile().name(), piles.day(said.on()))),
                        Optional.empty()));
    }

    /** Sends the page of a piece of advice. */
    void show(Context ctx, Advice advice, ResultView.Links links) {
        Words words = renderer.words(ctx);
        ResultView view = new ResultView(
                new AdviceViews(words).view(advice),
                links,
                words.assumed(advice.pile()),
                links.makesPile() ? keepers.offered(advice.pile()) : Optional.empty());
        renderer.page(
                ctx, renderer.texts().of("result.title", advice.pile().name()), Page.Door.CHECKUP, "result", view);
    }

    /** Sends advice as JSON. */
    void json(Context ctx, Advice advice) {
        String document = new AdviceJson(renderer.words(ctx), site.version()).write(advice, true);
        ctx.header("Content-Disposition", "attachment; filename=\"advice.json\"");
        ctx.contentType("application/json").result(document);
    }

    /** Sends the follow-ups of advice as a calendar. */
    void calendar(Context ctx, Advice advice) {
        if (advice.steps().isEmpty()) {
            throw new Refusal(404, "no-steps");
        }
        ctx.header("Content-Disposition", "attachment; filename=\"look-again.ics\"");
        ctx.contentType("text/calendar; charset=utf-8")
                .result(new FollowUps(renderer.words(ctx))
                        .calendar(advice, site.clock().instant()));
    }

    private Advice advice(Context ctx) throws IOException {
        CheckupAnswers said = CheckupAnswers.ofAddress(ctx::queryParam, site.today());
        return consultation
                .of(
                        said,
                        DisplaySettings.of(ctx).units(),
                        CheckupSubject.of(ctx, piles).pile())
                .advice()
                .orElseThrow(() -> new Refusal(422, "request"));
    }
}
