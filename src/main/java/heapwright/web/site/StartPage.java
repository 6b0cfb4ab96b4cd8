package heapwright.web.site;

import heapwright.knowledge.Sign;
import heapwright.web.view.CheckupView.Choice;
import heapwright.web.view.StartView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;

/**
 * The first page: the signs that are met most, to be tapped, and the other ways in. Its form is a checkup's with fewer
 * questions; {@link CheckupPage} answers it.
 */
final class StartPage {

    /** What people come with, by nose, hand, warmth and eye. Smoke has a link of its own, which takes one tap. */
    static final List<Sign> SIGNS = List.of(
            Sign.SMELLS_SOUR,
            Sign.SMELLS_AMMONIA,
            Sign.SMELLS_PUTRID,
            Sign.SOGGY,
            Sign.DUST_DRY,
            Sign.CORE_COLD,
            Sign.HEATED_THEN_COOLED,
            Sign.NEVER_HEATED,
            Sign.LONG_UNCUT_PIECES,
            Sign.MATTED_LEAVES,
            Sign.FLIES,
            Sign.RODENTS);

    private final Site site;
    private final Renderer renderer;

    StartPage(Site site, Renderer renderer) {
        this.site = site;
        this.renderer = renderer;
    }

    void register(RoutesConfig routes) {
        routes.get("/", this::show);
    }

    private void show(Context ctx) {
        List<Choice> signs = SIGNS.stream()
                .map(s -> new Choice(
                        CheckupAnswers.field(s), site.knowledge().signs().get(s).shortName(), false))
                .toList();
        renderer.page(ctx, renderer.texts().of("start.title"), Page.Door.START, "start", new StartView(signs));
    }
}
