package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.advice.WhatIf;
import heapwright.journal.Noting;
import heapwright.journal.Stored;
import heapwright.knowledge.Remedy;
import heapwright.pile.Pile;
import heapwright.report.GainWords;
import heapwright.report.ModelWords;
import heapwright.report.Words;
import heapwright.web.guard.Refusal;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.CourseViews;
import heapwright.web.view.TrialViews;
import heapwright.web.view.WhyView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a pile has stopped: its course beside what explains it. */
final class WhyPage {

    private static final String EXAMPLE_PAGE = "/why/example";
    private static final String LIVE = "/live";
    private static final String STEP = "step";
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
        routes.get(EXAMPLE_PAGE, ctx -> show(ctx, example(), Optional.empty()));
        routes.post(EXAMPLE_PAGE + LIVE, ctx -> live(ctx, example(), EXAMPLE_PAGE));
        routes.get("/piles/{id}/why", ctx -> {
            Stored stored = piles.stored(ctx);
            show(ctx, today(stored), Optional.of(Piles.address(stored.id())));
        });
        routes.post("/piles/{id}/why" + LIVE, ctx -> {
            Stored stored = piles.stored(ctx);
            live(ctx, today(stored), here(Piles.address(stored.id())));
        });
    }

    private Pile today(Stored stored) {
        return Noting.advisedOn(stored.pile(), site.today());
    }

    private static String here(String pile) {
        return pile + "/why";
    }

    private void choose(Context ctx) throws IOException {
        renderer.page(
                ctx,
                renderer.texts().of("why.title"),
                Page.Door.WHY,
                "why-choose",
                new WhyView.Choose(
                        piles.part(ctx, site.journal().list()), new Keepers(site, renderer.texts()).offered()));
    }

    private void show(Context ctx, Pile pile, Optional<String> address) {
        Words words = renderer.words(ctx);
        Advice advice = site.desk().advise(pile);
        ModelWords model = new ModelWords(words);
        List<String> told = new ArrayList<>();
        if (advice.alarm().isEmpty()) {
            told.addAll(words.toCheck(pile));
        }
        advice.why().ifPresent(answer -> told.add(model.answer(answer)));
        advice.story().ifPresent(story -> {
            told.add(model.temperatures(story));
            told.addAll(model.stall(advice));
        });
        told.addAll(new GainWords(words).ofAllSteps(advice));
        WhyView view = new WhyView(
                address,
                new AdviceViews(words).view(advice),
                new CourseViews(words).view(pile, advice.story()),
                told,
                advice.story().map(model::stretches).orElse(List.of()),
                words.assumed(pile),
                address.map(WhyPage::here).orElse(EXAMPLE_PAGE),
                WhatIf.of(advice, ticked(ctx.queryParams(STEP)), site.knowledge())
                        .map(new TrialViews(words)::view));
        renderer.page(ctx, renderer.texts().of("why.of", pile.name()), Page.Door.WHY, "why", view);
    }

    /** What follows from the ticks, for a script to put in. */
    private void live(Context ctx, Pile pile, String here) {
        List<Remedy> ticked = ticked(ctx.formParams(STEP));
        WhatIf whatIf = WhatIf.of(site.desk().advise(pile), ticked, site.knowledge())
                .orElseThrow(() -> new Refusal(422, "request"));
        String query = ticked.stream().map(r -> STEP + "=" + r.id()).collect(Collectors.joining("&"));
        ctx.header("X-Heapwright-Address", here + (query.isEmpty() ? "" : "?" + query));
        renderer.part(ctx, "trial", new TrialViews(renderer.words(ctx)).shown(whatIf));
    }

    /** The steps that were ticked; words that are no steps are passed over. */
    private static List<Remedy> ticked(List<String> ids) {
        return Arrays.stream(Remedy.values()).filter(r -> ids.contains(r.id())).toList();
    }

    private Pile example() throws IOException {
        try (InputStream in = WhyPage.class.getResourceAsStream(EXAMPLE)) {
            return site.reader().read(EXAMPLE, in.readAllBytes()).pile().orElseThrow();
        }
    }
}
