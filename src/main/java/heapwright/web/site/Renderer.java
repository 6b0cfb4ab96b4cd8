package heapwright.web.site;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import heapwright.report.Units;
import heapwright.report.Words;
import heapwright.web.guard.Refusal;
import heapwright.web.guard.Tokens;
import heapwright.web.view.SendAgainView;
import io.javalin.http.Context;
import java.util.Map;

/** Writes pages from templates that were compiled with the program. */
final class Renderer {

    private static final String PACKAGE = "heapwright.web.page";
    private static final int USUAL_SIZE = 64 * 1024;

    private final Site site;
    private final Tokens tokens;
    private final Assets assets = new Assets();
    private final Texts texts;
    private final Map<Units, Words> words;
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, PACKAGE);

    Renderer(Site site, Tokens tokens) {
        this.site = site;
        this.tokens = tokens;
        this.texts = new Texts(site.catalogue());
        this.words = Words.byUnits(site.knowledge(), site.catalogue());
    }

    Assets assets() {
        return assets;
    }

    Texts texts() {
        return texts;
    }

    /** The words in the units that the person asked for. */
    Words words(Context ctx) {
        return words.get(DisplaySettings.of(ctx).units());
    }

    /** Sends a page: its title, where it stands, its template and what it shows. */
    void page(Context ctx, String title, Page.Door here, String template, Object view) {
        Page page = new Page(
                title,
                here,
                texts,
                DisplaySettings.of(ctx),
                tokens.seal(ctx),
                tokens.once(),
                assets,
                site.version(),
                site.advisor().rules().size());
        send(ctx, template, Map.of("page", page, "view", view));
    }

    /** Sends a part of a page, for a script to put in. */
    void part(Context ctx, String template, Object view) {
        send(ctx, template, Map.of("t", texts, "view", view));
    }

    /** Why a request is not served, and what to do. */
    String text(Refusal refusal) {
        return texts.of("refused." + refusal.key(), refusal.places().toArray());
    }

    /** Sends the page that tells why a request is not served. */
    void refusal(Context ctx, Refusal refusal) {
        ctx.status(refusal.status());
        page(ctx, texts.of("refused.title"), Page.Door.START, "refused", text(refusal));
    }

    /** Sends a form back that could not be taken, with all that was typed. */
    void again(Context ctx, Refusal refusal) {
        ctx.status(refusal.status());
        SendAgainView view = new SentForm(ctx).again(text(refusal), words(ctx), texts);
        page(ctx, texts.of("again.title"), Page.Door.PILES, "sendagain", view);
    }

    private void send(Context ctx, String template, Map<String, Object> places) {
        StringOutput output = new StringOutput(USUAL_SIZE);
        engine.render(template + ".jte", places, output);
        ctx.contentType("text/html; charset=utf-8").result(output.toString());
    }
}
