package heapwright.pile;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether a person's own figures for carbon, nitrogen and C:N can belong to one material, with those it takes over. */
final class OwnChemistry {

    /** Carbon over nitrogen and a stated C:N may differ by rounding, judged as up to a tenth. */
    private static final double RATIO_SLACK = 0.1;

    private static final double ALL = 100;
    private static final String TOGETHER = "at most 100 % of the dry mass together";

    /** What the person states of a material: C:N by mass, carbon and nitrogen in percent of the dry mass. */
    record Stated(OptionalDouble ratio, OptionalDouble carbon, OptionalDouble nitrogen) {

        boolean nothing() {
            return ratio.isEmpty() && carbon.isEmpty() && nitrogen.isEmpty();
        }

        boolean all() {
            return ratio.isPresent() && carbon.isPresent() && nitrogen.isPresent();
        }
    }

    private final Lexicon lexicon;
    private final Findings findings;
    private final Map<String, Vocabulary.Chemistry> own = new HashMap<>();

    OwnChemistry(Lexicon lexicon, Findings findings) {
        this.lexicon = lexicon;
        this.findings = findings;
    }

    /**
     * Reports figures that cannot belong together.
     *
     * @param like the material whose other figures it takes
     */
    void check(Section section, Optional<String> id, Optional<String> like, Stated stated) {
        Optional<Vocabulary.Chemistry> model =
                like.flatMap(each -> Optional.ofNullable(own.get(each)).or(() -> lexicon.chemistry(each)));
        if (stated.nothing()) {
            keep(id, model);
            return;
        }
        if (stated.ratio().isPresent() && stated.nitrogen().orElse(1) == 0) {
            wrong(
                    section,
                    "carbonToNitrogen",
                    "a C:N beside a nitrogen of 0 %",
                    "one of the two: without nitrogen there is no C:N");
        } else if (stated.all() && !agree(stated)) {
            section.field("carbonToNitrogen")
                    .ifPresent(node -> findings.wrong(
                            node,
                            node.shown() + ", while carbon over nitrogen is "
                                    + Shown.plain(stated.carbon().getAsDouble() + " / "
                                            + stated.nitrogen().getAsDouble()),
                            "figures that agree; leave one of the three out",
                            ""));
        } else {
            Vocabulary.Chemistry whole = whole(stated, model);
            together(section, like, stated, whole);
            keep(id, Optional.of(whole));
        }
    }

    private static boolean agree(Stated stated) {
        double carbon = stated.carbon().getAsDouble();
        double other = stated.nitrogen().getAsDouble() * stated.ratio().getAsDouble();
        return Math.abs(carbon - other) <= RATIO_SLACK * carbon;
    }

    /** The carbon and the C:N that follow from what is stated and what is taken over. */
    private static Vocabulary.Chemistry whole(Stated stated, Optional<Vocabulary.Chemistry> model) {
        double ratio = stated.ratio()
                .orElseGet(
                        () -> model.map(Vocabulary.Chemistry::carbonToNitrogen).orElse(0.0));
        double carbon = stated.carbon()
                .orElseGet(() -> stated.ratio().isPresent() && stated.nitrogen().isPresent()
                        ? stated.nitrogen().getAsDouble() * ratio
                        : model.map(Vocabulary.Chemistry::carbonPct).orElse(0.0));
        double nitrogen = stated.nitrogen()
                .orElseGet(() -> ratio > 0
                        ? carbon / ratio
                        : model.map(Vocabulary.Chemistry::nitrogenPct).orElse(0.0));
        return new Vocabulary.Chemistry(carbon, nitrogen > 0 ? carbon / nitrogen : 0, nitrogen);
    }

    /**
     * A published C:N and nitrogen that imply too much carbon are taken, since people compare with such tables; the audit
     * says that they cannot both be right.
     */
    private static boolean publishedPair(Stated stated) {
        return stated.carbon().isEmpty()
                && stated.ratio().isPresent()
                && stated.nitrogen().isPresent();
    }

    private void together(Section section, Optional<String> like, Stated stated, Vocabulary.Chemistry whole) {
        if (whole.carbonPct() + whole.nitrogenPct() <= ALL || publishedPair(stated)) {
            return;
        }
        boolean both = stated.carbon().isPresent() && stated.nitrogen().isPresent();
        boolean byRatio = stated.carbon().isPresent() && stated.ratio().isPresent();
        String sum = "carbon of " + percent(whole.carbonPct()) + " and nitrogen of " + percent(whole.nitrogenPct());
        String taken = byRatio || like.isEmpty() ? "" : ", with the other figures of " + like.get();
        String found = both
                ? "carbon and nitrogen of " + percent(whole.carbonPct() + whole.nitrogenPct()) + " together"
                : sum + taken;
        String field = stated.nitrogen().isPresent()
                ? "nitrogen"
                : stated.carbon().isPresent() ? "carbon" : "carbonToNitrogen";
        wrong(section, field, found, TOGETHER);
    }

    private void wrong(Section section, String field, String found, String allowed) {
        String example =
                switch (field) {
                    case "nitrogen" -> Quantity.NITROGEN.example();
                    case "carbon" -> Quantity.CARBON.example();
                    default -> "54";
                };
        section.field(field).ifPresent(node -> findings.wrong(node, found, allowed, example));
    }

    private static String percent(double value) {
        return Shown.number(Math.round(value * 10) / 10.0) + " %";
    }

    private void keep(Optional<String> id, Optional<Vocabulary.Chemistry> chemistry) {
        id.ifPresent(each -> chemistry.ifPresent(one -> own.put(each, one)));
    }
}
