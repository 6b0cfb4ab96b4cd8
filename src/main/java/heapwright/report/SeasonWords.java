package heapwright.report;

import heapwright.advice.season.Season;
import heapwright.advice.season.YearRound;
import heapwright.knowledge.SeasonJob;
import heapwright.pile.Pile;
import heapwright.process.climate.MonthThird;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The words for what there is to do in each season, shared by text and page. */
public final class SeasonWords {

    private static final int LAST = 2;

    private final Words words;

    public SeasonWords(Words words) {
        this.words = words;
    }

    /** The title; without a pile, for any. */
    public String title(Optional<Pile> pile, LocalDate day) {
        String date = new Days(words).of(day);
        return pile.map(p -> words.text("season.title", p.name(), date))
                .orElseGet(() -> words.text("season.title-any", date));
    }

    /** What is said first: what the year stands on where the months are not measured, and what goes before all of it. */
    public List<String> ground(YearRound year, Optional<Pile> pile) {
        List<String> said = new ArrayList<>();
        switch (year.known()) {
            case MONTHS -> {}
            case LATITUDE -> said.add(words.text("season.latitude"));
            case ASSUMED -> said.add(words.text(pile.isPresent() ? "season.assumed" : "season.assumed-any"));
        }
        pile.ifPresent(p -> said.add(words.text("season.checkup-first")));
        return said;
    }

    /** A time of the year with its months. */
    public String span(Season season) {
        String time = words.text("season.time." + season.time().id());
        MonthThird from = season.from();
        MonthThird to = season.to();
        if (from.equals(to)) {
            return words.text("season.once", time, third(from));
        }
        if (from.month() == to.month()) {
            return words.text(
                    "season.once",
                    time,
                    whole(from, to) ? month(from) : words.text("season.within." + from.third(), third(to)));
        }
        return words.text(
                "season.span",
                time,
                from.third() == 0 ? month(from) : third(from),
                to.third() == LAST ? month(to) : third(to));
    }

    private static boolean whole(MonthThird from, MonthThird to) {
        return from.third() == 0 && to.third() == LAST;
    }

    private String third(MonthThird third) {
        return words.text("season.third." + third.third(), month(third));
    }

    private String month(MonthThird third) {
        return third.month().getDisplayName(TextStyle.FULL, words.catalogue().locale());
    }

    /** Its jobs, by what they are for. */
    public Map<SeasonJob.Keeps, List<SeasonJob>> jobs(Season season) {
        return season.jobs().stream()
                .collect(Collectors.groupingBy(SeasonJob::keeps, LinkedHashMap::new, Collectors.toList()));
    }

    public String keeps(SeasonJob.Keeps keeps) {
        return words.text("season.keeps." + keeps.id());
    }

    /** What a job rests on. */
    public String rests(SeasonJob job) {
        return words.text(
                "season.rests",
                String.join(", ", job.sources()),
                words.text("known." + job.known().id()));
    }
}
