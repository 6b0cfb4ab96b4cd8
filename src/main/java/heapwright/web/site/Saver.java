package heapwright.web.site;

import heapwright.journal.Saving;
import heapwright.journal.Stored;
import heapwright.pile.Pile;
import heapwright.web.guard.Tokens;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.PileView.ConflictView;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Keeps a changed pile and tells what came of it: the pile's page, both versions where it changed meanwhile, or faults. */
final class Saver {

    private final Site site;
    private final Renderer renderer;
    private final Tokens tokens;
    private final Piles piles;

    Saver(Site site, Renderer renderer, Tokens tokens) {
        this.site = site;
        this.renderer = renderer;
        this.tokens = tokens;
        this.piles = new Piles(site, renderer.texts());
    }

    /** Shows the faults of a pile that was not kept. */
    interface Refused {
        void show(List<Fault> faults) throws IOException;
    }

    /**
     * Checks the seal of a form that changes something, and shows what came of it where it is one that was taken before.
     *
     * @return whether it is a new one, still to be done
     */
    boolean isNew(Context ctx) throws IOException {
        tokens.check(ctx);
        Optional<String> before = site.journal().done(new SentForm(ctx).key());
        before.ifPresent(id -> noted(ctx, id));
        return before.isEmpty();
    }

    private static void noted(Context ctx, String id) {
        ctx.redirect(Piles.address(id) + "?noted=1", HttpStatus.SEE_OTHER);
    }

    /**
     * Keeps a pile in place of the version that the form names.
     *
     * @param stored the pile as it is now
     * @param changed the pile to keep
     * @param refused shows what is wrong with it
     */
    void save(Context ctx, Stored stored, Pile changed, Refused refused) throws IOException {
        String version = Optional.ofNullable(ctx.formParam("version")).orElse("");
        Saving saving = site.journal().save(stored.id(), version, changed, new SentForm(ctx).key());
        if (saving instanceof Saving.Saved saved) {
            noted(ctx, saved.stored().id());
        } else if (saving instanceof Saving.Conflict conflict) {
            ctx.status(HttpStatus.CONFLICT);
            ConflictView view =
                    new ConflictView(stored.name(), conflict.current().map(piles::file), piles.file(conflict.kept()));
            renderer.page(ctx, renderer.texts().of("conflict.title"), Page.Door.PILES, "conflict", view);
        } else if (saving instanceof Saving.Refused no) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            refused.show(
                    no.problems().stream().map(p -> new Fault("", p.message())).toList());
        }
    }
}
