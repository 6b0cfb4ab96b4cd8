package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.journal.JournalFile;
import heapwright.journal.Listed;
import heapwright.journal.Noting;
import heapwright.journal.Stored;
import heapwright.pile.Problem;
import heapwright.web.guard.Refusal;
import heapwright.web.view.PileView.FileView;
import heapwright.web.view.PileView.PartView;
import io.javalin.http.Context;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

/** Files of the folder as pages name and tell them. */
final class Piles {

    /** Where in a list a page begins, in its address. */
    private static final String FROM = "from";

    /** How many files a page shows: far more than a garden has piles, few enough for a page to stay small. */
    private static final int PAGE = 100;

    private final Site site;
    private final Texts texts;
    private final DateTimeFormatter day;

    Piles(Site site, Texts texts) {
        this.site = site;
        this.texts = texts;
        this.day = DateTimeFormatter.ofPattern("d MMMM yyyy", site.catalogue().locale());
    }

    /** The address of a file's page. */
    static String address(String id) {
        return "/piles/" + URLEncoder.encode(id, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /**
     * The pile that a request names.
     *
     * @throws Refusal when there is none, or its file is broken
     */
    Stored stored(Context ctx) throws IOException {
        return stored(ctx.pathParam("id"));
    }

    /** The pile of that id; as {@link #stored(Context)}. */
    Stored stored(String id) throws IOException {
        JournalFile shelf = site.journal().open(id).orElseThrow(() -> new Refusal(404, "gone"));
        if (shelf instanceof Stored stored) {
            return stored;
        }
        throw new Refusal(409, "broken");
    }

    /** Shows a page of the pile that a request names as it stands today. */
    @FunctionalInterface
    interface Shown {
        void show(Advice advice, String address) throws IOException;
    }

    /**
     * Shows it, unless a danger stands: that comes before all else.
     *
     * @throws Refusal when there is no such pile, or its file is broken
     */
    void unlessDanger(Context ctx, Shown page) throws IOException {
        Stored stored = stored(ctx);
        Advice advice = site.desk().advise(Noting.advisedOn(stored.pile(), site.today()));
        String address = address(stored.id());
        if (advice.alarm().isPresent()) {
            ctx.redirect(address + "/result");
        } else {
            page.show(advice, address);
        }
    }

    /** The part of a list that its page shows; the address says with which file it begins. */
    PartView part(Context ctx, List<Listed> all) {
        Part part = part(ctx, all.size());
        return part.view("piles.range", files(all.subList(part.from(), part.to())));
    }

    /** The part of a list of that length which its page shows. */
    Part part(Context ctx, int length) {
        int last = Math.max(0, (length - 1) / PAGE * PAGE);
        int from = Math.min(last, begin(ctx) / PAGE * PAGE);
        return new Part(from, Math.min(length, from + PAGE), length, ctx.path(), texts);
    }

    /** From which to before which of a list of so many a page shows. */
    record Part(int from, int to, int length, String path, Texts texts) {
        PartView view(String range, List<FileView> files) {
            return new PartView(
                    files,
                    texts.of(range, from + 1, to, length),
                    from == 0 ? Optional.empty() : Optional.of(path + "?" + FROM + "=" + (from - PAGE)),
                    to == length ? Optional.empty() : Optional.of(path + "?" + FROM + "=" + to));
        }
    }

    private static int begin(Context ctx) {
        String given = ctx.queryParam(FROM);
        return given != null && given.matches("[0-9]{1,9}") ? Integer.parseInt(given) : 0;
    }

    private List<FileView> files(List<Listed> some) {
        return some.stream().map(this::file).toList();
    }

    /** The first files of a list, as many as a page shows. */
    List<FileView> first(List<Listed> all) {
        return files(all.subList(0, Math.min(all.size(), PAGE)));
    }

    FileView file(JournalFile shelf) {
        return file(Listed.of(shelf));
    }

    FileView file(Listed file) {
        String about = file.pile().map(this::about).orElseGet(() -> texts.of("piles.broken"));
        List<String> problems =
                file.problems().stream().limit(3).map(Problem::message).toList();
        return new FileView(file.id(), address(file.id()), file.name(), about, problems);
    }

    private String about(Listed.About pile) {
        return pile.builtAssumed()
                ? texts.of("piles.about.assumed", pile.entries())
                : texts.of(
                        pile.builtAbout() ? "piles.about.rough" : "piles.about",
                        pile.built().format(day),
                        pile.entries());
    }

    String day(java.time.LocalDate date) {
        return date.format(day);
    }
}
