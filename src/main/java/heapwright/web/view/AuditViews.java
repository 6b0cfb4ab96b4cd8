package heapwright.web.view;

import heapwright.advice.audit.Audit;
import heapwright.report.AuditReport;
import heapwright.report.Words;
import heapwright.web.view.BuildView.AuditView;
import heapwright.web.view.BuildView.Share;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts an audit into words for a page. */
public final class AuditViews {

    private final Words words;
    private final AuditReport report;

    public AuditViews(Words words) {
        this.words = words;
        this.report = new AuditReport(words, false);
    }

    /** The whole audit. */
    public AuditView view(Audit audit) {
        return new AuditView(
                audit.mark().id(),
                Stream.concat(
                                Stream.of(report.headline(audit)),
                                audit.alarm().isPresent()
                                        ? Stream.<String>empty()
                                        : words.toCheck(audit.pile()).stream())
                        .collect(Collectors.joining(" ")),
                report.sections(audit),
                audit.readings().stream().flatMap(r -> words.fact(r).stream()).toList(),
                new AdviceViews(words).cautions(AuditReport.cautions(audit)),
                audit.contributions().stream()
                        .map(c -> new Share(
                                c.material().name(),
                                words.figures().mass(c.kgWet()),
                                words.figures().mass(c.kgWater()),
                                words.figures().mass(c.kgCarbon()),
                                words.figures().mass(c.kgNitrogen())))
                        .toList());
    }
}
