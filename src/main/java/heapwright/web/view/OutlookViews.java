package heapwright.web.view;

import heapwright.advice.winter.Ahead;
import heapwright.report.OutlookReport;
import heapwright.report.Words;
import java.util.Locale;

/** Puts the winter ahead into words for a page. */
public final class OutlookViews {

    private static final double WARM_C = 40;

    private final Words words;
    private final OutlookReport report;

    public OutlookViews(Words words) {
        this.words = words;
        this.report = new OutlookReport(words, false);
    }

    /** What lies ahead. */
    public OutlookView view(Ahead ahead) {
        String known = ahead.model().climate().known().name().toLowerCase(Locale.ROOT);
        return new OutlookView(
                report.headline(ahead),
                report.end(ahead),
                report.figures(ahead),
                report.plans(ahead),
                words.figures().temperature(WARM_C),
                words.text("web.outlook.weather." + known) + " " + words.text("model.aid"));
    }
}
