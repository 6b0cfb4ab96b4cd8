package heapwright.web.site;

import heapwright.journal.Noting;
import heapwright.journal.Stored;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.report.CourseText;
import heapwright.web.guard.Refusal;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.NotesView;
import heapwright.web.view.NotesView.LineView;
import heapwright.web.view.NotesView.OneView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The notes of a pile: each can be put right or taken back, and what was taken back can be put back. */
final class NotesPage {

    private static final String NOTES = "/piles/{id}/notes";
    private static final String NOTE = NOTES + "/{mark}";

    private final Site site;
    private final Renderer renderer;
    private final Saver saver;
    private final Piles piles;
    private final Again again;

    /** Shows the page of a pile with a note that could not be kept, and why. */
    interface Again {
        void show(Context ctx, Stored stored, Map<String, String> typed, List<Fault> faults) throws IOException;
    }

    NotesPage(Site site, Renderer renderer, Saver saver, Again again) {
        this.site = site;
        this.renderer = renderer;
        this.saver = saver;
        this.piles = new Piles(site, renderer.texts());
        this.again = again;
    }

    void register(RoutesConfig routes) {
        routes.get(NOTES, ctx -> list(ctx, piles.stored(ctx)));
        routes.get(NOTE, this::open);
        routes.post(NOTE, this::correct);
        routes.get(NOTE + "/take-back", this::ask);
        routes.post(NOTE + "/take-back", this::takeBack);
        routes.post(NOTE + "/put-back", this::putBack);
    }

    private void list(Context ctx, Stored stored) {
        List<Entry> log = new ArrayList<>(stored.pile().log());
        Collections.reverse(log);
        Piles.Part part = piles.part(ctx, log.size());
        NotesView view = new NotesView(
                stored.pile().name(),
                Piles.address(stored.id()),
                lines(ctx, stored, log.subList(part.from(), part.to())),
                lines(ctx, stored, stored.pile().struck()),
                part.view("notes.range", List.of()));
        renderer.page(ctx, renderer.texts().of("notes.title", view.name()), Page.Door.PILES, "notes", view);
    }

    private List<LineView> lines(Context ctx, Stored stored, List<Entry> entries) {
        return entries.stream().map(e -> line(ctx, stored, e)).toList();
    }

    private LineView line(Context ctx, Stored stored, Entry entry) {
        List<String> told = new ArrayList<>(new CourseText(renderer.words(ctx)).happened(entry));
        if (!entry.note().isEmpty()) {
            told.add(renderer.texts().of("notes.words", entry.note()));
        }
        return new LineView(
                Piles.address(stored.id()) + "/notes/" + Noting.mark(entry),
                piles.day(entry.date()),
                told.isEmpty() ? renderer.texts().of("notes.nothing") : String.join("; ", told));
    }

    private NoteForm form(Context ctx) {
        return new NoteForm(site, renderer.words(ctx), renderer.texts());
    }

    private void open(Context ctx) throws IOException {
        Stored stored = piles.stored(ctx);
        Entry entry = entry(ctx, stored).orElseThrow(() -> new Refusal(404, "note-gone"));
        show(ctx, stored, entry, form(ctx).told(entry), List.of());
    }

    private void show(Context ctx, Stored stored, Entry entry, Map<String, String> typed, List<Fault> faults) {
        OneView view = new OneView(
                stored.pile().name(),
                Piles.address(stored.id()),
                line(ctx, stored, entry),
                form(ctx).view(typed, faults));
        renderer.page(ctx, renderer.texts().of("notes.correct"), Page.Door.PILES, "note", view);
    }

    private void correct(Context ctx) throws IOException {
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        Map<String, String> typed = NoteForm.typed(ctx);
        Optional<Entry> old = entry(ctx, stored);
        if (old.isEmpty()) {
            ctx.status(HttpStatus.CONFLICT);
            again.show(
                    ctx, stored, typed, List.of(new Fault("", renderer.texts().of("notes.gone"))));
            return;
        }
        NoteForm.Noted noted = form(ctx).corrected(stored.pile(), old.get(), typed);
        if (noted.entry().isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, stored, old.get(), typed, noted.faults());
            return;
        }
        String mark = Noting.mark(old.get());
        saver.change(
                ctx,
                stored.id(),
                pile -> Noting.noted(
                        Noting.struck(known(pile.log(), mark, pile), mark),
                        noted.entry().get()),
                "corrected",
                faults -> show(ctx, stored, old.get(), typed, faults));
    }

    /** Asks before a note is taken back. */
    private void ask(Context ctx) throws IOException {
        Stored stored = piles.stored(ctx);
        Entry entry = entry(ctx, stored).orElseThrow(() -> new Refusal(404, "note-gone"));
        OneView view = new OneView(
                stored.pile().name(),
                Piles.address(stored.id()),
                line(ctx, stored, entry),
                form(ctx).view(Map.of(), List.of()));
        renderer.page(ctx, renderer.texts().of("notes.take-back"), Page.Door.PILES, "takeback", view);
    }

    private void takeBack(Context ctx) throws IOException {
        String mark = ctx.pathParam("mark");
        change(ctx, "taken-back", pile -> Noting.struck(known(pile.log(), mark, pile), mark));
    }

    private void putBack(Context ctx) throws IOException {
        String mark = ctx.pathParam("mark");
        change(ctx, "put-back", pile -> Noting.restored(known(pile.struck(), mark, pile), mark));
    }

    private void change(Context ctx, String done, UnaryOperator<Pile> how) throws IOException {
        if (!saver.isNew(ctx)) {
            return;
        }
        Stored stored = piles.stored(ctx);
        saver.change(ctx, stored.id(), how, done, faults -> again.show(ctx, stored, Map.of(), faults));
    }

    /** The pile, where the entry is still among those it is to be taken from. */
    private static <P> P known(List<Entry> record, String mark, P pile) {
        if (Noting.marked(record, mark).isEmpty()) {
            throw new Refusal(409, "note-gone");
        }
        return pile;
    }

    private static Optional<Entry> entry(Context ctx, Stored stored) {
        return Noting.marked(stored.pile().log(), ctx.pathParam("mark"));
    }
}
