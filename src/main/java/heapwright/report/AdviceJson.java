package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.Option;
import heapwright.advice.Question;
import heapwright.advice.Step;
import heapwright.advice.WithheldStep;
import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.engine.Firing;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Reads;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.Id;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.Term;
import heapwright.process.mixture.Band;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Writes advice as a JSON document; its shape is {@code docs/schema/advice.schema.json}. Amounts are always in kg and L. */
public final class AdviceJson {

    private static final double GRAIN = 1000;

    private final Words words;
    private final DoseWords doses;
    private final String version;
    private final ModelJson model;

    public AdviceJson(Words words, String version) {
        this.words = words;
        this.doses = new DoseWords(words);
        this.version = version;
        this.model = new ModelJson(words, version);
    }

    /** The document as text. */
    public String write(Advice advice, boolean withTrace) {
        return JsonText.write(document(advice, withTrace));
    }

    /** The document. */
    public ObjectNode document(Advice advice, boolean withTrace) {
        ObjectNode root = JsonText.object("advice");
        root.put("version", version);
        root.put("pile", advice.pile().name());
        root.put("asOf", advice.pile().asOf().toString());
        root.put("built", advice.pile().built().toString());
        root.put("builtAssumed", advice.pile().builtAssumed());
        root.put("headline", new HeadlineText(words).of(advice));
        ArrayNode toCheck = root.putArray("toCheck");
        if (advice.alarm().isEmpty()) {
            words.toCheck(advice.pile()).forEach(toCheck::add);
        }
        new AlarmJson(words).write(root, advice.alarm());
        ArrayNode findings = root.putArray("findings");
        advice.findings().forEach(f -> finding(findings.addObject(), f));
        ArrayNode waiting = root.putArray("whenSafe");
        advice.whenSafe().forEach(f -> finding(waiting.addObject(), f));
        ArrayNode aside = root.putArray("setAside");
        advice.setAside().forEach(f -> finding(aside.addObject(), f));
        ArrayNode steps = root.putArray("steps");
        advice.steps().forEach(s -> step(steps.addObject(), s, advice.pile()));
        ArrayNode withheld = root.putArray("withheld");
        advice.withheld().forEach(h -> held(withheld.addObject(), h));
        cautions(root.putArray("cautions"), advice);
        ArrayNode questions = root.putArray("questions");
        advice.questions()
                .forEach(q -> question(
                        questions.addObject(), q, advice.pile().container().kind()));
        ArrayNode readings = root.putArray("readings");
        advice.readings().forEach(r -> reading(readings.addObject(), r));
        ArrayNode contradictions = root.putArray("contradictions");
        advice.contradictions()
                .forEach(c -> contradiction(
                        contradictions.addObject(), c, advice.pile().container().kind()));
        ArrayNode home = root.putArray("homeRemedies");
        advice.homeRemedies().forEach(h -> {
            ObjectNode node = home.addObject();
            node.put("dose", h.dose().id());
            node.put("asked", h.asked());
            node.put("verdict", words.knowledge().usualDoses().get(h.dose()).verdict());
            terms(node.putArray("figures"), h.figures());
        });
        model.story(root, advice, withTrace);
        if (withTrace) {
            ArrayNode trace = root.putArray("trace");
            advice.outcome().firings().forEach(f -> firing(trace.addObject(), f));
        }
        return root;
    }

    private void finding(ObjectNode node, Finding finding) {
        CauseInfo info = words.knowledge().causes().get(finding.cause());
        node.put("cause", info.id().id());
        node.put("name", info.name());
        node.put("kind", info.kind().id());
        node.put("likelihood", fine(finding.likelihood()));
        node.put("word", words.word("grade", finding.grade()));
        node.put("summary", info.summary());
        node.put("why", info.why());
        node.put("tellApart", info.tellApart());
        finding.setAside().ifPresent(f -> JsonText.rule(node.putObject("setAsideBy"), f.rule()));
        ArrayNode supports = node.putArray("for");
        finding.weighed().supports().forEach(p -> piece(supports.addObject(), p));
        ArrayNode opposes = node.putArray("against");
        finding.weighed().opposes().forEach(p -> piece(opposes.addObject(), p));
    }

    private void piece(ObjectNode node, EvidencePiece piece) {
        JsonText.rule(node, piece.rule());
        node.put("witness", piece.witness().name().toLowerCase(Locale.ROOT));
        node.put("decibans", fine(piece.decibans()));
        node.put("degree", fine(piece.degree()));
        node.put("share", fine(piece.share()));
        facts(node.putArray("because"), piece.because());
    }

    private void facts(ArrayNode node, List<Object> facts) {
        facts.forEach(f -> words.fact(f).ifPresent(node::add));
    }

    private void step(ObjectNode node, Step step, Pile pile) {
        node.put("rank", step.rank());
        option(node, step.main(), pile);
        node.put("when", words.word("urgency", step.urgency()));
        node.put("urgency", step.urgency().id());
        RemedyInfo info = words.way(step.main().remedy(), pile);
        node.put("how", new JobText(words).how(step, pile));
        ObjectNode expect = node.putObject("expect");
        expect.put("text", info.expect());
        expect.put("from", step.lookFrom().toString());
        expect.put("to", step.lookTo().toString());
        node.put("otherwise", info.otherwise());
        node.put("notWhen", info.notWhen());
        ArrayNode alternatives = node.putArray("alternatives");
        step.alternatives().forEach(o -> option(alternatives.addObject(), o, pile));
    }

