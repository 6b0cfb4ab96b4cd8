package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.audit.Audit;
import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Mixture;
import java.util.List;
import java.util.Locale;

/** Writes an audit as a JSON document. Amounts are always in kg, L and metres. */
public final class AuditJson {

    private static final double GRAIN = 1000;

    private final Words words;
    private final String version;

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
        root.put("headline", words.text("audit.mark." + audit.mark().id()));
        ArrayNode barred = root.putArray("keepOut");
        audit.barred()
                .forEach(m -> m.keepOut()
                        .ifPresent(k -> barred.addObject()
                                .put("material", m.id())
                                .put("bar", k.bar().id())
                                .put("reason", k.reason())
                                .put("instead", k.instead())));
        ArrayNode judgements = root.putArray("judgements");
        audit.judgements().forEach(j -> {
            ObjectNode node = judgements.addObject();
            node.put("topic", j.topic().id()).put("mark", j.mark().id());
            JsonText.rule(node.putObject("rule"), j.firing().rule());
            ArrayNode because = node.putArray("because");
            j.firing().because().forEach(f -> words.fact(f).ifPresent(because::add));
        });
        mixture(root.putObject("mixture"), audit.mixture());
        ObjectNode mend = root.putObject("mend");
        mend.put("needed", audit.mend().needed());
        plan(mend, audit.mend().chosen());
        mend.put("inWholeBuckets", audit.mend().buckets().isPresent());
        audit.mend().unlock().ifPresent(o -> mend.put("unlockedBy", o.id()));
        build(root.putObject("build"), audit);
        ObjectNode becomes = root.putObject("becomes");
        band(becomes.putObject("litres"), audit.becomes().litres());
        band(becomes.putObject("kg"), audit.becomes().kgWet());
        band(becomes.putObject("nitrogenKg"), audit.becomes().nitrogenKg());
        band(becomes.putObject("phosphorusKg"), audit.becomes().phosphorusKg());
        band(becomes.putObject("potassiumKg"), audit.becomes().potassiumKg());
        becomes.put("readyFrom", audit.ready().earliest().toString());
        becomes.put("readyTo", audit.ready().latest().toString());
        audit.ownFigure()
                .ifPresent(own -> root.putObject("ownFigure")
                        .put(
                                "shortcut",
                                own.shortcut().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .put("average", fine(own.average()))
                        .put("balanced", fine(own.balanced())));
        return root;
    }

    private static void mixture(ObjectNode node, Mixture mix) {
        band(node.putObject("wetKg"), mix.masses().wet());
        band(node.putObject("dryKg"), mix.masses().dry());
        band(node.putObject("waterKg"), mix.masses().water());
        band(node.putObject("carbonKg"), mix.masses().carbon());
        band(node.putObject("nitrogenKg"), mix.masses().nitrogen());
        band(node.putObject("moisturePct"), mix.moisturePct());
        band(node.putObject("carbonToNitrogen"), mix.carbonToNitrogen());
        band(node.putObject("degradableCarbonToNitrogen"), mix.degradableCarbonToNitrogen());
        band(node.putObject("densityKgM3"), mix.densityKgM3());
        band(node.putObject("freeAirSpacePct"), mix.freeAirSpacePct());
        band(node.putObject("looseM3"), mix.looseM3());
        band(node.putObject("settledM3"), mix.settledM3());
        node.put("coarseSharePct", fine(mix.coarseSharePct()));
        ArrayNode rows = node.putArray("ingredients");
        mix.contributions()
                .forEach(c -> rows.addObject()
                        .put("material", c.material().id())
                        .put("wetKg", fine(c.kgWet()))
                        .put("dryKg", fine(c.kgDry()))
                        .put("waterKg", fine(c.kgWater()))
                        .put("carbonKg", fine(c.kgCarbon()))
                        .put("nitrogenKg", fine(c.kgNitrogen())));
    }

    private static void plan(ObjectNode node, Plan plan) {
        node.put("meetsAll", plan.meetsAll());
        ArrayNode additions = node.putArray("add");
        plan.additions()
                .forEach(a -> additions
                        .addObject()
                        .put("material", a.material())
                        .put("kg", fine(a.kg()))
                        .put("litres", fine(a.litres()))
                        .put("parts", a.parts()));
        ArrayNode misses = node.putArray("misses");
        plan.misses().stream()
                .sorted()
                .forEach(m -> misses.add(m.name().toLowerCase(Locale.ROOT).replace('_', '-')));
        node.putObject("after")
                .put("moisturePct", fine(plan.after().moisturePct()))
                .put("carbonToNitrogen", fine(plan.after().carbonToNitrogen()))
                .put("densityKgM3", fine(plan.after().densityKgM3()));
    }

    private static void build(ObjectNode node, Audit audit) {
        node.put("lengthM", fine(audit.plan().lengthM()));
        node.put("widthM", fine(audit.plan().widthM()));
        node.put("heightM", fine(audit.plan().heightM()));
        node.put("rounds", audit.plan().rounds());
        layers(node.putArray("base"), audit.plan().base());
        layers(node.putArray("layers"), audit.plan().layers());
        node.put("waterPerRoundL", fine(audit.plan().waterPerRound().likely()));
        audit.plan().soak().forEach(node.putArray("soak")::add);
        audit.plan().cut().forEach(node.putArray("cut")::add);
        ArrayNode cautions = node.putArray("cautions");
        audit.plan().cautions().forEach(c -> cautions.add(c.id()));
    }

    private static void layers(ArrayNode node, List<Layer> layers) {
        layers.forEach(l -> node.addObject()
                .put("material", l.material())
                .put("role", l.role().name().toLowerCase(Locale.ROOT))
                .put("litres", fine(l.litres()))
                .put("kg", fine(l.kg()))
                .put("thicknessCm", fine(l.thicknessCm())));
    }

    private static void band(ObjectNode node, Band band) {
        node.put("low", fine(band.low())).put("likely", fine(band.likely())).put("high", fine(band.high()));
    }

    /** Three decimals: finer would show the noise of floating point, not knowledge. */
    private static double fine(double value) {
        return Double.isFinite(value) ? Math.round(value * GRAIN) / GRAIN : value;
    }
}
