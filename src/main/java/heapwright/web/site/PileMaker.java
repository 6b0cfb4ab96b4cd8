package heapwright.web.site;

import heapwright.journal.Saving;
import heapwright.pile.Pile;
import heapwright.web.guard.Tokens;
import heapwright.web.view.CheckupView.Fault;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a pile of the folder from a form, whichever page it is on: once, however often the form is sent. */
final class PileMaker {

    private final Site site;
    private final Tokens tokens;
    private final Texts texts;
    private final Keepers keepers;

    PileMaker(Site site, Tokens tokens, Texts texts) {
        this.site = site;
        this.tokens = tokens;
        this.texts = texts;
        this.keepers = new Keepers(site, texts);
    }

    /** Shows what is wrong with what was typed. */
    interface Refused {
        void show(List<Fault> faults) throws IOException;
    }

    /** Makes a pile of what was typed, or tells what is wrong. */
    interface Typed {
        Optional<Pile> pile(String name, Optional<BuiltWhen> built, List<Fault> faults) throws IOException;
    }

    /**
     * Makes the pile and goes to its page.
     *
     * @param typed makes it of the name and when it was built, if told; both have been looked at
     * @param refused shows the form again
     */
    void make(Context ctx, Typed typed, Refused refused) throws IOException {
        tokens.check(ctx);
        SentForm sent = new SentForm(ctx);
        Optional<String> before = sent.isMarked() ? site.journal().done(sent.key()) : Optional.empty();
        if (before.isPresent()) {
            ctx.redirect(Piles.address(before.get()), HttpStatus.SEE_OTHER);
            return;
        }
        List<Fault> faults = new ArrayList<>();
        String name = field(ctx, "name");
        if (name.isEmpty()) {
            faults.add(new Fault("name", texts.of("fault.name")));
        }
        String when = field(ctx, "built");
        Optional<BuiltWhen> built = BuiltWhen.of(when, site.today());
        if (!when.isEmpty() && built.isEmpty()) {
            faults.add(new Fault("built", texts.of("fault.when", when)));
        }
        Optional<Pile> typedPile = faults.isEmpty() ? typed.pile(name, built, faults) : Optional.empty();
        Optional<Pile> pile = typedPile.isEmpty() ? typedPile : Optional.of(keepers.into(ctx, typedPile.get()));
        if (pile.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            refused.show(faults);
            return;
        }
        Saving saving = sent.isMarked()
                ? site.journal().create(pile.get(), sent.key())
                : site.journal().create(pile.get());
        if (saving instanceof Saving.Saved saved) {
            ctx.redirect(Piles.address(saved.stored().id()), HttpStatus.SEE_OTHER);
        } else {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            refused.show(List.of(new Fault("name", texts.of("fault.name"))));
        }
    }

    /** What was typed into a field, without blanks round it. */
    static String field(Context ctx, String name) {
        String typed = ctx.formParam(name);
        return typed == null ? "" : typed.strip();
    }
}
