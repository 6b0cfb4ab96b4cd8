package heapwright.knowledge;

/** Makes records of the rows of the tables of heat. */
final class SanitationTables {

    private final Row.Ids<HeatRule.Method> methods = Row.Ids.of(HeatRule.Method.values());
    private final Row.Ids<Survivor.Kind> kinds = Row.Ids.of(Survivor.Kind.values());
    private final Row.Ids<Survivor.Fate> fates = Row.Ids.of(Survivor.Fate.values());
    private final Row.Ids<Survivor.Result> results = Row.Ids.of(Survivor.Result.values());
    private final Row.Ids<Sign> signs = Row.Ids.of(Sign.values());
    private final Row.Ids<Known> knowns = Row.Ids.of(Known.values());

    HeatRule rule(Row row) {
        return new HeatRule(
                row.text("id"),
                row.text("name"),
                row.one("method", methods),
                row.rowsIfAny(
                        "needs",
                        n -> new HeatRule.Need(
                                n.number("celsius"),
                                n.number("days"),
                                n.whole("turns"),
                                n.whole("daysApart"),
                                n.whole("hotDaysBefore"),
                                n.flag("inARow"))),
                row.text("also"),
                row.texts("sources"),
                row.one("known", knowns));
    }

    HeatEquation equation(Row row) {
        return new HeatEquation(
                row.text("id"),
                row.text("name"),
                row.number("coefficient"),
                row.number("exponent"),
                row.number("lowestCelsius"),
                row.number("leastMinutes"),
                row.texts("sources"),
                row.one("known", knowns));
    }

    Survivor survivor(Row row) {
        return new Survivor(
                row.text("id"),
                row.text("name"),
                row.one("kind", kinds),
                row.one("fate", fates),
                row.rowIfAny("needs", n -> new Survivor.Need(n.number("celsius"), n.number("days"), n.whole("turns"))),
                row.flag("neverCompost"),
                row.flag("notifiable"),
                row.texts("materials"),
                row.several("signs", signs),
                row.rowsIfAny("trials", this::trial),
                row.text("then"));
    }

    private Survivor.Trial trial(Row row) {
        return new Survivor.Trial(
                row.numberIfAny("celsius"),
                row.numberIfAny("toCelsius"),
                row.numberIfAny("days"),
                row.one("result", results),
                row.text("said"),
                row.text("source"),
                row.one("known", knowns));
    }
}
