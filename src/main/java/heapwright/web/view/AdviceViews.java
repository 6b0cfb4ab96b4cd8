package heapwright.web.view;

import heapwright.advice.Advice;
import heapwright.advice.Afternoon;
import heapwright.advice.Finding;
import heapwright.advice.Headline;
import heapwright.advice.Option;
import heapwright.advice.Question;
import heapwright.advice.Step;
import heapwright.advice.engine.EvidencePiece;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.CautionInfo.Severity;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.report.AdviceWords;
import heapwright.report.AlarmText;
import heapwright.report.DoseWords;
import heapwright.report.HeadlineText;
import heapwright.report.HeldText;
import heapwright.report.JobText;
import heapwright.report.Words;
import heapwright.web.view.AdviceView.CareView;
import heapwright.web.view.AdviceView.CautionView;
import heapwright.web.view.AdviceView.EvidenceView;
import heapwright.web.view.AdviceView.FindingView;
import heapwright.web.view.AdviceView.Line;
import heapwright.web.view.AdviceView.QuestionView;
import heapwright.web.view.AdviceView.StepView;
import heapwright.web.view.AdviceView.WorkView;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Puts advice into words for a page. */
public final class AdviceViews {

    private final Words words;
    private final DoseWords doses;
    private final JobText jobs;
    private final AdviceWords advised;
    private final AlarmText alarm;
    private final DateTimeFormatter longDay;
    private final DateTimeFormatter shortDay;

    public AdviceViews(Words words) {
        this.words = words;
        this.doses = new DoseWords(words);
        this.jobs = new JobText(words);
        this.alarm = new AlarmText(words);
        this.advised = new AdviceWords(words);
        this.longDay =
                DateTimeFormatter.ofPattern("d MMMM yyyy", words.catalogue().locale());
        this.shortDay =
                DateTimeFormatter.ofPattern("EEE d MMM", words.catalogue().locale());
    }

    /** The whole advice. */
    public AdviceView view(Advice advice) {
        Afternoon work = Afternoon.of(advice, words.knowledge());
        List<Step> rest =
                advice.steps().subList(work.jobs().size(), advice.steps().size());
        return new AdviceView(
                advice.pile().name(),
                advice.pile().asOf().format(longDay),
                new HeadlineText(words).of(advice),
                advice.alarm().isPresent(),
                Headline.of(advice, words.knowledge()).kind() == Headline.Kind.WELL,
                work.jobs().isEmpty() ? Optional.empty() : Optional.of(work(work, advice)),
                rest.stream().map(s -> step(s, advice.pile())).toList(),
                cautions(advice),
                advice.findings().stream().map(f -> finding(f, advice.pile())).toList(),
                new HeldText(words)
                        .of(advice.withheld()).stream()
                                .map(t -> new Line(t.id(), t.steps(), t.reason()))
                                .toList(),
                advice.setAside().stream()
                        .map(f -> new Line(f.cause().id(), words.cause(f.cause()), advised.aside(f)))
                        .toList(),
                advice.questions().stream()
                        .map(q -> question(q, advice.pile().container().kind()))
                        .toList(),
                advice.readings().stream().flatMap(r -> words.fact(r).stream()).toList(),
                clashes(advice),
                advice.alarm().map(alarm::reasons).orElse(List.of()),
                whenSafe(advice));
    }

    private List<String> whenSafe(Advice advice) {
        List<String> lines = new ArrayList<>(advice.alarm().map(alarm::over).orElse(List.of()));
        alarm.waiting(advice).ifPresent(lines::add);
        return lines;
    }

    /**
     * A question with the reason it helps.
     *
     * @param kind what holds the pile
     */
    public QuestionView question(Question question, Container.Kind kind) {
        SignInfo sign = words.knowledge().signs().get(question.sign());
        return new QuestionView(sign.id().id(), sign.ask(), sign.how(kind), advised.helps(question));
    }

    private CauseInfo info(Finding finding) {
        return words.knowledge().causes().get(finding.cause());
    }

