package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.danger.Alarm;
import heapwright.advice.ready.Cover;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.advice.ready.ReadyDates;
import heapwright.advice.ready.TestPlan;
import heapwright.knowledge.RipeReasonInfo;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.process.mixture.Band;
import heapwright.process.use.Layer;
import heapwright.process.use.TestResults;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** Whether compost is ready, as JSON. Litres, square metres and centimetres, always. */
public final class ReadyJson {

    private final Words words;
    private final UseWords said;
    private final String version;

    public ReadyJson(Words words, String version) {
        this.words = words;
        this.said = new UseWords(words);
        this.version = version;
    }

    /** The document. */
    public String write(ReadyAnswer answer) {
        ObjectNode root = root(answer.pile());
        new AlarmJson(words).write(root, Optional.empty());
        root.put("headline", said.headline(answer));
        root.put("ready", answer.grade().id()).put("sure", answer.sure().id());
        words.toCheck(answer.pile()).forEach(root.putArray("toCheck")::add);
        ArrayNode reasons = root.putArray("reasons");
        answer.reasons().forEach(r -> reason(reasons.addObject(), r));
        ArrayNode odds = root.putArray("contradictions");
        answer.contradictions().forEach(o -> odds.add(said.atOdds(o)));
        ArrayNode results = root.putArray("results");
        for (HomeTest test : HomeTest.values()) {
            TestResults.OnDay result = answer.results().get(test);
            if (result != null) {
                results.addObject()
                        .put("test", test.token())
                        .put("result", result.result().token())
                        .put("date", result.day().toString())
                        .put("counts", result.counts());
            }
        }
        ArrayNode tests = root.putArray("tests");
        answer.tests().forEach(t -> test(tests.addObject(), t));
        ObjectNode left = root.putObject("left");
        left.put("from", answer.left().from().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        band(left.putObject("litres"), answer.left().litres());
        ArrayNode uses = root.putArray("uses");
        answer.covers().forEach(c -> use(uses.addObject(), c));
        dates(root.putObject("dates"), answer.dates());
        return JsonText.write(root) + "\n";
    }

    /** The document while a danger stands: the danger alone. */
    public String alarmed(Pile pile, Alarm alarm) {
        return new AlarmJson(words).alone(root(pile), alarm);
    }

    private ObjectNode root(Pile pile) {
        return JsonText.object("ready")
                .put("version", version)
                .put("pile", pile.name())
                .put("asOf", pile.asOf().toString());
    }

    private static void reason(ObjectNode node, RipeReasonInfo reason) {
        node.put("reason", reason.id().id()).put("allows", reason.allows().id());
        node.put("danger", reason.danger()).put("says", reason.says()).put("then", reason.then());
        reason.sources().forEach(node.putArray("sources")::add);
        node.put("known", reason.known().id());
    }

    private void test(ObjectNode node, TestPlan plan) {
        node.put("test", plan.test().id().token()).put("name", plan.test().name());
        node.put("start", plan.start().toString())
                .put("from", plan.from().toString())
                .put("to", plan.to().toString())
                .put("again", plan.again());
        node.put("needs", plan.test().needs()).put("how", plan.test().how());
        ArrayNode readings = node.putArray("readings");
        plan.test()
                .readings()
                .forEach(r -> readings.addObject()
                        .put("result", r.result().token())
                        .put("reads", r.reads())
                        .put("allows", r.allows().id()));
        plan.test().sources().forEach(node.putArray("sources")::add);
        node.put("known", plan.test().known().id());
    }

    private static void use(ObjectNode node, Cover cover) {
        node.put("use", cover.use().id()).put("name", cover.use().name());
        node.put("kind", cover.use().kind().id()).put("allowed", cover.allowed());
        node.put("needs", cover.use().needs().id()).put("food", cover.use().food());
        node.put("low", cover.use().low())
                .put("usual", cover.use().usual())
                .put("high", cover.use().high());
        cover.areaM2().ifPresent(a -> {
            node.put("litresPerM2", JsonText.fine(new Layer(cover.use().usual()).litresPerM2()));
            band(node.putObject("coversM2"), a);
        });
        cover.mixLitres().ifPresent(m -> band(node.putObject("mixLitres"), m));
        node.put("often", cover.use().often()).put("note", cover.use().note());
        cover.use().sources().forEach(node.putArray("sources")::add);
        node.put("known", cover.use().known().id());
    }

    private static void dates(ObjectNode node, ReadyDates dates) {
        date(node, "curingEnds", dates.curingEnds());
        date(node, "walnutEnds", dates.walnutEnds());
        date(node, "manureEnds", dates.manureEnds());
        node.put("spreadFrom", dates.spreadFrom().toString());
        node.put("yearKnown", dates.yearKnown().name().toLowerCase(Locale.ROOT));
        date(node, "spreadOn", dates.spreadOn());
        date(node, "harvestTouchingSoil", dates.harvestTouchingSoil());
        date(node, "harvestOthers", dates.harvestOthers());
    }

    private static void date(ObjectNode node, String field, Optional<LocalDate> day) {
        day.ifPresent(d -> node.put(field, d.toString()));
    }

    private static void band(ObjectNode node, Band band) {
        node.put("low", JsonText.fine(band.low()))
                .put("likely", JsonText.fine(band.likely()))
                .put("high", JsonText.fine(band.high()));
    }
}
