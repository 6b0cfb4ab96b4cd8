package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.WhyAnswer;
import heapwright.advice.fact.ModelSays;
import heapwright.advice.fact.Seen;
import heapwright.advice.winter.Climate;
import heapwright.advice.winter.Factor;
import heapwright.advice.winter.HeldBack;
import heapwright.advice.winter.JointFault;
import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.Plan;
import heapwright.advice.winter.Story;
import heapwright.advice.winter.Verdict;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.Range;
import heapwright.process.heat.Retrace;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts what the process model says into sentences. */
public final class ModelWords {

    private static final int TOLD = 8;
    /** Twice the error that reviewed models made at the maximum (MASON06, abstract published). */
    private static final double CLEARLY_WARMER_K = 10;

    private static final int COSTS = 3;
    /** What cannot be put right has sentences of its own. */
    private static final Map<Factor, String> WITH_FIGURE =
            Map.of(Factor.COLD, "weather", Factor.FROZEN, "weather", Factor.UNKNOWN, "untold");

    private final Words words;
    private final DateTimeFormatter form;
    private final GainWords gains;

    public ModelWords(Words words) {
        this.words = words;
        this.form = DateTimeFormatter.ofPattern("d MMM yyyy", words.catalogue().locale());
        this.gains = new GainWords(words);
    }

    String date(LocalDate day) {
        return day.format(form);
    }

    /** The answer in a sentence or two. */
    public String answer(WhyAnswer answer) {
        boolean besides = answer.verdict() == Verdict.SOMETHING_WRONG && !answer.colder();
        boolean winter = answer.verdict() == Verdict.JUST_WINTER;
        boolean small = winter
                && answer.cause().filter(Cause.TOO_SMALL_FOR_COLD::equals).isPresent();
        String key = "why.verdict." + answer.verdict().id()
                + (small ? ".small" : "")
                + (besides ? ".besides" : winter && answer.colder() ? ".colder" : "");
        return answer.cause()
                .map(c -> words.text(key) + " " + words.text("why.rests-on", words.cause(c)) + otherwise(answer))
                .orElseGet(() ->
                        words.text(key) + " " + words.text("why.by-model", words.word("factor", answer.factor())));
    }

    /** That the temperatures alone would say another thing, and which to trust. */
    private String otherwise(WhyAnswer answer) {
        List<String> all = new ArrayList<>();
        answer.temperatures()
                .ifPresent(said ->
                        all.add(words.text("why.temperatures-say", words.text("why.temperatures." + said.id()))));
        answer.model().ifPresent(f -> all.add(words.text("why.model-holds", words.word("factor", f))));
        if (all.isEmpty()) {
            return "";
        }
        all.add(words.text("why.trust"));
        return " " + String.join(" ", all);
    }

    /** The letter that stands for a factor in a strip. */
    public String letter(Factor factor) {
        return words.text("factor.letter." + factor.id());
    }

    /** What the letters of a strip stand for, each once, in a sentence. */
    public String letters(List<CourseView.Held> strip) {
        String told = strip.stream()
                .map(CourseView.Held::factor)
                .distinct()
                .map(f -> letter(f) + " " + words.word("factor", f))
                .collect(Collectors.joining(", "));
        return words.text("sketch.legend-held", told);
    }

    /** What the temperatures say by themselves. */
    public String temperatures(Story s) {
        int day = s.telling().day();
        double low = s.healthy().low()[day];
        double high = s.healthy().high()[day];
        double core = s.telling().celsius();
        String band = words.figures()
                .span(words.figures().temperature(low), words.figures().temperature(high));
        String said = words.text(
                "why.beside-healthy", date(s.model().date(day)), words.figures().temperature(core), band);
        return said + " "
                + words.text(
                        s.colder() ? "why.short" : "why.within", words.figures().temperatureDifference(s.shortfallC()))
                + tooCold(s);
    }

    /** Where the pile was clearly warmer than the band, the model is at fault and not the pile, and that is said. */
    private String tooCold(Story s) {
        double[] high = s.healthy().high();
        return s.model().cores().stream()
                .filter(c -> c.celsius() - high[c.day()] > CLEARLY_WARMER_K)
                .max(Comparator.comparingDouble(c -> c.celsius() - high[c.day()]))
                .map(c -> " "
                        + words.text(
                                "why.model-too-cold",
                                date(s.model().date(c.day())),
                                words.figures().temperatureDifference(c.celsius() - high[c.day()])))
                .orElse("");
    }

