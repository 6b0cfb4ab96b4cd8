package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.Advice;
import heapwright.advice.danger.Alarm;
import heapwright.advice.winter.Gain;
import heapwright.advice.winter.HeldBack;
import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.Story;
import heapwright.pile.Pile;
import heapwright.process.heat.Bands;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.Range;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** Writes what the process model says as JSON. Temperatures in °C, always. */
public final class ModelJson {

    private static final double GRAIN = 100;

    private final Words words;
    private final ModelWords model;
    private final GainWords gains;
    private final String version;

    public ModelJson(Words words, String version) {
        this.words = words;
        this.model = new ModelWords(words);
        this.gains = new GainWords(words);
        this.version = version;
    }

    /** The outlook as a document. */
    public String outlook(PileOutlook ahead) {
        ObjectNode root = JsonText.object("outlook");
        LocalDate first = ahead.firstDay();
        root.put("version", version);
        root.put("pile", ahead.model().pile().name());
        root.put("from", first.toString());
        root.put("to", first.plusDays(ahead.core().likely().length - 1L).toString());
        root.put("headline", new OutlookReport(words, false).headline(ahead));
        root.put("fits", ahead.fits());
        words.toCheck(ahead.model().pile()).forEach(root.putArray("toCheck")::add);
        new AlarmJson(words).write(root, Optional.empty());
        premises(root, ahead.model());
        CourseView course = CourseView.of(ahead);
        ArrayNode days = root.putArray("days");
        for (int d = 0; d < ahead.core().likely().length; d++) {
            ObjectNode day = days.addObject();
            day.put("date", first.plusDays(d).toString());
            band(day.putObject("coreC"), ahead.core(), d);
            band(day.putObject("midC"), ahead.mid(), d);
            band(day.putObject("skinC"), ahead.skin(), d);
            band(day.putObject("outdoorC"), ahead.outdoor(), d);
            day.put("heldBackBy", course.factor(d).id());
        }
        figures(root.putObject("figures"), ahead, first);
        ahead.wish()
                .ifPresent(wish -> root.putObject("readyBy")
                        .put("date", wish.day().toString())
                        .put("answer", wish.answer().id())
                        .put("chance", fine(wish.chance())));
        ArrayNode plans = root.putArray("plans");
        for (PileOutlook.PlanOutcome plan : ahead.plans()) {
            ObjectNode node = plans.addObject();
            node.put("plan", plan.plan().id());
            node.put("text", model.plan(plan, ahead));
            node.put("day", plan.day());
            gain(node.putObject("gain"), plan.gain(), first);
        }
        return JsonText.write(root);
    }

    /** The document in place of an outlook while a danger stands. */
    public String alarmed(Pile pile, Alarm alarm) {
        ObjectNode root = JsonText.object("outlook");
        root.put("version", version);
        root.put("pile", pile.name());
        root.put("headline", new AlarmText(words).headline(alarm));
        new AlarmJson(words).write(root, Optional.of(alarm));
        return JsonText.write(root);
    }

    private static void figures(ObjectNode node, PileOutlook ahead, LocalDate first) {
        Outlook f = ahead.figures();
        node.put("freezesThrough", fine(f.freezesThrough()));
        range(node.putObject("peakC"), f.peakC());
        range(node.putObject("daysAbove40"), f.daysAbove40());
        range(node.putObject("daysAbove55"), f.daysAbove55());
        range(node.putObject("massLeft"), f.massLeft());
        range(node.putObject("volumeLeft"), f.volumeLeft());
        ObjectNode ready = node.putObject("ready");
        ReadyWords.write(ready, ahead.ready(), ahead.fits());
    }

