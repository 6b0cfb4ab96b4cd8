package heapwright.report;

import heapwright.advice.Option;
import heapwright.advice.People;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.AlreadyIn;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Did;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Has;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.ModelSays;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.LimitInfo;
import heapwright.knowledge.Material;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Puts facts, findings and quantities into words. */
public final class Words {

    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final Figures figures;
    private final UnaryOperator<String> wording;

    /** @param knowledge its sentences are told in the units */
    public Words(Knowledge knowledge, Catalogue catalogue, Units units) {
        UnaryOperator<String> wording = units == Units.US ? new UsWording(catalogue) : UnaryOperator.identity();
        this.knowledge = units == Units.US ? knowledge.reworded(wording) : knowledge;
        this.catalogue = catalogue;
        this.wording = wording;
        this.figures = new Figures(units, catalogue);
    }

    /** Words in all units, for a server: they may be shared between threads. */
    public static Map<Units, Words> byUnits(Knowledge knowledge, Catalogue catalogue) {
        Map<Units, Words> words = new EnumMap<>(Units.class);
        for (Units units : Units.values()) {
            words.put(units, new Words(knowledge, catalogue, units));
        }
        return Collections.unmodifiableMap(words);
    }

    public Knowledge knowledge() {
        return knowledge;
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public Figures figures() {
        return figures;
    }

    /** A text of the catalogue. A fixed sentence is told in the units; places are filled with figures that are already. */
    public String text(String key, Object... places) {
        String told = catalogue.text(key, places);
        return places.length == 0 ? wording.apply(told) : told;
    }

    /** The word for a constant: its id under a prefix of the catalogue. */
    public String word(String prefix, Id constant) {
        return wording.apply(catalogue.text(prefix + "." + constant.id()));
    }

    public String cause(Cause cause) {
        return knowledge.causes().get(cause).name();
    }

    public String remedy(Remedy remedy) {
        return knowledge.remedies().get(remedy).name();
    }

    /** A remedy as it is done with this pile. */
    public RemedyInfo way(Remedy remedy, Pile pile) {
        return People.way(knowledge.remedies().get(remedy), pile);
    }

    public String caution(Caution caution) {
        return knowledge.cautions().get(caution).title();
    }

    /** A material inside a sentence: its name up to the first comma, without brackets, in lower case. */
    public String thing(Material material) {
        String name = material.name().replaceAll(" *\\([^)]*\\)", "");
        boolean several = name.contains(" or ") || name.contains(" and ");
        String plain = (several ? name : name.split(",")[0]).strip();
        return wording.apply((plain.isEmpty() ? material.id() : plain).toLowerCase(catalogue.locale()));
    }

    /** Why a rule says what it says. */
    public String rationale(RuleInfo rule) {
        return wording.apply(rule.rationale());
    }

    /** The findings that a step is for, each once, with how firmly they stand; empty where none of them stands. */
    public String grounds(Option option) {
        return option.grounds().stream()
                .filter(g -> Grade.of(g.likelihood()).atLeast(Grade.POSSIBLE))
                .map(g -> text("fact.cause", cause(g.cause()), chance(g.likelihood())))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    public String says(Sign sign) {
        return withoutStop(knowledge.signs().get(sign).say());
    }

    /** A fact in words; empty for a fact that says nothing to a reader. */
    public Optional<String> fact(Object fact) {
        if (fact instanceof Seen s) {
            return Optional.of(
                    s.outlived()
                            ? text("fact.seen-outlived", says(s.sign()), s.daysAgo())
                            : dated(says(s.sign()), s.daysAgo()));
        }
        if (fact instanceof Denied d) {
            return Optional.of(dated(withoutStop(knowledge.signs().get(d.sign()).deny()), d.daysAgo()));
        }
        if (fact instanceof Reads r) {
            return Optional.of(text(
                    "fact.reads",
                    word("reading", r.reading()),
                    range(r),
                    text("basis." + lower(r.basis().name()))));
        }
        if (fact instanceof LimitIs l) {
            return Optional.of(
                    text("fact.limit", knowledge.limits().get(l.limit()).name(), limit(l)));
        }
        if (fact instanceof WentIn w) {
            String what = word("trait", w.trait());
            return Optional.of(
                    Double.isNaN(w.share())
                            ? text("fact.went-in", what, w.daysAgo())
                            : text("fact.went-in-share", what, w.daysAgo(), figures.round(w.share() * 100)));
        }
        if (fact instanceof AlreadyIn a) {
            String what = knowledge.keepOuts().get(a.kind()).name();
            return Optional.of(a.stillIn() ? text("fact.already-in", what, a.daysAgo()) : text("fact.was-in", what));
        }
        if (fact instanceof Did d) {
            return Optional.of(text("fact.did", text("action." + d.action().token()), d.daysAgo()));
        }
        if (fact instanceof ModelSays m) {
            return Optional.of(ModelWords.fact(this, m));
        }
        if (fact instanceof Has h) {
            return Optional.of(text("fixture." + lower(h.fixture().name())));
        }
        return InferredWords.of(this, fact);
    }

    /** A reading as a span with its unit, or as one figure where low and high are the same to the eye. */
    public String range(Reads r) {
        String low = value(r.reading(), r.low());
        String likely = value(r.reading(), r.likely());
        String high = value(r.reading(), r.high());
        String unit = unit(r.reading());
        return figures.within(likely + unit, low + unit, high + unit);
    }

    private String value(Reading reading, double value) {
        return switch (reading) {
            case CARBON_TO_NITROGEN,
                    ALL_CARBON_TO_NITROGEN,
                    MOISTURE,
                    FREE_AIR_SPACE,
                    WOODY_SHARE,
                    COARSE_SHARE,
                    SOIL_SHARE -> figures.number(value, 0);
            case ASH_VOLUME, FERTILISER_NITROGEN -> figures.round(value);
            case LONGEST_PIECE -> figures.length(value);
            case AGE,
                    CORE_READING_AGE,
                    DAYS_SINCE_TURN,
                    OPENINGS,
                    OPENINGS_OF_A_FORTNIGHT,
                    DAYS_AT_SANITISING_HEAT,
                    TURNS_AT_SANITISING_HEAT -> figures.number(value, 0);
            case ASH_LOAD, PH -> figures.number(value, 1);
            case SALT_LOAD -> figures.round(value);
            case WET_DENSITY -> figures.density(value);
            case CORE_TEMPERATURE,
                    OUTDOOR_TEMPERATURE,
                    USUAL_OUTDOOR_TEMPERATURE,
                    COLDEST_SOON,
                    COLDEST_NEXT,
                    COLDEST_MONTH_AHEAD,
                    PEAK_TEMPERATURE -> figures.temperature(value);
            case CORE_EXCESS -> figures.temperatureDifference(value);
            case HEIGHT, PIT_DEPTH -> figures.length(value * 100);
            case VOLUME, DOUBTED_VOLUME -> figures.pileVolume(value);
        };
    }

    private static String unit(Reading reading) {
        return switch (reading) {
            case MOISTURE, FREE_AIR_SPACE, WOODY_SHARE, COARSE_SHARE, SOIL_SHARE, ASH_LOAD, SALT_LOAD -> " %";
            case ASH_VOLUME -> " L/m³";
            case FERTILISER_NITROGEN -> " g/m³";
            default -> "";
        };
    }

    private String limit(LimitIs fact) {
        LimitInfo info = knowledge.limits().get(fact.limit());
        return limit(fact.limit(), fact.value(), info.unit());
    }

    private String limit(Limit limit, double value, String unit) {
        return switch (unit) {
            case "°C" ->
                limit == Limit.EXCESS_COLD || limit == Limit.EXCESS_WORKING || limit == Limit.CORE_FALL
                        ? figures.temperatureDifference(value)
                        : figures.temperature(value);
            case "kg/m3" -> figures.density(value);
            case "m" -> figures.length(value * 100);
            case "cm" -> figures.length(value);
            case "m3" -> figures.pileVolume(value);
            case "ratio", "pH" -> figures.number(value, 1);
            default -> figures.round(value) + " " + unit;
        };
    }

    /** A likelihood as a word and a count in a hundred. */
    public String chance(double likelihood) {
        return word("grade", Grade.of(likelihood));
    }

    /** A likelihood as a count in a hundred that never claims certainty. */
    public String inHundred(double likelihood) {
        return figures.number(Math.min(99, Math.max(1, Math.round(likelihood * 100))), 0);
    }

    private String dated(String statement, int daysAgo) {
        return daysAgo == 0 ? text("fact.seen", statement) : text("fact.seen-days", statement, daysAgo);
    }

    /** A caution in one line: how much is at stake, what it is, and what a person noted of the rules of their place. */
    String caution(CautionInfo info) {
        String told = word("severity", info.severity()) + ": " + withoutStop(info.title());
        return info.localNote().map(note -> told + ". " + note).orElse(told);
    }

    /** A sentence without its full stop, to stand inside another. */
    static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    private static String lower(String constant) {
        return constant.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What the person should look at again, since two figures of theirs cannot both be right; a paragraph each. */
    public List<String> toCheck(Pile pile) {
        return new DoubtText(this).of(pile);
    }

    /** What was taken for granted of a pile because nobody told it; empty where all was told. */
    public Optional<String> assumed(Pile pile) {
        return pile.builtAssumed()
                ? Optional.of(text("assumed.built", new Days(this).of(pile.built())))
                : Optional.empty();
    }
}
