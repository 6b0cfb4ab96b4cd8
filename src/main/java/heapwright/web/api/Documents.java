package heapwright.web.api;

import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.ReadResult;
import heapwright.report.Catalogue;
import heapwright.web.guard.ProblemResponse;
import io.javalin.http.Context;
import java.util.Locale;

/** Takes pile documents out of requests. */
final class Documents {

    private final PileReader reader;
    private final Catalogue texts;

    Documents(PileReader reader, Catalogue texts) {
        this.reader = reader;
        this.texts = texts;
    }

    /**
     * The pile in the body of a request.
     *
     * @throws Trouble when the body is not a sound pile document
     */
    Pile pile(Context ctx) {
        String type = ctx.contentType();
        if (type == null || !type.toLowerCase(Locale.ROOT).matches("application/json( *;.*)?")) {
            throw ProblemResponse.of(415, texts.text("web.api.type"));
        }
        ReadResult read = reader.read(texts.text("web.api.document"), ctx.bodyAsBytes());
        if (!read.problems().isEmpty()) {
            throw ProblemResponse.document(
                    texts.text("web.api.problems", read.problems().size()), read.problems());
        }
        return read.pile().orElseThrow();
    }
}
