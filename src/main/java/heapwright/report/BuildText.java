package heapwright.report;

import heapwright.advice.audit.BuildPlan;
import heapwright.advice.audit.BuildPlan.Cut;
import heapwright.advice.audit.BuildPlan.Feed;
import heapwright.advice.audit.BuildPlan.Fit;
import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.advice.audit.BuildPlan.Role;
import heapwright.advice.audit.Proposal;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Container.Kind;
import heapwright.pile.Pile;
import heapwright.process.mixture.Degradability;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the plan to build as numbered steps. */
final class BuildText {

    private static final int INDENT = 3;
    private static final double CM = 100;
    private static final double LITRES = 1000;

    /** A layer thinner than this is scattered, and its thickness is not told. */
    private static final double SCATTERED_CM = 1;

    private final Words words;
    private final Pile pile;
    private final Portions portions;
    private final Days days;

    BuildText(Words words, Pile pile) {
        this.words = words;
        this.pile = pile;
        this.portions = new Portions(words, pile);
        this.days = new Days(words);
    }

    /** How much of the plan is told. */
    enum Part {
        /** All of it. */
        ALL,
        /** The building, without the weeks after it. */
        BUILDING,
        /** What to cut and soak, and the layers. */
        LAYERS
    }

    void write(ReportWriter page, Proposal.Build build) {
        write(page, build, Part.ALL, true);
    }

    /** The plan, or the part of it that a first page holds. */
    void write(ReportWriter page, Proposal.Build build, Part part, boolean sized) {
        BuildPlan plan = build.plan();
        page.heading(words.text("audit.section.build"));
        if (!build.countsOn().isEmpty()) {
            page.paragraph(
                    0,
                    0,
                    words.text("audit.build.counts-on", build.countsOn().size(), portions.names(build.countsOn())));
        }
        if (sized) {
            page.paragraph(0, 0, size(plan));
        }
        int number = 1;
        for (String step : steps(plan, part)) {
            page.paragraph(0, INDENT, number++ + ". " + (part == Part.LAYERS ? firstSentence(step) : step));
        }
    }

    /** What is to be done without why. */
    private static String firstSentence(String step) {
        int end = step.indexOf(". ");
        return end < 0 ? step : step.substring(0, end + 1);
    }

    private String size(BuildPlan plan) {
        Figures figures = words.figures();
        if (pile.container().kind() == Kind.TUMBLER) {
            return words.text(
                    "audit.build.tumbler-size",
                    figures.volume(plan.lengthM() * plan.widthM() * plan.heightM() * LITRES),
                    figures.volume(plan.lengthM() * plan.widthM() * plan.settledM() * LITRES));
        }
        String told = words.text(
                "audit.build.size",
                figures.length(plan.lengthM() * CM),
                figures.length(plan.widthM() * CM),
                figures.length(plan.heightM() * CM),
                figures.length(plan.settledM() * CM));
        return plan.fit() == Fit.FILLS
                ? told
                : told + " " + words.text(plan.fit() == Fit.OVER ? "audit.build.over" : "audit.build.part");
    }

    private List<String> steps(BuildPlan plan, Part part) {
        List<String> steps = new ArrayList<>();
        plan.cuts().stream().map(Cut::woody).distinct().sorted().forEach(woody -> steps.add(cut(plan, woody)));
        if (!plan.soak().isEmpty()) {
            steps.add(words.text("audit.build.soak", names(plan.soak())));
        }
        if (pile.container().kind() == Kind.TUMBLER) {
            fill(steps, plan);
        } else {
            pileUp(steps, plan, part);
        }
        if (part != Part.ALL) {
            return steps;
        }
        if (leafCage()) {
            steps.add(words.text("audit.build.leaf-check"));
            return steps;
        }
        steps.add(words.text(
                        "audit.build.check",
                        days.of(plan.looks().get(0)),
                        days.of(plan.looks().get(1)))
                + " "
                + turn(plan));
        return steps;
    }

    private String turn(BuildPlan plan) {
        if (pile.container().kind() == Kind.TUMBLER) {
            return words.text("audit.build.spin");
        }
        return words.text(plan.cold() ? "audit.build.turn-cold" : "audit.build.turn", days.of(plan.turn()));
    }