    private void option(ObjectNode node, Option option, Pile pile) {
        node.put("remedy", option.remedy().id());
        node.put("summary", words.way(option.remedy(), pile).name());
        ArrayNode why = node.putArray("why");
        option.grounds().forEach(g -> {
            ObjectNode ground = why.addObject();
            ground.put("cause", g.cause().id());
            ground.put("likelihood", fine(g.likelihood()));
            ground.put("rule", g.rule().id());
            ground.put("strength", g.rule().strength().id());
            ground.put("evidence", g.rule().evidence().id());
            ground.put("source", g.rule().source());
            ground.put("rationale", words.rationale(g.rule()));
        });
        ArrayNode amounts = node.putArray("doses");
        option.doses().forEach(d -> dose(amounts.addObject(), d));
        doses.lines(option, pile).forEach(node.putArray("amounts")::add);
        ids(node.putArray("cautions"), option.cautions());
        option.gain().ifPresent(g -> model.gain(node.putObject("gain"), g, pile.asOf()));
    }

    private void dose(ObjectNode node, DoseAmount dose) {
        node.put("dose", dose.dose().id());
        dose.material().ifPresent(m -> node.put("material", m.id()));
        band(node.putObject("kg"), dose.kg());
        band(node.putObject("litres"), dose.litres());
        node.put("parts", dose.parts());
        node.put("intervalDays", dose.intervalDays());
        band(node.putObject("carrierLitres"), dose.carrierLitres());
        dose.cap().ifPresent(c -> node.put("cap", c.id()));
        terms(node.putArray("working"), dose.working());
    }

    private static void terms(ArrayNode node, List<Term> terms) {
        terms.forEach(t -> {
            ObjectNode term = node.addObject();
            term.put("what", t.key().id());
            term.put("unit", t.key().unit());
            band(term, t.value());
            term.put("basis", t.basis().name().toLowerCase(Locale.ROOT));
        });
    }

    private static void band(ObjectNode node, Band band) {
        node.put("low", fine(band.low())).put("likely", fine(band.likely())).put("high", fine(band.high()));
    }

    private void held(ObjectNode node, WithheldStep held) {
        node.put("remedy", held.remedy().id());
        node.put("summary", words.remedy(held.remedy()));
        node.put("because", new HeldText(words).reason(held));
        ArrayNode rules = node.putArray("rules");
        held.rules().forEach(r -> rules.add(r.id()));
        held.undoes().ifPresent(r -> node.put("undoes", r.id()));
        held.until().ifPresent(day -> node.put("until", day.toString()));
    }

    private void cautions(ArrayNode node, Advice advice) {
        Set<Caution> all = new LinkedHashSet<>(advice.cautions());
        advice.steps().forEach(s -> {
            all.addAll(s.main().cautions());
            s.alternatives().forEach(o -> all.addAll(o.cautions()));
        });
        for (CautionInfo info : words.knowledge().cautions().values()) {
            if (all.contains(info.id())) {
                ObjectNode caution = node.addObject();
                caution.put("caution", info.id().id());
                caution.put("title", info.title());
                caution.put("text", info.text());
                caution.put("why", info.why());
                caution.put("severity", info.severity().id());
                info.localRules().ifPresent(r -> caution.put("localRules", r));
            }
        }
    }

    private void question(ObjectNode node, Question question, Container.Kind kind) {
        SignInfo sign = words.knowledge().signs().get(question.sign());
        node.put("sign", sign.id().id());
        node.put("ask", sign.ask());
        node.put("how", sign.how(kind));
        node.put("change", fine(question.change()));
        node.put("helps", new AdviceWords(words).helps(question));
    }

    private void reading(ObjectNode node, Reads reading) {
        node.put("reading", reading.reading().id());
        node.put("low", fine(reading.low()))
                .put("likely", fine(reading.likely()))
                .put("high", fine(reading.high()));
        node.put("basis", reading.basis().name().toLowerCase(Locale.ROOT));
        words.fact(reading).ifPresent(t -> node.put("text", t));
    }

    private void contradiction(ObjectNode node, Contradicts pair, Container.Kind kind) {
        node.put("one", pair.one().id());
        node.put("other", pair.other().id());
        node.put("askAgain", words.knowledge().signs().get(pair.one()).how(kind));
    }

    private void firing(ObjectNode node, Firing firing) {
        JsonText.rule(node, firing.rule());
        facts(node.putArray("because"), firing.because());
        node.put("degree", fine(firing.degree()));
        node.put("result", TraceReport.result(firing.result()));
    }

    private static void ids(ArrayNode node, List<? extends Id> ids) {
        ids.forEach(i -> node.add(i.id()));
    }

    /** Three decimals: finer would show the noise of floating point, not knowledge. */
    private static double fine(double value) {
        return Math.round(value * GRAIN) / GRAIN;
    }
}
