package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Judgement;
import heapwright.advice.fact.LimitIs;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Id;
import heapwright.knowledge.LimitInfo;
import heapwright.knowledge.Material;
import heapwright.process.mixture.Mixture;
import java.util.Locale;

/**
 * Writes an audit as a JSON document, as {@code docs/schema/audit.schema.json} says. Amounts are always in kg, L and
 * metres, whatever units a page shows.
 */
public final class AuditJson {

    private final Words words;
    private final String version;

    /**
     * Prepares.
     *
     * @param words the texts
     * @param version the program's version
     */
    public AuditJson(Words words, String version) {
        this.words = words;
        this.version = version;
    }

    /** The document as text. */
    public String write(Audit audit) {
        return JsonText.write(document(audit));
    }

    /** The document. */
    public ObjectNode document(Audit audit) {
        ObjectNode root = JsonText.object("audit");
        root.put("version", version);
        root.put("pile", audit.pile().name());
        root.put("mark", audit.mark().id());
        root.put(
                "headline",
                audit.alarm()
                        .map(new AlarmText(words)::headline)
                        .orElseGet(() -> words.text("audit.mark." + audit.mark().id())));
        ArrayNode toCheck = root.putArray("toCheck");
        if (audit.alarm().isEmpty()) {
            words.toCheck(audit.pile()).forEach(toCheck::add);
        }
        new AlarmJson(words).write(root, audit.alarm());
        ArrayNode barred = root.putArray("keepOut");
        audit.barred().forEach(m -> barred(barred.addObject(), m));
        ArrayNode judgements = root.putArray("judgements");
        audit.judgements().forEach(j -> judgement(judgements.addObject(), j));
        mixture(root.putObject("mixture"), audit);
        audit.proposal().ifPresent(p -> new ProposalJson(words, audit.pile()).write(root, p, audit.ready()));
        ArrayNode pairs = root.putArray("ownPairs");
        audit.ownPairs()
                .forEach(p -> pairs.addObject()
                        .put("material", p.material())
                        .put("carbonToNitrogen", JsonText.fine(p.carbonToNitrogen()))
                        .put("nitrogenPct", JsonText.fine(p.nitrogenPct()))
                        .put("carbonPct", JsonText.fine(p.check().carbonPct()))
                        .put("verdict", constant(p.check().verdict()))
                        .put("unusual", p.unusual()));
        audit.ownFigure()
                .ifPresent(own -> root.putObject("ownFigure")
                        .put("shortcut", constant(own.shortcut()))
                        .put("average", JsonText.fine(own.average()))
                        .put("balanced", JsonText.fine(own.balanced())));
        return root;
    }

    private void barred(ObjectNode node, Material material) {
        material.keepOut()
                .ifPresent(k -> node.put("material", material.id())
                        .put("bar", k.bar().id())
                        .put("reason", k.reason())
                        .put("instead", k.instead())
                        .put("kind", k.kind().id())
                        .put(
                                "alreadyIn",
                                words.knowledge()
                                        .keepOuts()
                                        .get(k.kind())
                                        .step()
                                        .map(Id::id)
                                        .orElse(null)));
        ArrayNode rules = node.putArray("localRules");
        for (Caution caution : material.cautions()) {
            words.knowledge().cautions().get(caution).localRules().ifPresent(rules::add);
        }
    }

    private void judgement(ObjectNode node, Judgement judgement) {
        node.put("topic", judgement.topic().id()).put("mark", judgement.mark().id());
        JsonText.rule(node.putObject("rule"), judgement.firing().rule());
        ArrayNode because = node.putArray("because");
        judgement.firing().because().forEach(f -> words.fact(f).ifPresent(because::add));
        ArrayNode limits = node.putArray("limits");
        judgement.firing().because().stream()
                .filter(LimitIs.class::isInstance)
                .map(LimitIs.class::cast)
                .forEach(l -> limit(limits.addObject(), l));
        judgement.decidedBy().ifPresent(l -> node.put("decidedBy", l.limit().id()));
    }

    private void limit(ObjectNode node, LimitIs limit) {
        LimitInfo info = words.knowledge().limits().get(limit.limit());
        node.put("id", limit.limit().id())
                .put("value", JsonText.fine(limit.value()))
                .put("unit", info.unit())
                .put("own", limit.value() != info.value())
                .put("known", info.known().id())
                .put("spread", info.spread());
        info.sources().forEach(node.putArray("sources")::add);
    }

    private static void mixture(ObjectNode node, Audit audit) {
        Mixture mix = audit.mixture();
        JsonText.band(node, "wetKg", mix.masses().wet());
        JsonText.band(node, "dryKg", mix.masses().dry());
        JsonText.band(node, "waterKg", mix.masses().water());
        JsonText.band(node, "carbonKg", mix.masses().carbon());
        JsonText.band(node, "nitrogenKg", mix.masses().nitrogen());
        JsonText.band(node, "moisturePct", mix.moisturePct());
        JsonText.band(node, "carbonToNitrogen", mix.carbonToNitrogen());
        JsonText.band(node, "allCarbonToNitrogen", mix.allCarbonToNitrogen());
        JsonText.band(node, "densityKgM3", mix.densityKgM3());
        JsonText.band(node, "freeAirSpacePct", mix.freeAirSpacePct());
        JsonText.band(node, "looseM3", mix.looseM3());
        JsonText.band(node, "settledM3", mix.settledM3());
        node.put("coarseSharePct", JsonText.fine(mix.coarseSharePct()));
        ArrayNode rows = node.putArray("ingredients");
        audit.contributions()
                .forEach(c -> rows.addObject()
                        .put("material", c.material().id())
                        .put("wetKg", JsonText.fine(c.kgWet()))
                        .put("dryKg", JsonText.fine(c.kgDry()))
                        .put("waterKg", JsonText.fine(c.kgWater()))
                        .put("carbonKg", JsonText.fine(c.kgCarbon()))
                        .put("nitrogenKg", JsonText.fine(c.kgNitrogen())));
    }

    private static String constant(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
