package heapwright.knowledge;

import heapwright.pile.Action;
import heapwright.pile.Container;
import heapwright.pile.Gear;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes records of the rows of the tables: the one place that says which fields each table has. */
final class Tables {

    private final Row.Ids<Sign> signs = Row.Ids.of(Sign.values());
    private final Row.Ids<SignInfo.Sense> senses = Row.Ids.of(SignInfo.Sense.values());
    private final Row.Ids<SignInfo.Where> wheres = Row.Ids.of(SignInfo.Where.values());
    private final Row.Ids<SignInfo.Lasts> lasts = Row.Ids.of(SignInfo.Lasts.values());
    private final Row.Ids<SignInfo.Met> mets = Row.Ids.of(SignInfo.Met.values());
    private final Row.Ids<Cause> causes = Row.Ids.of(Cause.values());
    private final Row.Ids<CauseInfo.Kind> kinds = Row.Ids.of(CauseInfo.Kind.values());
    private final Row.Ids<Danger> dangers = Row.Ids.of(Danger.values());
    private final Row.Ids<Remedy> remedies = Row.Ids.of(Remedy.values());
    private final Row.Ids<Gear> gears = Row.Ids.ofTokens(Gear.values());
    private final Row.Ids<RemedyInfo.Urgency> urgencies = Row.Ids.of(RemedyInfo.Urgency.values());
    private final Row.Ids<RemedyInfo.Risk> risks = Row.Ids.of(RemedyInfo.Risk.values());
    private final Row.Ids<Dose> doses = Row.Ids.of(Dose.values());
    private final Row.Ids<Caution> cautions = Row.Ids.of(Caution.values());
    private final Row.Ids<CautionInfo.Severity> severities = Row.Ids.of(CautionInfo.Severity.values());
    private final Row.Ids<Limit> limits = Row.Ids.of(Limit.values());
    private final Row.Ids<Material.Group> groups = Row.Ids.of(Material.Group.values());
    private final Row.Ids<Material.Bar> bars = Row.Ids.of(Material.Bar.values());
    private final Row.Ids<Action> actions = Row.Ids.ofTokens(Action.values());
    private final Row.Ids<Trait> traits = Row.Ids.of(Trait.values());
    private final Row.Ids<UsualDose> usualDoses = Row.Ids.of(UsualDose.values());
    private final Row.Ids<KeepOutClass> keepOuts = Row.Ids.of(KeepOutClass.values());
    private final Row.Ids<Condition> conditions = Row.Ids.of(Condition.values());
    private final Row.Ids<Evidence.Speaks> speaks = Row.Ids.of(Evidence.Speaks.values());
    private final Row.Ids<Strength> strengths = Row.Ids.of(Strength.values());
    private final Row.Ids<Witness> witnesses = Row.Ids.of(Witness.values());
    private final WhenReader whens = new WhenReader(signs, conditions, limits, traits, keepOuts);
    private final Row.Ids<Known> knowns = Row.Ids.of(Known.values());

    SignInfo sign(Row row) {
        return new SignInfo(
                row.one("id", signs),
                row.one("sense", senses),
                row.one("where", wheres),
                row.one("lasts", lasts),
                row.one("met", mets),
                row.several("brings", traits),
                row.several("changedBy", actions),
                row.several("changedWith", traits),
                row.text("ask"),
                row.text("say"),
                row.text("deny"),
                row.text("how"),
                row.textIfAny("howInABox"),
                row.text("short"),
                row.texts("aliases"),
                row.rowIfAny("moisturePct", this::figure));
    }

    CauseInfo cause(Row row) {
        return new CauseInfo(
                row.one("id", causes),
                row.text("name"),
                row.one("kind", kinds),
                row.text("summary"),
                row.text("why"),
                row.number("baseRate"),
                row.text("tellApart"),
                row.texts("sources"),
                known(row));
    }

    DangerInfo danger(Row row) {
        return new DangerInfo(
                row.one("id", dangers),
                row.text("name"),
                row.one("cause", causes),
                row.text("summary"),
                row.flag("closes"),
                row.several("steps", remedies),
                row.several("overrules", dangers),
                row.several("cautions", cautions),
                row.several("asks", signs),
                row.text("over"),
                row.texts("sources"),
                known(row));
    }

    RemedyInfo remedy(Row row) {
        return new RemedyInfo(
                row.one("id", remedies),
                row.text("name"),
                row.text("how"),
                row.textIfAny("gently"),
                row.one("urgency", urgencies),
                row.row("effort", e -> new RemedyInfo.Effort(e.whole("minutes"), e.flag("heavy"))),
                row.several("gear", gears),
                row.one("risk", risks),
                row.row(
                        "effectDays",
                        e -> new RemedyInfo.Effect(e.number("low"), e.number("likely"), e.number("high"))),
                row.oneIfAny("dose", doses),
                row.text("expect"),
                row.row("expectDays", d -> new RemedyInfo.Days(d.whole("from"), d.whole("to"))),
                row.text("otherwise"),
                row.text("notWhen"),
                row.several("cautions", cautions),
                row.row("does", Tables::does),
                row.several("mends", signs),
                row.several("undoes", remedies),
                row.textIfAny("alternatives"),
                row.rowsIfAny("ways", this::way),
                row.texts("sources"),
                known(row));
    }

