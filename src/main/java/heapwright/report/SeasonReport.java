package heapwright.report;

import heapwright.advice.danger.Alarm;
import heapwright.advice.season.Season;
import heapwright.advice.season.YearRound;
import heapwright.knowledge.SeasonJob;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What there is to do now and next, or all the year round with the reasons. */
public final class SeasonReport {

    private static final int INDENT = 2;
    private static final int NOW_AND_NEXT = 2;

    /** What is left away first where the first page is too full. */
    private enum Less {
        NOTHING,
        REASONS,
        TOILET,
        NEXT
    }

    private final Words words;
    private final SeasonWords said;
    private final boolean marked;

    public SeasonReport(Words words, boolean marked) {
        this.words = words;
        this.said = new SeasonWords(words);
        this.marked = marked;
    }

    /** The first page: this time of the year and the next. */
    public String first(YearRound year, Optional<Pile> pile, LocalDate day) {
        return FirstPageSize.fullest(Less.values().length, less -> first(year, pile, day, Less.values()[less]));
    }

    private String first(YearRound year, Optional<Pile> pile, LocalDate day, Less less) {
        Layout page = opened(year, pile, day);
        List<Season> seasons = year.seasons();
        int shown = less.compareTo(Less.NEXT) < 0 ? NOW_AND_NEXT : 1;
        seasons.stream().limit(shown).forEach(season -> {
            page.heading(said.span(season));
            said.jobs(season).forEach((keeps, jobs) -> {
                if (keeps != SeasonJob.Keeps.TOILET || less.compareTo(Less.TOILET) < 0) {
                    jobs.forEach(job -> page.paragraph(
                            0,
                            INDENT,
                            "- " + words.text("season.job", said.keeps(keeps), told(job, season, less, seasons))));
                }
            });
        });
        page.blank();
        page.paragraph(0, 0, words.text("season.more"));
        return page.toString();
    }

    /** The reasons stand beside what is to be done now; those of what comes next can wait. */
    private String told(SeasonJob job, Season season, Less less, List<Season> seasons) {
        boolean reason = less.compareTo(Less.REASONS) < 0 && season.equals(seasons.get(0));
        return reason ? words.text("season.because", job.job(), job.why()) : job.job();
    }

    /** All of it, with the reasons and what they rest on. */
    public String full(YearRound year, Optional<Pile> pile, LocalDate day) {
        Layout page = opened(year, pile, day);
        year.seasons().forEach(season -> {
            page.heading(said.span(season));
            said.jobs(season).forEach((keeps, jobs) -> {
                page.paragraph(0, 0, page.strong(said.keeps(keeps)));
                jobs.forEach(job -> page.paragraph(
                        0, INDENT, "- " + words.text("season.because", job.job(), job.why()) + " " + said.rests(job)));
            });
        });
        page.blank();
        page.paragraph(0, 0, words.text("season.local"));
        return page.toString();
    }

    private Layout opened(YearRound year, Optional<Pile> pile, LocalDate day) {
        Layout page = new Layout(marked);
        page.title(said.title(pile, day));
        said.ground(year, pile).forEach(ground -> page.paragraph(0, 0, ground));
        return page;
    }

    /** What is said in its place while a danger stands. */
    public String alarmed(Pile pile, Alarm alarm) {
        return new AlarmText(words).page(pile, alarm, marked);
    }
}
