package heapwright.knowledge;

import heapwright.pile.Aim;
import heapwright.pile.HomeTest;
import heapwright.pile.Tested;

/** Makes records of the rows of the tables of ripeness and use. */
final class EndUseTables {

    private final Row.Ids<HomeTest> tests = Row.Ids.ofTokens(HomeTest.values());
    private final Row.Ids<Tested.Result> results = Row.Ids.ofTokens(Tested.Result.values());
    private final Row.Ids<UseInfo.Kind> kinds = Row.Ids.of(UseInfo.Kind.values());
    private final Row.Ids<UseInfo.Climate> climates = Row.Ids.of(UseInfo.Climate.values());
    private final Row.Ids<Aim.Use> aims = Row.Ids.ofTokens(Aim.Use.values());
    private final Row.Ids<Ripeness> grades = Row.Ids.of(Ripeness.values());
    private final Row.Ids<RipeReason> reasons = Row.Ids.of(RipeReason.values());
    private final Row.Ids<Wait> waits = Row.Ids.of(Wait.values());
    private final Row.Ids<Sign> signs = Row.Ids.of(Sign.values());
    private final Row.Ids<Trait> traits = Row.Ids.of(Trait.values());
    private final Row.Ids<Known> knowns = Row.Ids.of(Known.values());

    HomeTestInfo test(Row row) {
        return new HomeTestInfo(
                row.one("id", tests),
                row.text("name"),
                row.text("tells"),
                row.text("needs"),
                row.text("how"),
                row.whole("fromDays"),
                row.whole("toDays"),
                row.whole("againDays"),
                row.rowsIfAny(
                        "readings",
                        r -> new HomeTestInfo.Outcome(
                                r.one("result", results), r.text("reads"), r.one("allows", grades))),
                row.oneIfAny("signIfPoor", signs),
                row.several("forStuff", traits),
                row.rowsIfAny("limits", l -> new HomeTestInfo.Edge(l.text("name"), l.number("value"), l.text("unit"))),
                row.texts("sources"),
                row.one("known", knowns));
    }

    UseInfo use(Row row) {
        return new UseInfo(
                row.text("id"),
                row.text("name"),
                row.one("kind", kinds),
                row.number("low"),
                row.number("usual"),
                row.number("high"),
                row.text("often"),
                row.one("needs", grades),
                row.flag("food"),
                row.one("climate", climates),
                row.several("aims", aims),
                row.text("note"),
                row.texts("sources"),
                row.one("known", knowns));
    }

    WaitInfo wait(Row row) {
        return new WaitInfo(
                row.one("id", waits),
                row.text("name"),
                row.whole("days"),
                row.whole("toDays"),
                row.texts("materials"),
                row.text("note"),
                row.texts("sources"),
                row.one("known", knowns));
    }

    RipeReasonInfo reason(Row row) {
        return new RipeReasonInfo(
                row.one("id", reasons),
                row.one("allows", grades),
                row.flag("danger"),
                row.text("says"),
                row.text("then"),
                row.texts("sources"),
                row.one("known", knowns));
    }
}
