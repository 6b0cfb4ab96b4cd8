package heapwright.accepted;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.Forecaster;
import heapwright.advice.WhatIf;
import heapwright.advice.audit.Audit;
import heapwright.advice.winter.PileOutlook;
import heapwright.knowledge.Remedy;
import heapwright.pile.Pile;
import heapwright.report.AdviceJson;
import heapwright.report.AuditJson;
import heapwright.report.AuditReport;
import heapwright.report.AuditTable;
import heapwright.report.Catalogue;
import heapwright.report.ModelJson;
import heapwright.report.OutlookReport;
import heapwright.report.TextReport;
import heapwright.report.TraceReport;
import heapwright.report.Units;
import heapwright.report.WhatIfJson;
import heapwright.report.WhyReport;
import heapwright.report.Words;
import heapwright.web.view.AdviceViews;
import heapwright.web.view.AuditViews;
import heapwright.web.view.CoursePicture;
import heapwright.web.view.CourseViews;
import heapwright.web.view.OutlookViews;
import heapwright.web.view.TrialViews;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** All that every door has to say of one pile, in both systems of units, as text and as JSON. */
final class Everything {

    private static final String VERSION = "test";

    private final Advisor advisor;
    private final Map<Units, Words> words;

    Everything(Advisor advisor) {
        this.advisor = advisor;
        this.words = Words.byUnits(advisor.knowledge(), Catalogue.english());
    }

    /**
     * What was worked out and what is said of it.
     *
     * @param advice the checkup
     * @param audit the audit, if there is a recipe
     * @param texts what people read, by door and units
     * @param json what programs read, by door and units
     */
    record Told(Advice advice, Optional<Audit> audit, Map<String, String> texts, Map<String, String> json) {}

    Told of(Pile pile) {
        Advice advice = advisor.advise(pile);
        Optional<Audit> audit = advisor.audit(pile, OptionalDouble.of(40));
        Forecaster forecaster = new Forecaster(advisor.knowledge());
        Optional<PileOutlook> ahead = forecaster.ahead(pile).or(() -> forecaster.aheadOfTypical(pile));
        Set<Remedy> steps = advice.steps().stream().map(s -> s.main().remedy()).collect(Collectors.toSet());
        Optional<WhatIf> whatIf = WhatIf.of(advice, steps, advisor.knowledge());
        Told told = new Told(advice, audit, new LinkedHashMap<>(), new LinkedHashMap<>());
        words.forEach((units, in) -> {
            told.texts.put("checkup " + units, new TextReport(in, false).write(advice));
            told.texts.put("trace " + units, new TraceReport(in).whole(advice));
            told.texts.put("why " + units, new WhyReport(in, false).write(advice));
            told.texts.put(
                    "checkup page " + units, new AdviceViews(in).view(advice).toString());
            told.texts.put(
                    "course page " + units,
                    new CourseViews(in).view(pile, advice.story()).toString());
            told.json.put("checkup " + units, new AdviceJson(in, VERSION).write(advice, true));
            told.json.put("why " + units, new AdviceJson(in, VERSION).write(advice, true));
            advice.story()
                    .ifPresent(
                            story -> told.texts.put("picture of the past " + units, new CoursePicture(in).of(story)));
            whatIf.ifPresent(tried -> {
                told.texts.put(
                        "trial page " + units, new TrialViews(in).view(tried).toString());
                told.json.put("what-if " + units, new WhatIfJson(in, VERSION).write(tried));
            });
            audit.ifPresent(done -> {
                told.texts.put("audit " + units, new AuditReport(in, false).write(done));
                told.texts.put("audit table " + units, new AuditTable(in).write(done));
                told.texts.put(
                        "audit page " + units, new AuditViews(in).view(done).toString());
                told.json.put("audit " + units, new AuditJson(in, VERSION).write(done));
            });
            ahead.ifPresent(seen -> {
                told.texts.put("outlook " + units, new OutlookReport(in, false).write(seen));
                told.texts.put(
                        "outlook page " + units, new OutlookViews(in).view(seen).toString());
                told.json.put("outlook " + units, new ModelJson(in, VERSION).outlook(seen));
                told.texts.put("picture ahead " + units, new CoursePicture(in).of(seen, ""));
            });
        });
        return told;
    }
}
