package heapwright.web.view;

import heapwright.advice.winter.PileOutlook;
import heapwright.report.OutlookReport;
import heapwright.report.Words;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts the winter ahead into words for a page. */
public final class OutlookViews {

    private static final double WARM_C = 40;

    private final Words words;
    private final OutlookReport report;

    public OutlookViews(Words words) {
        this.words = words;
        this.report = new OutlookReport(words, false);
    }

    private String headline(PileOutlook ahead) {
        return Stream.concat(
                        Stream.of(report.headline(ahead)),
                        words.toCheck(ahead.model().pile()).stream())
                .collect(Collectors.joining(" "));
    }

    /** What lies ahead. */
    public OutlookView view(PileOutlook ahead) {
        String known = ahead.model().climate().known().name().toLowerCase(Locale.ROOT);
        return new OutlookView(
                headline(ahead),
                report.end(ahead),
                report.figures(ahead),
                report.plans(ahead),
                report.ofAllPlans(ahead),
                words.figures().temperature(WARM_C),
                words.text("web.outlook.weather." + known) + " " + words.text("model.aid"));
    }
}
