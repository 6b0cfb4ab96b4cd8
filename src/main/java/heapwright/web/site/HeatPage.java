package heapwright.web.site;

import heapwright.pile.Pile;
import heapwright.process.sanitation.Fate;
import heapwright.process.sanitation.HeatLedger;
import heapwright.report.SanitationWords;
import heapwright.report.Words;
import heapwright.web.view.HeatView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

/** How hot the core of a kept pile was, beside rules and trials. */
final class HeatPage {

    private final Renderer renderer;
    private final Piles piles;

    HeatPage(Site site, Renderer renderer) {
        this.renderer = renderer;
        this.piles = new Piles(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        routes.get("/piles/{id}/heat", this::show);
    }

    private void show(Context ctx) throws IOException {
        piles.unlessDanger(
                ctx,
                (advice, address) -> renderer.page(
                        ctx,
                        renderer.texts().of("heat.title"),
                        Page.Door.PILES,
                        "heat",
                        view(advice.pile(), address, renderer.words(ctx))));
    }

    private static HeatView view(Pile pile, String address, Words words) {
        SanitationWords said = new SanitationWords(words);
        HeatLedger ledger = HeatLedger.of(pile, words.knowledge());
        return new HeatView(
                address,
                said.title(pile),
                Stream.of(
                                Stream.of(said.headline(ledger), words.text("sanitise.core-warning")),
                                ledger.record().measured()
                                        ? Stream.of(said.gaps())
                                        : Stream.of(words.text("sanitise.measure")),
                                words.toCheck(pile).stream())
                        .flatMap(s -> s)
                        .toList(),
                ledger.record().measured()
                        ? ledger.levels().stream().map(said::level).toList()
                        : List.of(),
                ledger.between().stream().map(b -> said.between(ledger, b)).toList(),
                ledger.rules().stream()
                        .map(r -> new HeatView.RuleRow(
                                r.rule().name(), said.needs(r.rule()), said.verdict(r), said.also(r.rule())))
                        .toList(),
                fates(ledger.inThisPile(), said),
                fates(ledger.fates().stream().filter(f -> !f.inThisPile()).toList(), said));
    }

    private static List<HeatView.FateView> fates(List<Fate> fates, SanitationWords said) {
        return fates.stream()
                .map(f -> new HeatView.FateView(
                        f.survivor().name(),
                        said.fateWithNever(f),
                        f.survivor().trials().stream().map(said::trial).toList(),
                        f.survivor().then()))
                .toList();
    }
}
