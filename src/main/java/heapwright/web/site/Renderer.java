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
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Writes pages from templates that were compiled with the program. */
final class Renderer {

    private static final String PACKAGE = "heapwright.web.page";
    private static final String HTML = "text/html; charset=utf-8";
    private static final int USUAL_SIZE = 64 * 1024;
    private static final Logger LOG = LoggerFactory.getLogger(Renderer.class);

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
        send(ctx, template, places(ctx, title, here, view));
    }

    private Map<String, Object> places(Context ctx, String title, Page.Door here, Object view) {
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
        return Map.of("page", page, "view", view);
    }

    /**
     * Sends a page up to a mark at once, so that it is shown, then what takes longer, then the rest. Our own failure in
     * what comes late is told in its place, since the page is on its way by then.
     *
     * @param template the template of what comes late, with what it shows
     */
    void pageWithLate(Context ctx, String title, Page.Door here, String template, Object view, String mark, Late late)
            throws IOException {
        String whole = render(template, places(ctx, title, here, view));
        int at = whole.indexOf(mark);
        ctx.contentType(HTML);
        OutputStream out = ctx.outputStream();
        out.write(whole.substring(0, at).getBytes(StandardCharsets.UTF_8));
        out.flush();
        out.write(rendered(late).getBytes(StandardCharsets.UTF_8));
        out.write(whole.substring(at + mark.length()).getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    /** What comes late: its template, and what works out what it shows. */
    record Late(String template, Supplier<?> view) {}

    private String rendered(Late late) {
        try {
            return render(
                    late.template(), Map.of("t", texts, "view", late.view().get()));
        } catch (RuntimeException fault) {
            LOG.error("The late part of a page failed", fault);
            return render("sorry", Map.of("t", texts));
        }
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
        ctx.contentType(HTML).result(render(template, places));
    }

    private String render(String template, Map<String, Object> places) {
        StringOutput output = new StringOutput(USUAL_SIZE);
        engine.render(template + ".jte", places, output);
        return output.toString();
    }
}