    /** What the model says of the past, under "story". */
    public void story(ObjectNode root, Advice advice, boolean whole) {
        advice.why().ifPresent(answer -> {
            ObjectNode why = root.putObject("why");
            why.put("verdict", answer.verdict().id());
            why.put("factor", answer.factor().id());
            answer.cause().ifPresent(c -> why.put("cause", c.id()));
            why.put("text", model.answer(answer));
        });
        gains.ofAllSteps(advice).forEach(root.putArray("modelOfSteps")::add);
        advice.story().ifPresent(s -> story(root.putObject("story"), s, whole));
    }

    private void story(ObjectNode node, Story story, boolean whole) {
        node.put("verdict", story.verdict().id());
        node.put("factor", story.factor().id());
        node.put("shortfallC", fine(story.shortfallC()));
        node.put("measuredOn", story.model().date(story.telling().day()).toString());
        story.stalledOn()
                .ifPresent(d -> node.put("stalledOn", story.model().date(d).toString()));
        premises(node, story.model());
        ArrayNode stretches = node.putArray("stretches");
        for (HeldBack.Held held : story.held().held()) {
            ObjectNode stretch = stretches.addObject();
            stretch.put("from", story.model().date(held.from()).toString());
            stretch.put("to", story.model().date(held.to()).toString());
            stretch.put("heldBackBy", held.factor().id());
            stretch.put("warmerC", fine(held.kelvin()));
        }
        story.atOnce()
                .ifPresent(cost ->
                        node.putObject("atOnce").put("text", model.atOnce(cost)).put("warmerC", fine(cost.kelvin())));
        ArrayNode right = node.putArray("putRight");
        for (HeldBack.Cost cost : story.costs()) {
            ObjectNode one = right.addObject();
            one.put("factor", cost.factor().id());
            one.put("text", model.cost(cost));
            one.put("warmerC", fine(cost.kelvin()));
            one.put("warmerDays", cost.days());
            one.put("moreDaysAbove40", cost.moreWarmDays());
        }
        if (whole) {
            days(node.putArray("days"), story);
        }
    }

    private static void days(ArrayNode days, Story story) {
        for (int d = 0; d <= story.model().age(); d++) {
            ObjectNode day = days.addObject();
            day.put("date", story.model().date(d).toString());
            day.put("coreC", fine(story.past().course().days().get(d).coreC()));
            band(day.putObject("healthyCoreC"), story.healthy(), d);
            day.put("outdoorC", fine(story.model().climate().weather().airC(d)));
        }
    }

    /** What a step wins. */
    void gain(ObjectNode node, Gain gain, LocalDate today) {
        gains.gain(gain, today).ifPresent(told -> node.put("text", told));
        node.put("tells", gain.tells());
        node.put("asleep", gain.asleep());
        range(node.putObject("daysWon"), gain.daysWon());
        range(node.putObject("warmerC"), gain.warmerC());
        range(node.putObject("moreDaysAbove40"), gain.moreWarmDays());
        node.put("backAbove40Chance", fine(gain.with().chance()));
        range(node.putObject("backAbove40Days"), gain.with().days());
        node.put("withoutChance", fine(gain.without().chance()));
        range(node.putObject("withoutDays"), gain.without().days());
        node.put("freezesThrough", fine(gain.frost().with()));
        node.put("withoutFreezesThrough", fine(gain.frost().without()));
    }

    private void premises(ObjectNode node, PileModel of) {
        node.put("typicalRecipe", of.typical());
        node.put("climate", of.climate().known().name().toLowerCase(Locale.ROOT));
        ArrayNode premises = node.putArray("premises");
        model.premises(of).forEach(premises::add);
    }

    private static void band(ObjectNode node, Bands bands, int day) {
        node.put("low", fine(bands.low()[day]))
                .put("likely", fine(bands.likely()[day]))
                .put("high", fine(bands.high()[day]));
    }

    private static void range(ObjectNode node, Range r) {
        node.put("low", fine(r.low())).put("likely", fine(r.likely())).put("high", fine(r.high()));
    }

    private static double fine(double value) {
        return Math.round(value * GRAIN) / GRAIN + 0.0;
    }
}
