package heapwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.advice.danger.Alarm;
import heapwright.advice.season.Season;
import heapwright.advice.season.YearRound;
import heapwright.knowledge.SeasonJob;
import heapwright.pile.Pile;
import heapwright.process.climate.MonthThird;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** The whole year's work as JSON, the season that is now first. */
public final class SeasonJson {

    private final Words words;
    private final SeasonWords said;
    private final String version;

    public SeasonJson(Words words, String version) {
        this.words = words;
        this.said = new SeasonWords(words);
        this.version = version;
    }

    /** The document. */
    public String write(YearRound year, Optional<Pile> pile, LocalDate day) {
        ObjectNode root = root(pile, day);
        new AlarmJson(words).write(root, Optional.empty());
        said.ground(year, pile).forEach(root.putArray("ground")::add);
        root.put("yearKnown", year.known().name().toLowerCase(Locale.ROOT));
        ArrayNode seasons = root.putArray("seasons");
        year.seasons().forEach(season -> season(seasons.addObject(), season));
        return JsonText.write(root) + "\n";
    }

    /** The document while a danger stands: the danger alone. */
    public String alarmed(Pile pile, Alarm alarm, LocalDate day) {
        return new AlarmJson(words).alone(root(Optional.of(pile), day), alarm);
    }

    private ObjectNode root(Optional<Pile> pile, LocalDate day) {
        ObjectNode root = JsonText.object("season").put("version", version);
        pile.ifPresent(p -> root.put("pile", p.name()));
        return root.put("asOf", day.toString());
    }

    private void season(ObjectNode node, Season season) {
        node.put("time", season.time().id());
        node.put("name", said.span(season));
        third(node.putObject("from"), season.from());
        third(node.putObject("to"), season.to());
        ArrayNode jobs = node.putArray("jobs");
        season.jobs().forEach(job -> job(jobs.addObject(), job));
    }

    private static void third(ObjectNode node, MonthThird third) {
        node.put("month", third.month().getValue()).put("third", third.third() + 1);
    }

    private static void job(ObjectNode node, SeasonJob job) {
        node.put("id", job.id());
        node.put("for", job.keeps().id());
        node.put("job", job.job());
        node.put("why", job.why());
        job.sources().forEach(node.putArray("sources")::add);
        node.put("known", job.known().id());
    }
}
