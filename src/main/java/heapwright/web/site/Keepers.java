package heapwright.web.site;

import heapwright.advice.People;
import heapwright.journal.Listed;
import heapwright.journal.Noting;
import heapwright.journal.Stored;
import heapwright.knowledge.Sign;
import heapwright.pile.Entry;
import heapwright.pile.Keeper;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import heapwright.web.view.KeeperView;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Who looks after a new pile: asked once, and offered from a pile of the folder that tells it. */
final class Keepers {

    /** The field that names the pile it is taken from. */
    private static final String FIELD = "keeper";

    private final Site site;
    private final Texts texts;

    Keepers(Site site, Texts texts) {
        this.site = site;
        this.texts = texts;
    }

    /** Whoever looks after the pile that was built last of those that tell it; nobody where the folder cannot be read. */
    Optional<KeeperView> offered() {
        try {
            return last();
        } catch (IOException unread) {
            // Whoever saves is told what is wrong with the folder; a form needs no more than to be shown.
            return Optional.empty();
        }
    }

    /** The same for a pile of which it may be told already who looks after it: then there is nothing to offer. */
    Optional<KeeperView> offered(Pile pile) {
        boolean told =
                !pile.keeper().equals(Keeper.unknown()) || !People.signs(pile).isEmpty();
        return told ? Optional.empty() : offered();
    }

    private Optional<KeeperView> last() throws IOException {
        Optional<Listed> last = site.journal().list().stream()
                .filter(l -> l.pile().filter(Listed.About::kept).isPresent())
                .max(Comparator.comparing(l -> l.pile().orElseThrow().built()));
        return last.isEmpty() ? Optional.empty() : open(last.get().id()).map(this::view);
    }

    private Optional<Stored> open(String id) throws IOException {
        return site.journal().open(id).filter(Stored.class::isInstance).map(Stored.class::cast);
    }

    private KeeperView view(Stored stored) {
        Pile pile = stored.pile();
        List<String> told = new ArrayList<>();
        pile.keeper().minutes().ifPresent(m -> told.add(texts.of("keeper.minutes", m)));
        pile.keeper().lacks().forEach(g -> told.add(texts.of("keeper.lacks", texts.shared("gear." + g.token()))));
        People.signs(pile).forEach(s -> told.add(site.knowledge().signs().get(s).shortName()));
        return new KeeperView(stored.id(), texts.of("keeper.same", pile.name(), String.join("; ", told)));
    }

    /** The new pile with whoever was chosen in the form; as it is where nobody was. */
    Pile into(Context ctx, Pile made) throws IOException {
        String id = PileMaker.field(ctx, FIELD);
        Optional<Stored> from = id.isEmpty() ? Optional.empty() : open(id);
        return from.map(f -> with(made, f.pile())).orElse(made);
    }

    private static Pile with(Pile made, Pile from) {
        Pile kept = made.withKeeper(from.keeper());
        List<String> signs = People.signs(from).stream()
                .filter(s -> !People.signs(made).contains(s))
                .filter(s -> made.log().stream().noneMatch(e -> e.notSeen().contains(s.id())))
                .map(Sign::id)
                .toList();
        return signs.isEmpty()
                ? kept
                : Noting.noted(
                        kept, new Entry(made.asOf(), signs, List.of(), Measured.nothing(), List.of(), List.of(), ""));
    }
}
