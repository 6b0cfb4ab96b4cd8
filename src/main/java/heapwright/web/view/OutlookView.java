package heapwright.web.view;

import heapwright.report.OutlookReport.PlanLine;
import java.util.List;

/**
 * The winter ahead of a recipe.
 *
 * @param headline the whole in two sentences
 * @param until the day to which the figures count
 * @param figures the figures, a sentence each
 * @param plans what other ways would gain
 * @param ofAll what is to be said of all of them
 * @param warm the temperature above which a day counts as warm
 * @param weather where the weather comes from, and what the model is good for
 */
public record OutlookView(
        String headline,
        String until,
        List<String> figures,
        List<PlanLine> plans,
        List<String> ofAll,
        String warm,
        String weather) {}
