package heapwright.web.site;

import heapwright.journal.Saving;
import heapwright.pile.Pile;
import heapwright.web.guard.Refusal;
import heapwright.web.guard.Tokens;
import heapwright.web.view.CheckupView.Fault;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Keeps a changed pile and tells what came of it: the pile's page, or faults. */
final class Saver {

    private final Site site;
    private final Tokens tokens;
    private final FaultWords words;

    Saver(Site site, Tokens tokens, Texts texts) {
        this.site = site;
        this.tokens = tokens;
        this.words = new FaultWords(texts);
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
        to(ctx, id, "1");
    }

    private static void to(Context ctx, String id, String said) {
        ctx.redirect(Piles.address(id) + "?noted=" + said, HttpStatus.SEE_OTHER);
    }

    /**
     * Changes a pile as it stands now: notes of two windows both go in.
     *
     * @param id the pile
     * @param change what is done to it
     * @param said what its page says then
     * @param refused shows what is wrong with it
     * @throws Refusal when the pile is gone or broken
     */
    void change(Context ctx, String id, UnaryOperator<Pile> change, String said, Refused refused) throws IOException {
        Saving saving =
                site.journal().change(id, change, new SentForm(ctx).key()).orElseThrow(() -> new Refusal(404, "gone"));
        if (saving instanceof Saving.Saved saved) {
            to(ctx, saved.stored().id(), said);
        } else if (saving instanceof Saving.Refused no) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            refused.show(no.problems().stream().map(words::other).toList());
        } else {
            throw new Refusal(409, "changed");
        }
    }
}
