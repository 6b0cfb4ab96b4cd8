package heapwright.web.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.journal.Listed;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;
import heapwright.report.JsonText;
import heapwright.web.guard.Addresses;
import heapwright.web.guard.Tokens;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.PileView.FileView;
import heapwright.web.view.PileView.ShelfView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The folder of piles: listed, made, deleted and fetched back. */
final class PilesPage {

    private final Site site;
    private final Renderer renderer;
    private final Tokens tokens;
    private final PileMaker maker;
    private final Piles piles;

    PilesPage(Site site, Renderer renderer, Tokens tokens, PileMaker maker) {
        this.site = site;
        this.renderer = renderer;
        this.tokens = tokens;
        this.maker = maker;
        this.piles = new Piles(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        routes.get("/piles", ctx -> show(ctx, List.of()));
        routes.post("/piles", this::create);
        routes.post("/piles/{id}/delete", this::delete);
        routes.post("/piles/fetch-back", this::fetchBack);
    }

    private void show(Context ctx, List<Fault> faults) throws IOException {
        List<Listed> removed = site.journal().removed();
        String gone = ctx.queryParam("removed");
        Optional<FileView> just =
                removed.stream().filter(s -> s.id().equals(gone)).findFirst().map(piles::file);
        Map<String, String> typed = new LinkedHashMap<>();
        for (String field : List.of("name", "built")) {
            String value = ctx.formParam(field);
            typed.put(field, value == null ? "" : value);
        }
        ShelfView view = new ShelfView(
                folder(site.journal().folder(), ctx.req().getRemoteAddr()),
                piles.part(ctx, site.journal().list()),
                piles.first(removed),
                removed.size(),
                just,
                faults,
                typed,
                new Keepers(site, renderer.texts()).offered());
        renderer.page(ctx, renderer.texts().of("piles.title"), Page.Door.PILES, "piles", view);
    }

    /** Where the files are, for the person at this machine; nobody else can look there, nor needs to know. */
    static Optional<String> folder(Path folder, String asker) {
        return Addresses.own(asker) ? Optional.of(folder.toString()) : Optional.empty();
    }

    private void create(Context ctx) throws IOException {
        String answers = ctx.formParam("answers");
        maker.make(
                ctx,
                (name, built, faults) -> (answers == null ? fresh(name, built) : answered(ctx, name, answers)).pile(),
                faults -> show(ctx, faults));
    }

    private ReadResult fresh(String name, Optional<BuiltWhen> built) {
        ObjectNode document = JsonNodeFactory.instance.objectNode();
        document.put("heapwright", PileReader.VERSION).put("name", name);
        document.put("asOf", site.today().toString());
        built.ifPresent(when -> when.into(document));
        return site.reader().read(name, JsonText.write(document).getBytes(StandardCharsets.UTF_8));
    }

    /** The pile of a checkup's answers, as its address carries them. */
    private ReadResult answered(Context ctx, String name, String query) {
        CheckupAnswers said = CheckupAnswers.ofQuery(query, site.today());
        return new Consultation(site, renderer.texts())
                .read(said, DisplaySettings.of(ctx).units(), name);
    }

    private void delete(Context ctx) throws IOException {
        tokens.check(ctx);
        String to = site.journal()
                .delete(ctx.pathParam("id"))
                .map(id -> "?removed=" + URLEncoder.encode(id, StandardCharsets.UTF_8))
                .orElse("");
        ctx.redirect("/piles" + to, HttpStatus.SEE_OTHER);
    }

    private void fetchBack(Context ctx) throws IOException {
        tokens.check(ctx);
        String id = Optional.ofNullable(ctx.formParam("id")).orElse("");
        String to = site.journal().undoDelete(id).map(Piles::address).orElse("/piles");
        ctx.redirect(to, HttpStatus.SEE_OTHER);
    }
}
