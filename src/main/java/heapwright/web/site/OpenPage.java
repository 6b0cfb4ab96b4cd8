package heapwright.web.site;

import heapwright.journal.Noting;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.PileWriter;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import heapwright.web.guard.SentFile;
import heapwright.web.guard.SoundRequests;
import heapwright.web.view.CheckupView.Fault;
import heapwright.web.view.ResultView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A pile file from the person's own disk: its checkup, without keeping anything, and then a pile of it if wanted. */
final class OpenPage {

    private static final String HERE = SoundRequests.OPEN;

    private final Site site;
    private final Renderer renderer;
    private final PileMaker maker;
    private final ResultPage results;

    OpenPage(Site site, Renderer renderer, PileMaker maker, ResultPage results) {
        this.site = site;
        this.renderer = renderer;
        this.maker = maker;
        this.results = results;
    }

    void register(RoutesConfig routes) {
        routes.get(HERE, ctx -> show(ctx, List.of()));
        routes.post(HERE, this::open);
        routes.post(HERE + "/keep", this::keep);
    }

    private void show(Context ctx, List<Fault> faults) {
        renderer.page(ctx, renderer.texts().of("open.title"), Page.Door.PILES, "open", faults);
    }

    private void open(Context ctx) {
        Optional<SentFile> file = SentFile.of(ctx.contentType(), ctx.bodyAsBytes(), "file");
        if (file.isEmpty() || file.get().bytes().length == 0) {
            refuse(ctx, List.of(new Fault("file", renderer.texts().of("open.none"))));
            return;
        }
        ReadResult read = site.reader().read(file.get().name(), file.get().bytes());
        if (read.pile().isEmpty()) {
            refuse(ctx, faults(read));
            return;
        }
        Pile pile = read.pile().get();
        String document = new String(new PileWriter().bytes(pile), StandardCharsets.UTF_8);
        results.show(
                ctx,
                site.desk().advise(Noting.advisedOn(pile, site.today())),
                new ResultView.Links(HERE, "", "", "", Optional.empty(), Optional.of(document)));
    }

    private void refuse(Context ctx, List<Fault> faults) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, faults);
    }

    private static List<Fault> faults(ReadResult read) {
        return read.problems().stream()
                .limit(PileReader.MOST_PROBLEMS)
                .map(Problem::message)
                .map(m -> new Fault("", m))
                .toList();
    }

    private void keep(Context ctx) throws java.io.IOException {
        maker.make(
                ctx,
                (name, built, faults) -> {
                    byte[] document = PileMaker.field(ctx, "document").getBytes(StandardCharsets.UTF_8);
                    ReadResult read = site.reader().read(name, document);
                    faults.addAll(faults(read));
                    return read.pile().map(pile -> Noting.renamed(pile, name));
                },
                faults -> show(ctx, faults));
    }
}
