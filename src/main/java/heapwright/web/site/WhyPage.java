package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.journal.Noting;
import heapwright.pile.Pile;
import heapwright.report.ModelWords;
import heapwright.report.Words;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.CourseViews;
import heapwright.web.view.WhyView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why a pile has stopped: its course beside what explains it. */
final class WhyPage {

    private static final String EXAMPLE = "/heapwright/web/example.json";

    private final Site site;
    private final Renderer renderer;
    private final Piles piles;

    WhyPage(Site site, Renderer renderer) {
        this.site = site;
        this.renderer = renderer;
        this.piles = new Piles(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        routes.get("/why", this::choose);
        routes.get("/why/example", ctx -> show(ctx, example(), Optional.empty()));
        routes.get("/piles/{id}/why", ctx -> {
            var stored = piles.stored(ctx);
            show(ctx, Noting.advisedOn(stored.pile(), site.today()), Optional.of(Piles.address(stored.id())));
        });
    }

    private void choose(Context ctx) throws IOException {
        renderer.page(
                ctx,
                renderer.texts().of("why.title"),
                Page.Door.WHY,
                "why-choose",
                new WhyView.Choose(
                        piles.files(site.journal().list()), site.today().toString()));
    }

    private void show(Context ctx, Pile pile, Optional<String> address) {
        Words words = renderer.words(ctx);
        Advice advice = site.desk().advise(pile);
        ModelWords model = new ModelWords(words);
        List<String> told = new ArrayList<>();
        advice.why().ifPresent(answer -> told.add(model.answer(answer)));
        advice.story().ifPresent(story -> {
            told.add(model.temperatures(story));
            told.addAll(model.stall(story));
        });
        WhyView view = new WhyView(
                address,
                new AdviceViews(words).view(advice),
                new CourseViews(words).view(pile, advice.story()),
                told,
                advice.story().map(model::stretches).orElse(List.of()));
        renderer.page(ctx, renderer.texts().of("why.of", pile.name()), Page.Door.WHY, "why", view);
    }

    private Pile example() throws IOException {
        try (InputStream in = WhyPage.class.getResourceAsStream(EXAMPLE)) {
            return site.reader().read(EXAMPLE, in.readAllBytes()).pile().orElseThrow();
        }
    }
}
