package heapwright.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Proposal;
import heapwright.advice.winter.ReadyAhead;
import heapwright.advice.winter.WantedDate;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;

/** When a pile will be ready, in the same words for outlook, audit and its first page. */
public final class ReadyWords {

    private final Words words;
    private final ModelWords model;

    public ReadyWords(Words words) {
        this.words = words;
        this.model = new ModelWords(words);
    }

    /** When it will be ready, or that it is not likely to be within the time looked at. */
    public String ready(ReadyAhead ready) {
        if (!ready.likely()) {
            return words.text(
                    ready.standing() ? "outlook.not-ready.standing" : "outlook.not-ready",
                    model.date(ready.lookedUntil()),
                    words.figures().number(100 * ready.chance(), 0));
        }
        String late = ready.date(ready.day().high())
                .map(model::date)
                .orElseGet(() -> words.text("outlook.later", model.date(ready.lookedUntil())));
        return words.text(
                ready.standing() ? "outlook.ready.standing" : "outlook.ready",
                model.date(ready.date(ready.day().likely()).orElseThrow()),
                model.date(ready.date(ready.day().low()).orElseThrow()),
                late);
    }

    /** When a plan will be ready: by the model where it can be built as told, else as piles of its kind go. */
    String ready(Audit audit, Proposal.Build build) {
        DateTimeFormatter month =
                DateTimeFormatter.ofPattern("MMMM yyyy", words.catalogue().locale());
        String from = build.ready().earliest().format(month);
        String to = build.ready().latest().format(month);
        String kind = words.text("audit.ready-by-kind", from, to);
        return audit.ready()
                .map(r -> {
                    if (r.likely()) {
                        return ready(r);
                    }
                    boolean apart = build.ready().earliest().isBefore(r.lookedUntil());
                    return ready(r) + " " + (apart ? words.text("audit.ready-apart", from, to) : kind);
                })
                .orElse(kind);
    }

    /** The answer to the day on which it is wanted. */
    String wish(ReadyAhead ready, WantedDate wish) {
        return words.text(
                "outlook.wish." + wish.answer().id(),
                model.date(wish.day()),
                words.figures().number(100 * wish.chance(), 0),
                model.date(ready.lookedUntil()));
    }

    /** The answer of a plan to the day on which it is wanted, behind a blank; empty where none was told. */
    String wish(Audit audit, Proposal.Build build) {
        return audit.pile()
                .aim()
                .readyBy()
                .map(day -> " "
                        + audit.ready()
                                .flatMap(r -> r.wish().map(w -> wish(r, w)))
                                .orElseGet(() -> wanted(day, audit.pile().asOf(), build)))
                .orElse("");
    }

    private String wanted(LocalDate day, LocalDate asOf, Proposal.Build build) {
        String told = new Days(words).of(day);
        if (day.isBefore(asOf)) {
            return words.text("audit.wanted.past", told);
        }
        if (day.isBefore(build.ready().earliest())) {
            return words.text("audit.wanted.too-soon", told);
        }
        return words.text(day.isBefore(build.ready().latest()) ? "audit.wanted.perhaps" : "audit.wanted.likely", told);
    }

    /** As data; a date past the time looked at is not known and left out. */
    static void write(ObjectNode node, ReadyAhead ready, boolean dates) {
        node.put("chance", JsonText.fine(ready.chance()));
        node.put("lookedUntil", ready.lookedUntil().toString());
        if (dates) {
            ready.date(ready.day().low()).ifPresent(d -> node.put("earliest", d.toString()));
            ready.date(ready.day().likely()).ifPresent(d -> node.put("likely", d.toString()));
            ready.date(ready.day().high()).ifPresent(d -> node.put("latest", d.toString()));
        }
    }
}