    private WorkView work(Afternoon work, Advice advice) {
        Step first = work.jobs().get(0);
        RemedyInfo info = words.way(first.main().remedy(), advice.pile());
        LocalDate day = JobText.day(first);
        return new WorkView(
                jobs.when(work),
                jobs.fetch(work, advice.pile()),
                jobs.others(work, advice.pile()),
                work.jobs().stream().map(j -> step(j, advice.pile())).toList(),
                care(jobs.care(work, advice)),
                day.toString(),
                day.equals(advice.pile().asOf()) ? words.text("web.look.done") : words.text("web.look.on", day(day)),
                info.expect(),
                first.again() ? "" : info.otherwise());
    }

    private List<CareView> care(List<CautionInfo> cautions) {
        Map<Severity, List<CautionInfo>> bySeverity = cautions.stream()
                .collect(Collectors.groupingBy(CautionInfo::severity, TreeMap::new, Collectors.toList()));
        return bySeverity.entrySet().stream()
                .map(e -> new CareView(
                        e.getKey().id(),
                        words.word("severity", e.getKey()),
                        e.getValue().stream()
                                .map(c -> sentence(c.title()) + (c.severity() == Severity.DANGER ? " " + c.text() : ""))
                                .collect(Collectors.joining(" "))))
                .toList();
    }

    private static String sentence(String title) {
        return title.endsWith(".") ? title : title + ".";
    }

    private StepView step(Step step, Pile pile) {
        Option main = step.main();
        RemedyInfo info = words.way(main.remedy(), pile);
        return new StepView(
                step.rank(),
                main.remedy().id(),
                info.name(),
                doses.told(main, pile),
                words.word("urgency", step.urgency()),
                jobs.how(step, pile),
                doses.remarks(main, pile),
                advised.why(main),
                info.expect(),
                days(step),
                info.otherwise(),
                info.notWhen(),
                step.alternatives().stream()
                        .map(o -> new Line(
                                o.remedy().id(),
                                words.way(o.remedy(), pile).name(),
                                String.join(" ", doses.lines(o, pile))))
                        .toList(),
                main.cautions().stream().map(words::caution).toList());
    }

    private String days(Step step) {
        return step.lookFrom().equals(step.lookTo())
                ? day(step.lookFrom())
                : words.text("web.look.span", day(step.lookFrom()), day(step.lookTo()));
    }

    private String day(LocalDate day) {
        return day.format(shortDay);
    }

    private List<CautionView> cautions(Advice advice) {
        return advised.cautions(advice).stream().map(this::caution).toList();
    }

    /** Cautions in full, the gravest first. */
    public List<CautionView> cautions(Collection<Caution> all) {
        return advised.cautions(all).stream().map(this::caution).toList();
    }

    private CautionView caution(CautionInfo c) {
        return new CautionView(
                c.id().id(),
                c.severity().id(),
                words.word("severity", c.severity()),
                c.title(),
                c.text(),
                c.why(),
                c.localRules().map(r -> words.text("local.rules", r)));
    }

    private FindingView finding(Finding finding, Pile pile) {
        CauseInfo info = info(finding);
        return new FindingView(
                info.id().id(),
                info.kind().id(),
                info.name(),
                words.word("grade", finding.grade()),
                words.inHundred(finding.likelihood()),
                info.summary(),
                info.why(),
                info.tellApart(),
                evidence(finding.weighed().supports()),
                evidence(finding.weighed().opposes()),
                EvidenceDays.of(finding, pile).stream().map(LocalDate::toString).collect(Collectors.toList()));
    }

    private List<EvidenceView> evidence(List<EvidencePiece> pieces) {
        return pieces.stream()
                .sorted(Comparator.comparing(p -> !p.counted()))
                .map(p -> new EvidenceView(
                        words.word("strength", p.rule().strength()),
                        advised.because(p),
                        words.rationale(p.rule()),
                        p.rule().id(),
                        p.rule().source(),
                        words.word("known", p.rule().evidence()),
                        p.counted()))
                .toList();
    }

    private List<String> clashes(Advice advice) {
        List<String> all =
                advice.alarm().isPresent() ? new ArrayList<>() : new ArrayList<>(words.toCheck(advice.pile()));
        all.addAll(advised.clashes(advice));
        return all;
    }
}
