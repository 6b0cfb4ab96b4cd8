package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.audit.BuildPlan;
import heapwright.advice.audit.BuildPlan.Feed;
import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.advice.audit.Mend;
import heapwright.advice.audit.Proposal;
import heapwright.advice.winter.ReadyAhead;
import heapwright.pile.Pile;
import heapwright.process.mend.Plan;
import heapwright.process.mend.Yield;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the mend, the plan to build and what it becomes into the document of an audit. */
final class ProposalJson {

    private final Portions portions;

    ProposalJson(Words words, Pile pile) {
        this.portions = new Portions(words, pile);
    }

    void write(ObjectNode root, Proposal proposal, Optional<ReadyAhead> ready) {
        ArrayNode leftOut = root.putArray("leftOut");
        proposal.leftOut().forEach(m -> leftOut.add(m.id()));
        ArrayNode trimmed = root.putArray("cutBack");
        proposal.trimmed()
                .forEach(t -> trimmed.addObject()
                        .put("material", t.material().id())
                        .put("litres", JsonText.fine(t.litres())));
        ObjectNode mend = root.putObject("mend");
        mend(mend, proposal.mend());
        proposal.less()
                .ifPresent(l -> mend.putObject("less")
                        .put("material", l.material().id())
                        .put("litres", JsonText.fine(l.litres())));
        proposal.build().ifPresent(b -> {
            build(root.putObject("build"), proposal.times(), b);
            ObjectNode becomes = root.putObject("becomes");
            becomes(becomes, b);
            ready.ifPresent(r -> ReadyWords.write(becomes.putObject("ready"), r, true));
        });
    }

    private static void becomes(ObjectNode becomes, Proposal.Build build) {
        Yield yield = build.becomes();
        JsonText.band(becomes, "litres", yield.litres());
        JsonText.band(becomes, "kg", yield.kgWet());
        JsonText.band(becomes, "nitrogenKg", yield.nitrogenKg());
        JsonText.band(becomes, "phosphorusKg", yield.phosphorusKg());
        JsonText.band(becomes, "potassiumKg", yield.potassiumKg());
        becomes.put("nutrientsKnown", yield.nutrientsKnown().id());
        becomes.put("readyFrom", build.ready().earliest().toString());
        becomes.put("readyTo", build.ready().latest().toString());
    }

    private void mend(ObjectNode node, Mend mend) {
        node.put("needed", mend.needed());
        node.put("richAtFirst", mend.richAtFirst());
        node.put("coarseLitres", JsonText.fine(mend.coarseLitres()));
        plan(node, mend.chosen());
        node.put("inWholeBuckets", mend.buckets().isPresent());
        mend.unlock().ifPresent(u -> {
            ObjectNode unlock = node.putObject("unlock");
            u.materials().forEach(unlock.putArray("materials")::add);
            plan(unlock, u.plan());
        });
    }

    private void plan(ObjectNode node, Plan plan) {
        node.put("meetsAll", plan.meetsAll());
        ArrayNode additions = node.putArray("add");
        plan.additions()
                .forEach(a -> additions
                        .addObject()
                        .put("material", a.material())
                        .put("kg", JsonText.fine(a.kg()))
                        .put("litres", JsonText.fine(a.litres()))
                        .put("household", portions.of(a.material(), a.litres()))
                        .put("parts", a.parts()));
        ArrayNode misses = node.putArray("misses");
        plan.misses().stream().sorted().forEach(m -> misses.add(constant(m)));
        ObjectNode after = node.putObject("after");
        after.put("moisturePct", JsonText.fine(plan.after().moisturePct()));
        if (Double.isFinite(plan.after().carbonToNitrogen())) {
            after.put("carbonToNitrogen", JsonText.fine(plan.after().carbonToNitrogen()));
        }
        after.put("densityKgM3", JsonText.fine(plan.after().densityKgM3()));
    }

    private void build(ObjectNode node, double times, Proposal.Build build) {
        BuildPlan plan = build.plan();
        if (!build.countsOn().isEmpty()) {
            build.countsOn().forEach(node.putArray("countsOn")::add);
        }
        node.put("lengthM", JsonText.fine(plan.lengthM()));
        node.put("widthM", JsonText.fine(plan.widthM()));
        node.put("heightM", JsonText.fine(plan.heightM()));
        node.put("settledM", JsonText.fine(plan.settledM()));
        node.put("fit", constant(plan.fit()));
        node.put("timesForAWarmPile", JsonText.fine(times));
        node.put("rounds", plan.rounds());
        layers(node.putArray("base"), plan.base());
        layers(node.putArray("layers"), plan.layers());
        node.put("waterPerRoundL", JsonText.fine(plan.waterPerRound()));
        ArrayNode feeds = node.putArray("feeds");
        plan.feeds().forEach(f -> feed(feeds.addObject(), f));
        plan.soak().forEach(node.putArray("soak")::add);
        ArrayNode cuts = node.putArray("cut");
        plan.cuts()
                .forEach(c -> cuts.addObject()
                        .put("material", c.material())
                        .put("woody", c.woody())
                        .put("fromCm", JsonText.fine(c.fromCm()))
                        .put("toCm", JsonText.fine(c.toCm())));
        ArrayNode looks = node.putArray("look");
        plan.looks().forEach(d -> looks.add(d.toString()));
        node.put("turn", plan.turn().toString());
        node.put("coldAhead", plan.cold());
        ArrayNode cautions = node.putArray("cautions");
        plan.cautions().forEach(c -> cautions.add(c.id()));
    }

    private void feed(ObjectNode node, Feed feed) {
        node.put("material", feed.material())
                .put("kg", JsonText.fine(feed.kg()))
                .put("parts", feed.parts())
                .put("kgEach", JsonText.fine(feed.kgEach()))
                .put("household", portions.atMost(feed.material(), feed.litresEach()))
                .put("waterL", JsonText.fine(feed.waterLitres()));
        ArrayNode days = node.putArray("days");
        feed.days().forEach(d -> days.add(d.toString()));
    }

    private void layers(ArrayNode node, List<Layer> layers) {
        layers.forEach(l -> node.addObject()
                .put("material", l.material())
                .put("role", constant(l.role()))
                .put("litres", JsonText.fine(l.litres()))
                .put("household", portions.of(l.material(), l.litres()))
                .put("kg", JsonText.fine(l.kg()))
                .put("thicknessCm", JsonText.fine(l.thicknessCm()))
                .put("rounds", l.times()));
    }

    private static String constant(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
