package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.journal.Noting;
import heapwright.journal.Stored;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import heapwright.pile.ReadResult;
import heapwright.report.Words;
import heapwright.web.view.AdviceView;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.CourseViews;
import heapwright.web.view.PileView;
import heapwright.web.view.ResultView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One pile: its course, what to do, and the form for noting what was seen and done. */
final class PilePage {

    private final Site site;
    private final Renderer renderer;
    private final Saver saver;
    private final Piles piles;
    private final ResultPage results;

    PilePage(Site site, Renderer renderer, Saver saver, ResultPage results) {
        this.site = site;
        this.renderer = renderer;
        this.saver = saver;
        this.piles = new Piles(site, renderer.texts());
        this.results = results;
    }

    void register(RoutesConfig routes) {
        routes.get("/piles/{id}", this::open);
        routes.post("/piles/{id}/note", this::note);
        routes.get("/piles/{id}/result", this::result);
        routes.get("/piles/{id}/advice.json", ctx -> results.json(ctx, advice(piles.stored(ctx))));
        routes.get("/piles/{id}/look-again.ics", ctx -> results.calendar(ctx, advice(piles.stored(ctx))));
        routes.get("/piles/{id}/pile.json", this::export);
    }

    /** Advice for today, or for the last day of the record if that is later. */
    private Advice advice(Stored stored) {
        return site.desk().advise(Noting.advisedOn(stored.pile(), site.today()));
    }

    private void open(Context ctx) throws IOException {
        show(ctx, piles.stored(ctx), Map.of("date", site.today().toString()), List.of());
    }

    private void show(Context ctx, Stored stored, Map<String, String> typed, List<Fault> faults) {
        Words words = renderer.words(ctx);
        Pile pile = stored.pile();
        Advice given = advice(stored);
        AdviceView advice = new AdviceViews(words).view(given);
        PileView view = new PileView(
                Piles.address(stored.id()),
                stored.id(),
                pile.name(),
                stored.version(),
                renderer.texts().of(pile.builtAssumed() ? "pile.built.assumed" : "pile.built", piles.day(pile.built())),
                pile.recipe().stream()
                        .map(i -> Names.shown(site.knowledge(), i.material()))
                        .toList(),
                new CourseViews(words).view(pile, given.story()),
                advice.headline(),
                advice.danger(),
                advice.first().map(AdviceView.StepView::name),
                advice.clashes(),
                new NoteForm(site, words, renderer.texts()).view(typed, faults),
                ctx.queryParam("noted") != null);
        renderer.page(ctx, pile.name(), Page.Door.PILES, "pile", view);
    }

    private void note(Context ctx) throws IOException {
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        Map<String, String> typed = NoteForm.typed(ctx);
        NoteForm form = new NoteForm(site, renderer.words(ctx), renderer.texts());
        ReadResult read = form.noted(stored.pile(), typed);
        if (read.pile().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, stored, typed, form.faults(read, typed));
            return;
        }
        saver.save(ctx, stored, read.pile().get(), faults -> show(ctx, stored, typed, faults));
    }

    private void result(Context ctx) throws IOException {
        Stored stored = piles.stored(ctx);
        String address = Piles.address(stored.id());
        results.show(
                ctx,
                advice(stored),
                new ResultView.Links(
                        address, address + "/advice.json", address + "/look-again.ics", "", Optional.empty()));
    }

    private void export(Context ctx) throws IOException {
        Stored stored = piles.stored(ctx);
        ctx.header("Content-Disposition", "attachment; filename=\"pile.json\"");
        ctx.contentType("application/json").result(new PileWriter().bytes(stored.pile()));
    }
}