    CautionInfo caution(Row row) {
        return new CautionInfo(
                row.one("id", cautions),
                row.text("title"),
                row.text("text"),
                row.text("why"),
                row.one("severity", severities),
                row.row(
                        "fits",
                        f -> new CautionInfo.Fits(f.several("onlyIf", conditions), f.several("neverIf", conditions))),
                row.textIfAny("localRules"),
                Optional.empty(),
                row.texts("sources"),
                known(row));
    }

    LimitInfo limit(Row row) {
        return new LimitInfo(
                row.one("id", limits),
                row.text("name"),
                row.number("value"),
                row.text("unit"),
                row.number("lowest"),
                row.number("highest"),
                row.texts("sources"),
                known(row),
                row.text("spread"));
    }

    Material material(Row row) {
        List<Trait> does = row.several("traits", traits);
        return new Material(
                row.text("id"),
                row.text("name"),
                row.one("group", groups),
                row.texts("aliases"),
                row.row("carbonToNitrogen", this::figure),
                row.row("carbonPct", this::figure),
                row.row("nitrogenPct", this::figure),
                row.flag("nitrogenOnSameSample"),
                row.row("moisturePct", this::figure),
                row.row("densityKgM3", this::figure),
                row.rowIfAny("ashPct", this::figure),
                row.rowIfAny("ligninPctVs", this::figure),
                row.rowIfAny("saltPct", this::figure),
                Set.copyOf(does),
                row.several("cautions", cautions),
                row.rowIfAny(
                        "keepOut",
                        k -> new Material.KeepOut(
                                k.one("bar", bars), k.one("kind", keepOuts), k.text("reason"), k.text("instead"))),
                row.text("note"));
    }

    MeasureInfo measure(Row row) {
        return new MeasureInfo(
                row.text("id"),
                row.row("name", n -> new MeasureInfo.Name(n.text("one"), n.text("many"))),
                row.number("litres"),
                row.numberIfAny("kilograms"),
                row.texts("aliases"),
                row.textIfAny("note"),
                row.texts("sources"),
                known(row));
    }

    SourceInfo source(Row row) {
        return new SourceInfo(row.text("key"), row.text("what"), known(row), row.textIfAny("address"));
    }

    KeepOutInfo keepOut(Row row) {
        return new KeepOutInfo(
                row.one("id", keepOuts),
                row.text("name"),
                row.several("signs", signs),
                row.oneIfAny("step", remedies),
                row.flag("nothingForkedThrough"),
                row.flag("staysTainted"),
                row.texts("sources"),
                known(row));
    }

    UsualDoseInfo usualDose(Row row) {
        return new UsualDoseInfo(
                row.one("id", usualDoses),
                row.text("name"),
                row.text("verdict"),
                row.several("forCauses", causes),
                row.texts("sources"),
                known(row));
    }

    Weights weights(Row row) {
        Map<Strength, Double> decibans = new EnumMap<>(Strength.class);
        for (Strength strength : Strength.values()) {
            decibans.put(strength, row.number(strength.id()));
        }
        double again = row.number("again");
        try {
            return new Weights(decibans, again);
        } catch (IllegalArgumentException e) {
            throw row.fault(
                    "",
                    e.getMessage(),
                    "five figures",
                    "{\"slight\": 2, \"fair\": 5, \"strong\": 10, \"decisive\": 20, \"again\": 0.25}");
        }
    }

    Evidence evidence(Cause cause, Row row) {
        return new Evidence(
                row.text("id"),
                cause,
                row.one("speaks", speaks),
                row.one("strength", strengths),
                row.one("witness", witnesses),
                row.row("when", whens::read),
                row.text("because"),
                row.text("source"),
                known(row));
    }

    private Figure figure(Row row) {
        return new Figure(row.number("low"), row.number("typical"), row.number("high"), row.text("source"), known(row));
    }

    private RemedyInfo.Way way(Row row) {
        return new RemedyInfo.Way(
                row.texts("kinds").stream().map(kind -> kind(row, kind)).toList(),
                row.text("name"),
                row.text("how"),
                row.several("gear", gears),
                row.textIfAny("expect"),
                row.textIfAny("otherwise"),
                row.text("notWhen"),
                row.textsIfAny("stuff"),
                row.flagIfAny("withoutDose").orElse(false));
    }

    private static Container.Kind kind(Row row, String token) {
        return Arrays.stream(Container.Kind.values())
                .filter(k -> k != Container.Kind.UNKNOWN && k.token().equals(token))
                .findFirst()
                .orElseThrow(() -> row.fault("kinds", "\"" + token + "\"", "kinds of container", "[\"tumbler\"]"));
    }

    private static RemedyInfo.Does does(Row row) {
        return new RemedyInfo.Does(
                row.flag("opens"),
                row.flag("digsIn"),
                row.flag("turns"),
                row.flag("wets"),
                row.flag("feeds"),
                row.flag("addsNitrogen"),
                row.flag("addsAlkali"),
                row.flag("addsDryStuff"),
                row.flag("fromOutside"));
    }

    private Known known(Row row) {
        return row.one("known", knowns);
    }
}
