package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Afternoon;
import heapwright.advice.Option;
import heapwright.advice.People;
import heapwright.advice.Step;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.CautionInfo.Severity;
import heapwright.knowledge.Dose;
import heapwright.knowledge.RemedyInfo;
import heapwright.pile.Gear;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells one afternoon's work: what to fetch, what to do in which order, its care, and when to look again. */
public final class JobText {

    /** Cautions beyond these are in the full answer; more than six are not read. */
    static final int CARE = 6;

    private static final Set<Dose> DRY = EnumSet.of(Dose.SOAK_UP, Dose.BIND_NITROGEN);

    private final Words words;
    private final DoseWords doses;

    public JobText(Words words) {
        this.words = words;
        this.doses = new DoseWords(words);
    }

    /** The heading over the work: as soon as the most urgent of its jobs. */
    public String when(Afternoon work) {
        return words.word(
                "work",
                work.jobs().stream()
                        .map(Step::urgency)
                        .min(Comparator.naturalOrder())
                        .orElseThrow());
    }

    /** What to fetch, as "corrugated cardboard, a fork"; empty where nothing is needed. */
    public String fetch(Afternoon work, Pile pile) {
        Set<String> stuff = new LinkedHashSet<>();
        Set<Gear> gear = EnumSet.noneOf(Gear.class);
        for (Step job : work.jobs()) {
            stuff.addAll(doses.stuff(job.main()));
            gear.addAll(words.way(job.main().remedy(), pile).gear());
        }
        if (work.jobs().stream().anyMatch(JobText::bringsDryStuff)) {
            gear.remove(Gear.LEAVES);
        }
        return Stream.concat(stuff.stream(), gear.stream().map(g -> gear(g, pile)))
                .collect(Collectors.joining(", "));
    }

    /** Whether dry brown stuff is fetched for it by the amount, of which a handful for another job is no matter. */
    private static boolean bringsDryStuff(Step job) {
        return job.main().doses().stream().anyMatch(d -> DRY.contains(d.dose()) && d.isNeeded());
    }

    /** A tool; where whoever does the work has none, what does instead. */
    private String gear(Gear gear, Pile pile) {
        return words.text((pile.keeper().lacks().contains(gear) ? "gear-instead." : "gear.") + gear.token());
    }

    /** How it is done; of a step that did not help last time, what to do then: no step is told twice in the same words. */
    public String how(Step job, Pile pile) {
        RemedyInfo info = words.way(job.main().remedy(), pile);
        String how = job.again() ? words.text("step.again", info.otherwise()) : info.how();
        return goes(info, pile).map(goes -> goes + " " + how).orElse(how);
    }

    /** That somebody else should do the work, where spores and germs are grave for whoever does it; else empty. */
    public String others(Afternoon work, Pile pile) {
        return work.jobs().stream()
                        .anyMatch(j -> People.of(pile).leave(words.way(j.main().remedy(), pile)))
                ? words.text("work.others")
                : "";
    }

    /** In how many goes a job is done that takes longer than there is time for on one day. */
    private Optional<String> goes(RemedyInfo info, Pile pile) {
        OptionalInt time = pile.keeper().minutes();
        int minutes = info.effort().minutes();
        return time.isPresent() && minutes > time.getAsInt()
                ? Optional.of(words.text("work.goes", minutes, (minutes + time.getAsInt() - 1) / time.getAsInt()))
                : Optional.empty();
    }

    /** How much of what for a job, short: the span and the working are in the full answer; empty where nothing is weighed. */
    public String amount(Option job, Pile pile) {
        return String.join(" ", doses.brief(job, pile));
    }

    /**
     * Its care, the gravest first and of those as grave what fewest steps ask for, since that is of this job: at most six, a
     * danger always.
     */
    public List<CautionInfo> care(Afternoon work, Advice advice) {
        Set<Caution> all = new LinkedHashSet<>();
        work.jobs().forEach(j -> all.addAll(j.main().cautions()));
        all.addAll(advice.cautions());
        List<CautionInfo> gravest = words.knowledge().cautions().values().stream()
                .filter(c -> all.contains(c.id()))
                .sorted(Comparator.comparing(CautionInfo::severity).thenComparing(c -> steps(c.id())))
                .toList();
        long dangers =
                gravest.stream().filter(c -> c.severity() == Severity.DANGER).count();
        return gravest.stream().limit(Math.max(CARE, dangers)).toList();
    }

    /** How many remedies of the table ask for a caution. */
    private long steps(Caution caution) {
        return words.knowledge().remedies().values().stream()
                .filter(r -> r.cautions().contains(caution))
                .count();
    }

    /** One day on which to look, what should be seen, and what to do if it is not, unless that is what is done now. */
    public String look(Step job, Pile pile) {
        if (job.again()) {
            return expect(job, pile);
        }
        return expect(job, pile) + " "
                + words.text(
                        "step.otherwise", words.way(job.main().remedy(), pile).otherwise());
    }

    /** One day on which to look, and what should be seen. */
    String expect(Step job, Pile pile) {
        RemedyInfo info = words.way(job.main().remedy(), pile);
        LocalDate day = day(job);
        return day.equals(pile.asOf())
                ? words.text("work.done", info.expect())
                : words.text("work.look", new Days(words).of(day), info.expect());
    }

    /** The day to look at it again: in the middle of the days in which its effect comes. */
    public static LocalDate day(Step job) {
        return job.lookFrom().plusDays(ChronoUnit.DAYS.between(job.lookFrom(), job.lookTo()) / 2);
    }
}
