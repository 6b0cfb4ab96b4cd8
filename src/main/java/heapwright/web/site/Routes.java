package heapwright.web.site;

import heapwright.web.guard.Tokens;
import io.javalin.config.RoutesConfig;

/** All that can be asked of the server. */
public final class Routes {

    private final Site site;

    public Routes(Site site) {
        this.site = site;
    }

    /** Makes them known. */
    public void register(RoutesConfig routes) {
        Tokens tokens = new Tokens();
        Renderer renderer = new Renderer(site, tokens);
        new Faults(renderer).register(routes);
        routes.get("/assets/{stamp}/{name}", renderer.assets()::serve);
        new StartPage(site, renderer).register(routes);
        Saver saver = new Saver(site, tokens, renderer.texts());
        new CheckupPage(site, renderer, saver).register(routes);
        new ChecklistPage(renderer).register(routes);
        ResultPage results = new ResultPage(site, renderer);
        results.register(routes);
        PileMaker maker = new PileMaker(site, tokens, renderer.texts());
        new PilesPage(site, renderer, tokens, maker).register(routes);
        new OpenPage(site, renderer, maker, results).register(routes);
        new PilePage(site, renderer, saver, results).register(routes);
        new EditPage(site, renderer, saver).register(routes);
        new WhyPage(site, renderer).register(routes);
        new HeatPage(site, renderer).register(routes);
        new ReadyPage(site, renderer).register(routes);
        new SeasonPage(site, renderer).register(routes);
        new KnowledgePage(site, renderer).register(routes);
        new BuildPage(site, renderer, maker).register(routes);
        new SettingsPage(renderer, tokens).register(routes);
    }
}