    /** A heap or a bin is built from below. */
    private void pileUp(List<String> steps, BuildPlan plan, Part part) {
        steps.add(
                plan.base().isEmpty()
                        ? words.text("audit.build.no-base")
                        : words.text("audit.build.base", layers(plan, plan.base())));
        if (!plan.layers().isEmpty()) {
            String round = words.text("audit.build.round", layers(plan, plan.layers()), plan.rounds());
            boolean sprinkled = plan.layers().stream().anyMatch(l -> l.role() == Role.SPRINKLE);
            steps.add(sprinkled ? round : round + " " + words.text("audit.build.sprinkle"));
        }
        if (part == Part.LAYERS && plan.waterPerRound() <= 0 && plan.feeds().isEmpty()) {
            return;
        }
        if (plan.waterPerRound() > 0) {
            steps.add(words.text("audit.build.water", words.figures().volume(plan.waterPerRound())));
        } else if (plan.layers().size() > 1) {
            steps.add(words.text("audit.build.mix"));
        }
        plan.feeds().forEach(f -> steps.add(feed(f, plan.waterPerRound() > 0)));
        if (part == Part.LAYERS) {
            return;
        }
        if (plan.layers().stream().anyMatch(this::isWoody)) {
            steps.add(words.text("audit.build.woody"));
        }
        steps.add(words.text(
                leafCage()
                        ? "audit.build.leaf-open"
                        : hasKitchen(plan) ? "audit.build.cover-kitchen" : "audit.build.cover"));
    }

    /** Leaves alone rot cold and wait for rain; nobody looks for heat in them. */
    private boolean leafCage() {
        return pile.container().kind() == Kind.LEAF_CAGE;
    }

    /** A tumbler is filled, and its turning mixes it. */
    private void fill(List<String> steps, BuildPlan plan) {
        String all = Stream.concat(plan.base().stream(), plan.layers().stream())
                .map(l -> words.text(
                        "audit.build.plain",
                        portions.of(l.material(), l.litres() * l.times()),
                        portions.name(l.material())))
                .collect(Collectors.joining("; "));
        double water = plan.waterPerRound() * plan.rounds();
        steps.add(words.text("audit.build.tumbler", all));
        if (water > 0) {
            steps.add(words.text("audit.build.tumbler-water", words.figures().volume(water)));
        }
        plan.feeds().forEach(f -> steps.add(feed(f, water > 0)));
    }

    private String cut(BuildPlan plan, boolean woody) {
        List<Cut> cuts = plan.cuts().stream().filter(c -> c.woody() == woody).toList();
        return words.text(
                woody ? "audit.build.cut-wood" : "audit.build.cut-soft",
                names(cuts.stream().map(Cut::material).toList()),
                words.figures()
                        .span(
                                words.figures().depth(cuts.get(0).fromCm()),
                                words.figures().depth(cuts.get(0).toCm())));
    }

    private String feed(Feed feed, boolean sprinkled) {
        String once = words.text(
                feed.waterLitres() > 0 ? "audit.build.feed" : "audit.build.feed-dry",
                portions.atMost(feed.material(), feed.litresEach()),
                portions.name(feed.material()),
                words.figures().mass(feed.kgEach()),
                words.figures().volume(feed.waterLitres()),
                strength(),
                sprinkled ? 1 : 0);
        return feed.parts() == 1
                ? once
                : once + " "
                        + words.text(
                                "audit.build.feed-again",
                                feed.parts() - 1,
                                days.of(feed.days().subList(1, feed.days().size())));
    }

    private String strength() {
        return words.figures()
                .round(pile.limits()
                        .getOrDefault(
                                Limit.SOLUTION_MAX.id(),
                                words.knowledge()
                                        .limits()
                                        .get(Limit.SOLUTION_MAX)
                                        .value()));
    }

    private String names(List<String> materials) {
        return materials.stream().map(portions::name).collect(Collectors.joining("; "));
    }

    private String layers(BuildPlan plan, List<Layer> layers) {
        return layers.stream().map(l -> layer(plan, l)).collect(Collectors.joining("; "));
    }

    private String layer(BuildPlan plan, Layer layer) {
        boolean scattered = layer.role() == Role.SPRINKLE || layer.thicknessCm() < SCATTERED_CM;
        String told = words.text(
                scattered ? "audit.build.scatter" : "audit.build.layer",
                portions.of(layer.material(), layer.litres()),
                portions.name(layer.material()),
                words.figures().depth(layer.thicknessCm()));
        boolean all = layer.times() >= plan.rounds() || plan.base().contains(layer);
        return all ? told : told + " " + words.text("audit.build.some-rounds", layer.times());
    }

    private boolean isWoody(Layer layer) {
        return words.knowledge()
                .material(layer.material())
                .filter(Degradability::isWoody)
                .isPresent();
    }

    private boolean hasKitchen(BuildPlan plan) {
        return plan.layers().stream()
                .flatMap(l -> words.knowledge().material(l.material()).stream())
                .map(Material::traits)
                .anyMatch(t -> t.contains(Trait.KITCHEN));
    }
}
