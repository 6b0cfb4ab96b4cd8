package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.advice.ready.Cover;
import heapwright.advice.ready.Ready;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.pile.HomeTest;
import heapwright.report.UseWords;
import heapwright.report.Words;
import heapwright.web.view.ReadyView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether the compost of a kept pile is ready, how to test it, how far it goes and when. */
final class ReadyPage {

    private final Renderer renderer;
    private final Piles piles;

    ReadyPage(Site site, Renderer renderer) {
        this.renderer = renderer;
        this.piles = new Piles(site, renderer.texts());
    }

    void register(RoutesConfig routes) {
        routes.get("/piles/{id}/ready", this::show);
    }

    private void show(Context ctx) throws IOException {
        piles.unlessDanger(
                ctx,
                (advice, address) -> renderer.page(
                        ctx,
                        renderer.texts().of("ready.title"),
                        Page.Door.PILES,
                        "ready",
                        view(advice, address, renderer.words(ctx))));
    }

    private static ReadyView view(Advice advice, String address, Words words) {
        UseWords said = new UseWords(words);
        ReadyAnswer answer = Ready.of(advice, words.knowledge());
        Set<HomeTest> planned = answer.tests().stream().map(t -> t.test().id()).collect(Collectors.toSet());
        return new ReadyView(
                address,
                said.title(answer.pile()),
                said.headline(answer),
                Stream.concat(answer.contradictions().stream().map(said::atOdds), words.toCheck(answer.pile()).stream())
                        .toList(),
                answer.reasons().stream()
                        .map(r -> new ReadyView.ReasonView(said.reasonInFull(r), r.danger()))
                        .toList(),
                said.results(answer),
                answer.tests().stream().map(said::days).toList(),
                words.knowledge().endUse().tests().values().stream()
                        .map(t -> new ReadyView.TestView(
                                t.name(),
                                planned.contains(t.id()),
                                said.needs(t),
                                t.how(),
                                said.readings(t),
                                said.rests(t)))
                        .toList(),
                said.left(answer),
                uses(said, said.fitting(answer).stream().filter(Cover::allowed)),
                uses(said, said.fitting(answer).stream().filter(c -> !c.allowed())),
                said.dates(answer));
    }

    private static List<ReadyView.UseView> uses(UseWords said, Stream<Cover> covers) {
        return covers.map(c -> new ReadyView.UseView(said.cover(c), said.note(c.use())))
                .toList();
    }
}
