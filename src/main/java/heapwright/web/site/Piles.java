package heapwright.web.site;

import heapwright.journal.Broken;
import heapwright.journal.Shelf;
import heapwright.journal.Stored;
import heapwright.pile.Problem;
import heapwright.web.guard.Refusal;
import heapwright.web.view.PileView.FileView;
import io.javalin.http.Context;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** Files of the folder as pages name and tell them. */
final class Piles {

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
        Shelf shelf = site.journal().open(id).orElseThrow(Refusal::missing);
        if (shelf instanceof Stored stored) {
            return stored;
        }
        throw new Refusal(409, "broken");
    }

    List<FileView> files(List<Shelf> shelves) {
        return shelves.stream().map(this::file).toList();
    }

    FileView file(Shelf shelf) {
        if (shelf instanceof Broken broken) {
            List<String> problems =
                    broken.problems().stream().limit(3).map(Problem::message).toList();
            return new FileView(broken.id(), address(broken.id()), broken.name(), texts.of("piles.broken"), problems);
        }
        Stored stored = (Stored) shelf;
        int notes = stored.pile().log().size();
        String about = stored.pile().builtAssumed()
                ? texts.of("piles.about.assumed", notes)
                : texts.of("piles.about", stored.pile().built().format(day), notes);
        return new FileView(stored.id(), address(stored.id()), stored.name(), about, List.of());
    }

    String day(java.time.LocalDate date) {
        return date.format(day);
    }
}
