package heapwright.web.site;

import heapwright.journal.RequestKey;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Action;
import heapwright.report.Words;
import heapwright.web.guard.Tokens;
import heapwright.web.view.SendAgainView;
import heapwright.web.view.SendAgainView.Line;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A form as it was sent: known again when it comes twice, and shown again when it could not be taken. */
final class SentForm {

    /** What a person types, by the name of its field, with the key of its label, in the order of the forms. */
    private static final List<Map.Entry<String, String>> TYPED = List.of(
            Map.entry("name", "piles.name"),
            Map.entry("built", "piles.built"),
            Map.entry("date", "note.date"),
            Map.entry("core", "note.core"),
            Map.entry("out", "note.out"),
            Map.entry("seen", "again.seen"),
            Map.entry("done", "note.done"),
            Map.entry("material", "note.material"),
            Map.entry("amount", "note.amount"),
            Map.entry("unit", "note.unit"),
            Map.entry("note", "note.note"));

    private final Context ctx;

    SentForm(Context ctx) {
        this.ctx = ctx;
    }

    /** Whether the request is a form, as our pages send it, that has been read. */
    boolean isOne() {
        return ctx.req().getMethod().equals("POST")
                && ctx.isFormUrlencoded()
                && !ctx.formParamMap().isEmpty();
    }

    /** Whether the form can be told from another with the same content, as one of our pages made it. */
    boolean isMarked() {
        String once = ctx.formParam(Tokens.ONCE);
        return once != null && !once.isEmpty();
    }

    /** Stands for the address and the content, the mark among it; the seal, new after a restart, is left out. */
    RequestKey key() {
        List<String> parts = new ArrayList<>();
        parts.add(ctx.path());
        new TreeMap<>(ctx.formParamMap()).forEach((name, values) -> {
            if (!name.equals(Tokens.FIELD)) {
                parts.add(name);
                parts.add(String.valueOf(values.size()));
                parts.addAll(values);
            }
        });
        return RequestKey.of(parts.toArray(String[]::new));
    }

    /** The form for a page that says why it was not taken. */
    SendAgainView again(String reason, Words words, Texts texts) {
        List<Line> carried = new ArrayList<>();
        ctx.formParamMap().forEach((name, values) -> {
            if (!name.equals(Tokens.FIELD)) {
                values.forEach(value -> carried.add(new Line(name, value)));
            }
        });
        List<Line> typed = TYPED.stream()
                .map(field -> new Line(texts.of(field.getValue()), value(field.getKey(), words)))
                .filter(line -> !line.value().isBlank())
                .toList();
        return new SendAgainView(reason, ctx.req().getRequestURI(), typed, carried);
    }

    private String value(String field, Words words) {
        List<String> values = ctx.formParams(field);
        // A unit goes with an amount and is chosen beforehand.
        if (field.equals("unit") && String.join("", ctx.formParams("amount")).isBlank()) {
            return "";
        }
        return values.stream().map(value -> shown(field, value, words)).collect(Collectors.joining(", "));
    }

    private static String shown(String field, String value, Words words) {
        return switch (field) {
            case "seen" ->
                words.knowledge().signs().values().stream()
                        .filter(sign -> sign.id().id().equals(value))
                        .map(SignInfo::shortName)
                        .findFirst()
                        .orElse(value);
            case "done" ->
                Arrays.stream(Action.values())
                        .filter(action -> action.token().equals(value))
                        .map(action -> words.text("action." + action.token()))
                        .findFirst()
                        .orElse(value);
            default -> value;
        };
    }
}
