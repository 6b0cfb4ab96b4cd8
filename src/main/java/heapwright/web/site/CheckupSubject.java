package heapwright.web.site;

import heapwright.journal.Stored;
import heapwright.pile.Pile;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Optional;

/**
 * What a checkup is about: a pile of which nothing is written down, or one of the folder.
 *
 * @param questions the address of the questions
 * @param result the address of the result
 * @param stored the pile of the folder
 */
record CheckupSubject(String questions, String result, Optional<Stored> stored) {

    private static final String ID = "id";

    /** The subject of a request: the pile that its address names, if it names one. */
    static CheckupSubject of(Context ctx, Piles piles) throws IOException {
        if (!ctx.pathParamMap().containsKey(ID)) {
            return new CheckupSubject("/checkup", "/result", Optional.empty());
        }
        Stored stored = piles.stored(ctx);
        String here = Piles.address(stored.id()) + "/checkup";
        return new CheckupSubject(here, here + "/result", Optional.of(stored));
    }

    Optional<Pile> pile() {
        return stored.map(Stored::pile);
    }
}
