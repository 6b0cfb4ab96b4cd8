package heapwright.web.site;

import heapwright.advice.season.YearRound;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.Place;
import heapwright.report.SeasonWords;
import heapwright.web.view.SeasonView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;

/** What there is to do at each time of the year: for any pile, or by place and kind of one that is kept. */
final class SeasonPage {

    private final Site site;
    private final Renderer renderer;
    private final Piles piles;

    SeasonPage(Site site, Renderer renderer) {
        this.site = site;
        this.renderer = renderer;
        this.piles = new Piles(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        routes.get("/season", ctx -> show(ctx, Page.Door.KNOWLEDGE, Optional.empty(), ""));
        routes.get("/piles/{id}/season", this::ofPile);
    }

    private void ofPile(Context ctx) throws IOException {
        piles.unlessDanger(ctx, (advice, address) -> show(ctx, Page.Door.PILES, Optional.of(advice.pile()), address));
    }

    private void show(Context ctx, Page.Door door, Optional<Pile> pile, String address) {
        renderer.page(ctx, renderer.texts().of("season.title"), door, "season", view(ctx, pile, address));
    }

    private SeasonView view(Context ctx, Optional<Pile> pile, String address) {
        SeasonWords said = new SeasonWords(renderer.words(ctx));
        LocalDate day = site.today();
        YearRound year = YearRound.of(
                pile.map(Pile::place).orElseGet(Place::unknown),
                pile.map(p -> p.container().kind()).orElse(Container.Kind.UNKNOWN),
                day,
                renderer.words(ctx).knowledge());
        return new SeasonView(
                address,
                said.title(pile, day),
                said.ground(year, pile),
                year.seasons().stream()
                        .map(season -> new SeasonView.TimeView(
                                said.span(season),
                                said.jobs(season).entrySet().stream()
                                        .map(group -> new SeasonView.GroupView(
                                                said.keeps(group.getKey()),
                                                group.getValue().stream()
                                                        .map(j ->
                                                                new SeasonView.JobView(j.job(), j.why(), said.rests(j)))
                                                        .toList()))
                                        .toList()))
                        .toList());
    }
}
