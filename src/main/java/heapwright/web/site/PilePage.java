package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.advice.Memory;
import heapwright.journal.Noting;
import heapwright.journal.Stored;
import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import heapwright.report.KeptAdvice;
import heapwright.report.MemoryText;
import heapwright.report.Words;
import heapwright.web.view.AdviceView;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.CourseViews;
import heapwright.web.view.PileView;
import heapwright.web.view.PileView.TakenView;
import heapwright.web.view.ResultView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One pile: its course, what to do, and the form for noting what was seen and done. */
final class PilePage {

    /** So many days of the record stand on the page; all of them are a tap away. */
    private static final int ROWS = 60;

    private static final String NOTED = "1";
    private static final List<String> SAID = List.of("corrected", "taken-back", "put-back", "told");

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
        new NotesPage(site, renderer, saver, this::show).register(routes);
        routes.post("/piles/{id}/note", this::note);
        routes.post("/piles/{id}/keep", this::keep);
        routes.post("/piles/{id}/outcome", this::outcome);
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
        show(ctx, piles.stored(ctx), today(), List.of());
    }

    private void show(Context ctx, Stored stored, Map<String, String> typed, List<Fault> faults) {
        Words words = renderer.words(ctx);
        Pile pile = stored.pile();
        Advice given = advice(stored);
        AdviceView advice = new AdviceViews(words).view(given);
        MemoryText memory = new MemoryText(words);
        PileView view = new PileView(
                Piles.address(stored.id()),
                stored.id(),
                pile.name(),
                built(pile),
                pile.recipe().stream()
                        .map(i -> MaterialChoices.shown(site.knowledge(), i.material()))
                        .toList(),
                new CourseViews(words).view(pile, given.story()).latest(ROWS),
                Math.max(0, pile.log().size() - ROWS),
                advice.headline(),
                advice.danger(),
                advice.first().map(AdviceView.StepView::name),
                memory.asking(given.pile()).stream()
                        .map(t -> taken(t, renderer.texts().of("taken.asks", piles.day(t.date()), t.steps())))
                        .toList(),
                memory.waiting(given.pile()).stream()
                        .map(t -> taken(t, renderer.texts().of("taken.waits", t.steps(), piles.day(t.date()))))
                        .toList(),
                Stream.concat(
                                memory.underway(given.pile()).stream()
                                        .map(t ->
                                                renderer.texts().of("taken.underway", t.steps(), piles.day(t.date()))),
                                memory.stale(given.pile()).stream())
                        .toList(),
                Memory.of(given.pile()).waiting().isEmpty()
                        && !new KeptAdvice(words).of(given).isEmpty(),
                advice.clashes(),
                new NoteForm(site, words, renderer.texts()).view(typed, faults),
                stored.pile().log().size() + stored.pile().struck().size(),
                said(ctx));
        renderer.page(ctx, pile.name(), Page.Door.PILES, "pile", view);
    }

    /** What was done just now. */
    private Optional<String> said(Context ctx) {
        String said = ctx.queryParam("noted");
        return said == null
                ? Optional.empty()
                : Optional.of(renderer.texts().of(SAID.contains(said) ? "pile." + said : "pile.noted"));
    }

    private String built(Pile pile) {
        String key = pile.builtAssumed() ? "pile.built.assumed" : pile.builtAbout() ? "pile.built.rough" : "pile.built";
        return renderer.texts().of(key, piles.day(pile.built()));
    }

    private static TakenView taken(MemoryText.Together together, String text) {
        List<TakenView.StepView> steps = new ArrayList<>();
        for (int i = 0; i < together.all().size(); i++) {
            Advised one = together.all().get(i);
            steps.add(new TakenView.StepView(
                    one.date().toString(), one.step(), together.names().get(i)));
        }
        return new TakenView(text, steps);
    }

    private void note(Context ctx) throws IOException {
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        Map<String, String> typed = NoteForm.typed(ctx);
        NoteForm.Noted noted = new NoteForm(site, renderer.words(ctx), renderer.texts()).noted(stored.pile(), typed);
        if (noted.entry().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, stored, typed, noted.faults());
            return;
        }
        Entry entry = noted.entry().get();
        saver.change(
                ctx, stored.id(), pile -> Noting.noted(pile, entry), NOTED, faults -> show(ctx, stored, typed, faults));
    }

    /** Takes today's work on: the page asks later whether it helped. */
    private void keep(Context ctx) throws IOException {
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        Advice advice = advice(stored);
        List<Advised> steps = new KeptAdvice(renderer.words(ctx)).of(advice);
        LocalDate day = advice.pile().asOf();
        saver.change(
                ctx,
                stored.id(),
                pile -> Noting.takenOn(Noting.advisedOn(pile, day), steps),
                NOTED,
                faults -> show(ctx, stored, today(), faults));
    }

    /** Notes what came of steps of a day. */
    private void outcome(Context ctx) throws IOException {
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        Optional<Outcome> told = Arrays.stream(Outcome.values())
                .filter(o -> o != Outcome.OPEN && o.token().equals(ctx.formParam("outcome")))
                .findFirst();
        Optional<LocalDate> date = stored.pile().advised().stream()
                .map(Advised::date)
                .filter(d -> d.toString().equals(ctx.formParam("date")))
                .findFirst();
        List<String> steps = ctx.formParams("step");
        if (told.isEmpty() || date.isEmpty() || steps.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, stored, today(), List.of(new Fault("", renderer.texts().of("taken.unknown"))));
            return;
        }
        saver.change(
                ctx,
                stored.id(),
                pile -> Noting.told(pile, date.get(), steps::contains, told.get(), site.today()),
                NOTED,
                faults -> show(ctx, stored, today(), faults));
    }

    private Map<String, String> today() {
        return Map.of("date", site.today().toString());
    }

    private void result(Context ctx) throws IOException {
        Stored stored = piles.stored(ctx);
        String address = Piles.address(stored.id());
        results.show(
                ctx,
                advice(stored),
                new ResultView.Links(
                        address,
                        address + "/advice.json",
                        address + "/look-again.ics",
                        "",
                        Optional.empty(),
                        Optional.empty()));
    }

    private void export(Context ctx) throws IOException {
        Stored stored = piles.stored(ctx);
        ctx.header("Content-Disposition", "attachment; filename=\"pile.json\"");
        ctx.contentType("application/json").result(new PileWriter().bytes(stored.pile()));
    }
}
