package heapwright.report;

import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Judgement;
import heapwright.advice.audit.OwnFigureDoubt;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Topic;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Known;
import heapwright.knowledge.Limit;
import heapwright.knowledge.LimitInfo;
import heapwright.knowledge.Reading;
import heapwright.process.mixture.Averaging;
import heapwright.process.mixture.CarbonCheck.Verdict;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes what the numbers of an audit say, the worst first, and where the sources part. */
final class JudgementText {

    private static final int INDENT = 3;
    private static final int MOST_CLAUSES = 2;

    private final Words words;

    JudgementText(Words words) {
        this.words = words;
    }

    void write(ReportWriter page, Audit audit) {
        page.heading(words.text("audit.section.numbers"));
        Set<Limit> told = EnumSet.noneOf(Limit.class);
        audit.judgements().stream()
                .filter(j -> j.mark() != Mark.FITS)
                .forEach(j -> page.paragraph(0, INDENT, "- " + unfit(j, told)));
        List<Judgement> fits =
                audit.judgements().stream().filter(j -> j.mark() == Mark.FITS).toList();
        String figures = fits.stream()
                .map(this::figures)
                .filter(t -> !t.isEmpty())
                .distinct()
                .collect(Collectors.joining("; "));
        if (!figures.isEmpty()) {
            page.paragraph(0, INDENT, "- " + words.word("mark", Mark.FITS) + ": " + figures + ".");
        }
        fits.stream()
                .filter(j -> j.topic() != Topic.LAYERS && figures(j).isEmpty())
                .map(j -> words.rationale(j.firing().rule()))
                .distinct()
                .forEach(t -> page.paragraph(0, INDENT, "- " + t));
        audit.ownPairs().forEach(p -> page.paragraph(0, INDENT, "- " + pair(p)));
        own(audit).ifPresent(text -> page.paragraph(0, INDENT, "- " + text));
    }

    /** What became of the C:N that the person worked out; empty where they told none. */
    Optional<String> own(Audit audit) {
        return audit.ownFigure().map(this::shortcut);
    }

    private String unfit(Judgement judgement, Set<Limit> told) {
        List<Reads> reads = judgement.firing().because().stream()
                .filter(Reads.class::isInstance)
                .map(Reads.class::cast)
                .distinct()
                .toList();
        boolean plain = reads.size() == 1 && reads.get(0).reading() != Reading.VOLUME;
        String facts = plain ? words.range(reads.get(0)) : figures(judgement);
        return words.text(
                        facts.isEmpty() ? "audit.judged" : "audit.judged-figures",
                        words.word("mark", judgement.mark()),
                        judgement.firing().rule().name(),
                        facts)
                + " " + words.rationale(judgement.firing().rule())
                + judgement
                        .decidedBy()
                        .filter(l -> told.add(l.limit()))
                        .map(l -> " " + sources(words.knowledge().limits().get(l.limit())))
                        .orElse("");
    }

    /** Where the sources part on the limit that decided, shortly; the whole of it stands in the JSON document. */
    private String sources(LimitInfo limit) {
        return limit.known() == Known.JUDGEMENT
                ? words.text("audit.own-edge")
                : words.text("audit.sources", inShort(limit.spread()));
    }

    private String figures(Judgement judgement) {
        return judgement.firing().because().stream()
                .map(this::figure)
                .flatMap(Optional::stream)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private Optional<String> figure(Object fact) {
        if (fact instanceof Reads r && r.reading() == Reading.VOLUME) {
            return Optional.of(words.text("audit.volume", words.range(r)));
        }
        if (fact instanceof Reads r) {
            return Optional.of(words.word("reading", r.reading()) + " " + words.range(r));
        }
        if (fact instanceof WentIn w && !Double.isNaN(w.share())) {
            return Optional.of(words.text(
                    "audit.share",
                    words.word("trait", w.trait()),
                    words.figures().round(w.sharePct())));
        }
        return Optional.empty();
    }

    /** The first clauses of what the sources say; a page has no room for more. */
    private static String inShort(String spread) {
        int end = spread.indexOf(". ");
        String sentence = Words.withoutStop(end < 0 ? spread : spread.substring(0, end));
        String[] clauses = sentence.split("; ");
        return clauses.length <= MOST_CLAUSES
                ? sentence + "."
                : String.join("; ", List.of(clauses).subList(0, MOST_CLAUSES)) + "; …";
    }

    private String pair(OwnFigureDoubt pair) {
        String key = pair.check().verdict() == Verdict.TOO_MUCH_CARBON
                ? "audit.pair.much"
                : pair.check().verdict() == Verdict.LITTLE_CARBON ? "audit.pair.little" : "audit.pair.unusual";
        return words.text(
                key, pair.name(), told(pair), words.figures().round(pair.check().carbonPct()));
    }

    private String told(OwnFigureDoubt pair) {
        boolean alone = pair.told() == OwnFigureDoubt.Told.NITROGEN && pair.nitrogenPct() <= 0;
        return words.text(
                "audit.pair.told." + (alone ? "none" : pair.told().name().toLowerCase(Locale.ROOT)),
                words.figures().round(pair.carbonToNitrogen()),
                words.figures().round(pair.nitrogenPct()));
    }

    private String shortcut(Averaging own) {
        return words.text(
                "audit.own." + own.shortcut().name().toLowerCase(Locale.ROOT),
                words.figures().round(own.average()),
                words.figures().round(own.balanced()));
    }
}
