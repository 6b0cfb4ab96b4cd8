package heapwright.knowledge;

import heapwright.pile.Container;
import java.util.Set;

/** Makes records of the rows of the table of the seasons. */
final class SeasonTable {

    private final Row.Ids<TimeOfYear> times = Row.Ids.of(TimeOfYear.values());
    private final Row.Ids<SeasonJob.Keeps> keeps = Row.Ids.of(SeasonJob.Keeps.values());
    private final Row.Ids<Container.Kind> kinds = Row.Ids.ofTokens(Container.Kind.values());
    private final Row.Ids<Known> knowns = Row.Ids.of(Known.values());

    SeasonJob job(Row row) {
        return new SeasonJob(
                row.text("id"),
                row.one("time", times),
                row.one("keeps", keeps),
                Set.copyOf(row.several("kinds", kinds)),
                row.text("job"),
                row.text("why"),
                row.texts("sources"),
                row.one("known", knowns));
    }
}