    /** When it stalled; nothing of a pile that is warm, works, has finished, or never warmed by what was told. */
    public List<String> stall(Advice advice) {
        boolean neverWarm = advice.outcome().facts().stream()
                .anyMatch(f -> f instanceof Seen seen && seen.sign() == Sign.NEVER_HEATED);
        Optional<Story> told = advice.story()
                .filter(s -> !neverWarm)
                .filter(s -> advice.why()
                        .filter(w -> w.verdict() == Verdict.WORKING || w.verdict() == Verdict.FINISHED)
                        .isEmpty());
        return told.map(this::stalled).orElse(List.of());
    }

    private List<String> stalled(Story story) {
        return story.stalledOn().isEmpty()
                ? List.of()
                : List.of(
                        story.stalledOn().getAsInt() == 0
                                ? words.text("why.never-warm")
                                : words.text(
                                        "why.stalled",
                                        date(story.model()
                                                .date(story.stalledOn().getAsInt())),
                                        words.figures().temperature(Retrace.STALLED_C)));
    }

    /** What held it back when, in lines; no more than eight are told. */
    public List<String> stretches(Story story) {
        return story.held().held().stream()
                .limit(TOLD)
                .map(held -> words.text(
                        "why.stretch",
                        date(story.model().date(held.from())),
                        date(story.model().date(held.to())),
                        words.word("factor", held.factor()),
                        stretch(held)))
                .toList();
    }

    private String stretch(HeldBack.Held held) {
        boolean told = held.kelvin() >= 1;
        return words.text(
                "why.stretch." + (told ? WITH_FIGURE.getOrDefault(held.factor(), "right") : "plain"),
                words.figures().temperatureDifference(held.kelvin()));
    }

    /** What would have kept it warm, put right from the beginning: what would not alone, then the dearest, three in all. */
    public List<String> costs(Story story) {
        return Stream.concat(
                        story.atOnce().map(this::atOnce).stream(),
                        story.costs().stream().map(this::cost))
                .limit(COSTS)
                .toList();
    }

    /** What a fault cost that held it back at once with what is no fault. */
    String atOnce(JointFault cost) {
        String right = words.word("right", cost.factor());
        String warmer = words.figures().temperatureDifference(cost.kelvin());
        return cost.beside() == Factor.NONE
                ? words.text("why.cost.at-once", right, warmer)
                : words.text("why.cost.at-once-beside", right, warmer, words.word("right", cost.beside()));
    }

    /** What one thing cost. */
    String cost(HeldBack.Cost cost) {
        return words.text(
                "why.cost",
                words.word("right", cost.factor()),
                words.figures().temperatureDifference(cost.kelvin()),
                cost.days(),
                gains.more(new Range(cost.moreWarmDays(), cost.moreWarmDays(), cost.moreWarmDays())),
                words.figures().temperature(Outlook.WARM_C));
    }

    /** What the model takes for granted. */
    List<String> premises(PileModel model) {
        List<String> all = new ArrayList<>();
        words.assumed(model.pile()).ifPresent(all::add);
        Climate climate = model.climate();
        all.add(words.text(
                "climate." + climate.known().name().toLowerCase(java.util.Locale.ROOT),
                words.text("climate.latitude." + model.pile().place().climate().token())));
        if (model.typical()) {
            all.add(words.text("model.typical"));
        }
        if (!model.marks().isEmpty()) {
            all.add(words.text("model.marks"));
        }
        all.add(words.text("model.aid"));
        return all;
    }

    /** A plan in words; a pile that stands is enlarged otherwise than one that is planned. */
    String plan(PileOutlook.PlanOutcome plan, PileOutlook ahead) {
        String key = "plan." + plan.plan().id();
        return words.text(
                plan.plan() == Plan.BIGGER && !ahead.fresh() ? key + "-standing" : key,
                date(ahead.firstDay().plusDays(plan.day())),
                plan.day(),
                words.figures().depth(Plan.INSULATION_CM));
    }

    /** What the model told the rules. */
    static String fact(Words words, ModelSays said) {
        return words.text("model.says." + said.says().id(), words.figures().temperatureDifference(said.shortfallC()));
    }
}
