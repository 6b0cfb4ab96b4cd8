package heapwright.web.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.journal.Broken;
import heapwright.journal.Journal;
import heapwright.journal.JournalFile;
import heapwright.journal.Listed;
import heapwright.journal.Noting;
import heapwright.journal.RequestKey;
import heapwright.journal.Saving;
import heapwright.journal.Stored;
import heapwright.pile.Pile;
import heapwright.pile.PileWriter;
import heapwright.report.Catalogue;
import heapwright.report.JsonText;
import heapwright.web.guard.ProblemResponse;
import heapwright.web.site.Site;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The folder of piles for programs. A file's ETag stands for its content; a write says which content it is to replace. */
final class PilesApi {

    private static final String PILES = "/api/piles";
    private static final String PILE = PILES + "/{id}";

    private final Journal journal;
    private final Site site;
    private final Catalogue texts;
    private final Documents documents;
    private final AdviceApi advice;

    PilesApi(Site site, Documents documents, AdviceApi advice) {
        this.site = site;
        this.journal = site.journal();
        this.texts = site.catalogue();
        this.documents = documents;
        this.advice = advice;
    }

    void register(RoutesConfig routes) {
        routes.get(PILES, ctx -> list(ctx, journal.list()));
        routes.post(PILES, this::create);
        routes.get(PILE, this::open);
        routes.put(PILE, this::replace);
        routes.delete(PILE, this::delete);
        routes.get(PILE + "/advice", this::advise);
        routes.get(PILE + "/what-if", ctx -> advice.sendWhatIf(ctx, today(ctx)));
        routes.get("/api/removed", ctx -> list(ctx, journal.removed()));
        routes.post("/api/removed/{id}/fetch-back", this::fetchBack);
    }

    private void list(Context ctx, List<Listed> files) {
        ObjectNode root = JsonText.object("piles");
        ArrayNode rows = root.putArray("piles");
        for (Listed file : files) {
            ObjectNode row = rows.addObject().put("id", file.id()).put("name", file.name());
            file.pile()
                    .ifPresentOrElse(
                            about -> row.put("version", about.version())
                                    .put("built", about.built().toString())
                                    .put("days", about.entries()),
                            () -> {
                                ArrayNode problems = row.putArray("problems");
                                file.problems().forEach(p -> problems.add(p.message()));
                            });
        }
        AdviceApi.json(ctx, JsonText.write(root));
    }

    private void create(Context ctx) throws IOException {
        Pile pile = documents.pile(ctx);
        Optional<RequestKey> key = key(ctx);
        Saving saving = key.isPresent() ? journal.create(pile, key.get()) : journal.create(pile);
        if (saving instanceof Saving.Saved saved) {
            ctx.status(201);
            ctx.header("Location", address(saved.stored().id()));
            send(ctx, saved.stored());
        } else {
            throw refused(saving);
        }
    }

    private void open(Context ctx) throws IOException {
        send(ctx, stored(ctx));
    }

    private void replace(Context ctx) throws IOException {
        String version = ctx.header("If-Match");
        if (version == null) {
            throw ProblemResponse.of(428, texts.text("web.api.if-match"));
        }
        String id = stored(ctx).id();
        String replaced = version.replace("\"", "");
        Pile pile = documents.pile(ctx);
        Optional<RequestKey> key = key(ctx);
        Saving saving =
                key.isPresent() ? journal.save(id, replaced, pile, key.get()) : journal.save(id, replaced, pile);
        if (saving instanceof Saving.Saved saved) {
            send(ctx, saved.stored());
        } else if (saving instanceof Saving.Conflict conflict) {
            ctx.header("Location", address(conflict.kept().id()));
            throw ProblemResponse.of(
                    412, texts.text("web.api.conflict", conflict.kept().id()));
        } else {
            throw refused(saving);
        }
    }

    /** Stands for a request that the sender wants done once: its own key, and what it asks for. */
    private static Optional<RequestKey> key(Context ctx) {
        String given = ctx.header("Idempotency-Key");
        return given == null || given.isBlank()
                ? Optional.empty()
                : Optional.of(RequestKey.of(
                        given,
                        ctx.req().getMethod(),
                        ctx.path(),
                        Optional.ofNullable(ctx.header("If-Match")).orElse(""),
                        new String(ctx.bodyAsBytes(), StandardCharsets.ISO_8859_1)));
    }

    private void delete(Context ctx) throws IOException {
        String gone = journal.delete(ctx.pathParam("id")).orElseThrow(this::missing);
        AdviceApi.json(ctx, JsonText.write(JsonText.object("removed").put("id", gone)));
    }

    private void fetchBack(Context ctx) throws IOException {
        String id = journal.undoDelete(ctx.pathParam("id")).orElseThrow(this::missing);
        ctx.header("Location", address(id));
        AdviceApi.json(ctx, JsonText.write(JsonText.object("fetched-back").put("id", id)));
    }

    private void advise(Context ctx) throws IOException {
        advice.send(ctx, today(ctx));
    }

    private Pile today(Context ctx) throws IOException {
        return Noting.advisedOn(stored(ctx).pile(), LocalDate.now(site.clock()));
    }

    private void send(Context ctx, Stored stored) {
        ctx.header("ETag", "\"" + stored.version() + "\"");
        ctx.contentType("application/json").result(new PileWriter().bytes(stored.pile()));
    }

    private Stored stored(Context ctx) throws IOException {
        JournalFile shelf = journal.open(ctx.pathParam("id")).orElseThrow(this::missing);
        if (shelf instanceof Broken broken) {
            throw ProblemResponse.broken(texts.text("web.refused.broken"), broken.problems());
        }
        return (Stored) shelf;
    }

    private ProblemResponse missing() {
        return ProblemResponse.of(404, texts.text("web.api.missing"));
    }

    private ProblemResponse refused(Saving saving) {
        return saving instanceof Saving.Refused refused
                ? ProblemResponse.document(
                        texts.text("web.api.problems", refused.problems().size()), refused.problems())
                : ProblemResponse.of(500, texts.text("web.refused.ours"));
    }

    private static String address(String id) {
        return PILES + "/" + URLEncoder.encode(id, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
