package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.danger.Alarm;
import heapwright.knowledge.HeatRule;
import heapwright.knowledge.Survivor;
import heapwright.pile.Pile;
import heapwright.process.sanitation.Fate;
import heapwright.process.sanitation.HeatLedger;
import heapwright.process.sanitation.HotDays;
import heapwright.process.sanitation.RuleCheck;
import heapwright.process.sanitation.Stretch;
import java.util.Optional;

/** The heat ledger as JSON. Temperatures in °C, always. */
public final class SanitationJson {

    private final Words words;
    private final SanitationWords said;
    private final String version;

    public SanitationJson(Words words, String version) {
        this.words = words;
        this.said = new SanitationWords(words);
        this.version = version;
    }

    /** The document. */
    public String write(Pile pile, HeatLedger ledger) {
        ObjectNode root = root(pile);
        root.put("headline", said.headline(ledger));
        root.put("coreOnly", words.text("sanitise.core-warning"));
        words.toCheck(pile).forEach(root.putArray("toCheck")::add);
        new AlarmJson(words).write(root, Optional.empty());
        ledger.countsFrom().ifPresent(day -> root.put("countsFrom", day.toString()));
        root.put("measured", ledger.record().measured());
        root.put("hotEnoughInCore", ledger.hotEnoughInCore());
        shown(root.putObject("gate"), ledger.gate());
        ArrayNode levels = root.putArray("levels");
        ledger.levels().forEach(l -> level(levels.addObject(), l));
        ArrayNode between = root.putArray("betweenTurns");
        ledger.between().forEach(b -> {
            ObjectNode node = between.addObject();
            node.put("from", b.from().toString()).put("to", b.to().toString());
            b.days().forEach(node.putArray("days")::add);
        });
        ArrayNode rules = root.putArray("rules");
        ledger.rules().forEach(r -> rule(rules.addObject(), r));
        ArrayNode equations = root.putArray("equations");
        ledger.equations().forEach((id, share) -> {
            ObjectNode node = equations.addObject().put("equation", id);
            share.ifPresent(s -> node.put("times", JsonText.fine(s)));
        });
        ArrayNode fates = root.putArray("survival");
        ledger.fates().forEach(f -> fate(fates.addObject(), f));
        return JsonText.write(root) + "\n";
    }

    /** The document while a danger stands: the danger alone. */
    public String alarmed(Pile pile, Alarm alarm) {
        return new AlarmJson(words).alone(root(pile), alarm);
    }

    private ObjectNode root(Pile pile) {
        return JsonText.object("sanitation")
                .put("version", version)
                .put("pile", pile.name())
                .put("asOf", pile.asOf().toString());
    }

    private static void level(ObjectNode node, HotDays level) {
        node.put("celsius", level.celsius());
        node.put("days", level.total());
        node.put("hours", JsonText.fine(level.hours()));
        ArrayNode stretches = node.putArray("stretches");
        for (Stretch s : level.stretches()) {
            stretches
                    .addObject()
                    .put("from", s.first().toString())
                    .put("to", s.last().toString())
                    .put("days", s.days().size())
                    .put("turns", s.turns().size())
                    .put("hours", JsonText.fine(s.hours()))
                    .put("lowestC", JsonText.fine(s.lowestC()));
        }
    }

    private static void shown(ObjectNode node, RuleCheck.Shown shown) {
        need(node, shown.need());
        node.put("shownDays", JsonText.fine(shown.days())).put("shownTurns", shown.turns());
        node.put("missingDays", JsonText.fine(shown.missingDays())).put("missingTurns", shown.missingTurns());
    }

    private static void need(ObjectNode node, HeatRule.Need need) {
        node.put("celsius", need.celsius())
                .put("days", JsonText.fine(need.days()))
                .put("turns", need.turns());
    }

    private void rule(ObjectNode node, RuleCheck check) {
        node.put("rule", check.rule().id()).put("name", check.rule().name());
        node.put("method", check.rule().method().id());
        node.put("verdict", id(check.verdict().name())).put("text", said.verdict(check));
        ArrayNode needs = node.putArray("needs");
        check.rule().needs().forEach(n -> need(needs.addObject(), n));
        check.nearest().ifPresent(s -> shown(node.putObject("nearest"), s));
        node.put("also", check.rule().also());
        check.rule().sources().forEach(node.putArray("sources")::add);
        node.put("known", check.rule().known().id());
    }

    private void fate(ObjectNode node, Fate fate) {
        Survivor s = fate.survivor();
        node.put("id", s.id()).put("name", s.name()).put("kind", s.kind().id());
        node.put("verdict", id(fate.verdict().name())).put("text", said.fate(fate));
        node.put("inThisPile", fate.inThisPile());
        node.put("neverCompost", s.neverCompost()).put("notifiable", s.notifiable());
        ArrayNode trials = node.putArray("trials");
        s.trials().forEach(t -> {
            ObjectNode one = trials.addObject();
            t.celsius().ifPresent(c -> one.put("celsius", c));
            t.toCelsius().ifPresent(c -> one.put("toCelsius", c));
            t.days().ifPresent(d -> one.put("days", d));
            one.put("result", t.result().id()).put("said", t.said());
            one.put("source", t.source()).put("known", t.known().id());
        });
        node.put("then", s.then());
    }

    private static String id(String name) {
        return name.toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
