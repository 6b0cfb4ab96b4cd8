package heapwright.report;

import heapwright.advice.audit.Mend;
import heapwright.advice.audit.Proposal;
import heapwright.advice.audit.Trimming;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Container.Kind;
import heapwright.pile.Pile;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Contribution;
import heapwright.process.mixture.Density;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes the mend of an audit: what to add, what it comes to, and what one or two more materials would do. */
final class MendText {

    private static final int INDENT = 3;
    private static final double PERCENT = 100;

    /** Below this the wish for a larger pile is not worth a sentence. */
    private static final double WORTH_TELLING = 1.1;

    /** To fetch more than this share of what is there, for a mix that works without, is asked of nobody; judgement. */
    private static final double MUCH = 0.25;

    /** Beyond this it is no use to ask for more. */
    private static final double OUT_OF_REACH = 4;

    private final Words words;
    private final Portions portions;
    /** Of leaves alone no C:N is asked, so it is not said to be in range. */
    private final boolean leafCage;

    MendText(Words words, Pile pile) {
        this.words = words;
        this.portions = new Portions(words, pile);
        this.leafCage = pile.container().kind() == Kind.LEAF_CAGE;
    }

    void write(ReportWriter page, Proposal proposal) {
        page.heading(words.text("audit.section.mend"));
        mend(page, proposal);
        if (proposal.times() > OUT_OF_REACH) {
            page.paragraph(0, 0, words.text("audit.mend.tiny"));
        } else if (proposal.times() > WORTH_TELLING) {
            page.paragraph(0, 0, words.text("audit.mend.larger", words.figures().round(proposal.times())));
        }
    }

    private void mend(ReportWriter page, Proposal proposal) {
        Mend mend = proposal.mend();
        Plan plan = mend.chosen();
        proposal.less().ifPresent(l -> page.paragraph(0, 0, less(l)));
        if (!mend.needed()) {
            if (proposal.less().isEmpty()) {
                page.paragraph(0, 0, none(mend) + fed(proposal));
            }
            open(page, proposal);
            return;
        }
        if (!plan.meetsAll()) {
            String empty = mend.anythingAtHand() ? "" : ".empty";
            page.paragraph(
                    0,
                    0,
                    words.text(
                            (plan.additions().isEmpty() ? "audit.mend.cannot" : "audit.mend.nearest") + empty,
                            misses(plan)));
        }
        plan.additions().forEach(a -> page.paragraph(0, INDENT, "- " + addition(a, proposal)));
        if (!plan.additions().isEmpty()) {
            page.paragraph(0, 0, after(plan, plan.meetsAll() && !mend.richAtFirst() && !leafCage));
        }
        if (mend.richAtFirst()) {
            page.paragraph(0, 0, words.text("audit.mend.late"));
        }
        mend.unlock().ifPresent(u -> page.paragraph(0, 0, unlock(u, spared(u, proposal))));
        if (!plan.meetsAll() && mend.unlock().isEmpty()) {
            boolean sound = proposal.build().filter(b -> b.countsOn().isEmpty()).isPresent();
            page.paragraph(0, 0, words.text(sound ? "audit.mend.sound" : "audit.mend.no-unlock"));
        }
        open(page, proposal);
        if (nearlyAllLeaves(proposal)) {
            page.paragraph(0, 0, words.text("audit.mend.leaf-mould"));
        }
    }

    private boolean nearlyAllLeaves(Proposal proposal) {
        List<Contribution> all = proposal.kept().contributions();
        double dry = all.stream().mapToDouble(Contribution::kgDry).sum();
        double leaves = all.stream()
                .filter(c -> c.material().traits().contains(Trait.LEAVES))
                .mapToDouble(Contribution::kgDry)
                .sum();
        return leaves * PERCENT
                > dry * words.knowledge().limits().get(Limit.LEAF_SHARE).value();
    }

    /** Whether it can be built without, and to fetch all of it would be out of proportion. */
    private static boolean spared(Mend.Unlock unlock, Proposal proposal) {
        double litres = unlock.plan().additions().stream()
                .filter(a -> !a.material().equals(Offer.WATER))
                .mapToDouble(Addition::litres)
                .sum();
        double whole = proposal.kept().looseM3().likely() * Density.LITRES_PER_M3;
        return proposal.build().filter(b -> b.countsOn().isEmpty()).isPresent() && litres > MUCH * whole;
    }

    private String unlock(Mend.Unlock unlock, boolean spared) {
        String all = unlock.plan().additions().stream().map(this::amount).collect(Collectors.joining("; "));
        int things = unlock.materials().size();
        if (!spared && unlock.plan().additions().size() == things) {
            return words.text("audit.mend.unlock-alone", things, all);
        }
        return words.text(
                spared ? "audit.mend.unlock-much" : "audit.mend.unlock",
                things,
                portions.names(unlock.materials()),
                all);
    }

    private String none(Mend mend) {
        String all = mend.coarseLitres() > 0 ? "" : "-open";
        return words.text((mend.richAtFirst() ? "audit.mend.none-late" : "audit.mend.none") + all);
    }

    private String fed(Proposal proposal) {
        return proposal.build().filter(b -> !b.plan().feeds().isEmpty()).isPresent()
                ? " " + words.text("audit.mend.fed")
                : "";
    }

    /** The coarse stuff that it lacks, for which nothing is at hand; what has to be got anyway may be coarse itself. */
    private void open(ReportWriter page, Proposal proposal) {
        double litres = proposal.mend().coarseLitres();
        boolean coming = proposal.build().stream()
                .flatMap(b -> b.countsOn().stream())
                .map(words.knowledge().materials()::get)
                .anyMatch(m -> m != null && m.traits().contains(Trait.COARSE));
        if (litres > 0 && !coming) {
            page.paragraph(0, 0, words.text("audit.mend.open", portions.bulky(litres)));
        }
    }

    /** Droppings and muck keep under cover; grass and scraps do not. */
    private String less(Trimming.Trimmed less) {
        String thing = words.thing(less.material());
        String told = less.litres() > 0
                ? words.text(
                        "audit.mend.less",
                        thing,
                        portions.atMost(less.material().id(), less.litres()))
                : words.text("audit.mend.less-none", thing);
        boolean keeps = less.material().group() == Material.Group.MANURE;
        return keeps ? told + " " + words.text("audit.mend.less-keep") : told;
    }

    private String misses(Plan plan) {
        return plan.misses().stream()
                .sorted()
                .map(m -> words.text("miss." + m.name().toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
    }

    private String addition(Addition addition, Proposal proposal) {
        String told = words.text("audit.mend.add", amount(addition));
        return proposal.build().stream()
                .flatMap(b -> b.plan().feeds().stream())
                .filter(f -> f.material().equals(addition.material()))
                .map(f -> told + " " + words.text("audit.mend.parts", f.parts()))
                .findFirst()
                .orElse(told);
    }

    private String amount(Addition addition) {
        boolean water = addition.material().equals(Offer.WATER);
        return words.text(
                "audit.mend.amount",
                portions.of(addition.material(), addition.litres()),
                portions.name(addition.material()),
                water
                        ? words.figures().volume(addition.litres())
                        : words.figures().mass(addition.kg()));
    }

    private String after(Plan plan, boolean good) {
        return words.text(
                good ? "audit.mend.after-good" : "audit.mend.after",
                words.figures().round(plan.after().moisturePct()),
                words.figures().round(plan.after().carbonToNitrogen()),
                words.figures().density(plan.after().densityKgM3()));
    }
}
