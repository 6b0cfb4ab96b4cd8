package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Afternoon;
import heapwright.advice.Headline;
import heapwright.advice.Step;
import heapwright.advice.WithheldStep;
import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.ready.Ready;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.SignInfo;
import heapwright.process.sanitation.HeatLedger;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The first page of a checkup: what it is and how sure, one afternoon's work, its care, and when to look again. The rest
 * stands in {@link TextReport}.
 */
public final class FirstPage {

    private static final int INDENT = 3;
    private static final int SIGNS = 3;
    private static final int HELD = 2;

    /** More names of steps held back than this, and one, are a list that nobody reads; judgement. */
    private static final int HELD_NAMES = 3;

    /** Where it is worth a line how hot the core was. */
    private static final Set<Cause> HEAT_MATTERS =
            Set.of(Cause.PATHOGEN_RISK, Cause.WEED_SEEDS_ALIVE, Cause.DISEASE_CARRIED);

    /** Where the compost may be ready. */
    static final Set<Cause> RIPENING = Set.of(Cause.FINISHED, Cause.MATURING);

    /** What is left away first where the page is too full. */
    private enum Less {
        NOTHING,
        EVIDENCE,
        HOW_OF_THIRD,
        HOW_OF_SECOND,
        HELD_BACK,
        IF_NOT,
        THIRD
    }

    private final Words words;
    private final JobText jobs;
    private final boolean marked;
    private final DateTimeFormatter longDay;

    /**
     * Prepares.
     *
     * @param words the words to use
     * @param marked whether headings may be set in bold by terminal codes
     */
    public FirstPage(Words words, boolean marked) {
        this.words = words;
        this.jobs = new JobText(words);
        this.marked = marked;
        this.longDay =
                DateTimeFormatter.ofPattern("d MMMM yyyy", words.catalogue().locale());
    }

    /** Whether the page tells what to find out next: where nothing stands out the questions are the work. */
    public static boolean asks(Advice advice) {
        return advice.alarm().isEmpty() && advice.findings().isEmpty();
    }

    /** The page: at most 45 lines and 250 words, or the least that a danger needs. */
    public String write(Advice advice) {
        return FirstPageSize.fullest(Less.values().length, less -> page(advice, Less.values()[less]));
    }

    private String page(Advice advice, Less less) {
        Layout page = new Layout(marked);
        page.line(
                0,
                page.strong(advice.pile().name() + ", " + advice.pile().asOf().format(longDay)));
        page.paragraph(0, 0, new HeadlineText(words).of(advice));
        if (advice.alarm().isEmpty()) {
            words.toCheck(advice.pile()).forEach(told -> page.paragraph(0, 0, told));
            words.assumed(advice.pile()).ifPresent(told -> page.paragraph(0, 0, told));
            new MemoryText(words).lines(advice.pile()).forEach(told -> page.paragraph(0, 0, told));
            if (less.compareTo(Less.EVIDENCE) < 0) {
                evidence(advice).ifPresent(told -> page.paragraph(0, 0, told));
                heat(advice).ifPresent(told -> page.paragraph(0, 0, told));
                ready(advice).ifPresent(told -> page.paragraph(0, 0, told));
            }
            contradictions(page, advice);
        }
        Afternoon work = less.compareTo(Less.THIRD) < 0 ? work(advice) : first(advice);
        if (!work.jobs().isEmpty()) {
            work(page, advice, work, less);
        }
        if (less.compareTo(Less.HELD_BACK) < 0) {
            held(page, advice);
        }
        questions(page, advice);
        page.blank();
        page.paragraph(0, 0, more(advice, work));
        return page.toString();
    }

    private Afternoon work(Advice advice) {
        return Afternoon.of(advice, words.knowledge());
    }

    private Afternoon first(Advice advice) {
        List<Step> all = work(advice).jobs();
        return new Afternoon(all.subList(0, Math.min(2, all.size())));
    }

    /** Answers that cannot both be so; how to look again is the work then. */
    private void contradictions(Layout page, Advice advice) {
        advice.contradictions().stream()
                .limit(SIGNS)
                .forEach(c -> page.paragraph(
                        0, INDENT, "- " + words.text("first.at-odds", words.says(c.one()), words.says(c.other()))));
    }

    /** How hot the core was by the record, where seed, disease or germs are among what is told first. */
    private Optional<String> heat(Advice advice) {
        boolean matters = Headline.of(advice, words.knowledge()).findings().stream()
                .anyMatch(f -> HEAT_MATTERS.contains(f.cause()));
        HeatLedger ledger = HeatLedger.of(advice.pile(), words.knowledge());
        return matters && ledger.record().measured()
                ? Optional.of(new SanitationWords(words).line(ledger))
                : Optional.empty();
    }

    /** What it is ripe enough for, where it may be ripe at all. */
    private Optional<String> ready(Advice advice) {
        boolean mayBe =
                Headline.of(advice, words.knowledge()).findings().stream().anyMatch(f -> RIPENING.contains(f.cause()));
        return mayBe ? Optional.of(new UseWords(words).line(Ready.of(advice, words.knowledge()))) : Optional.empty();
    }

    /** What was seen, smelled or measured that speaks loudest for the first finding. */
    private Optional<String> evidence(Advice advice) {
        AdviceWords text = new AdviceWords(words);
        return Stream.concat(Headline.of(advice, words.knowledge()).findings().stream(), advice.findings().stream())
                .findFirst()
                .map(f -> f.weighed().supports().stream()
                        .filter(EvidencePiece::counted)
                        .limit(SIGNS)
                        .map(text::because)
                        .flatMap(told -> Stream.of(told.split("; ")))
                        .map(FirstPage::inside)
                        .distinct()
                        .collect(Collectors.joining("; ")))
                .filter(told -> !told.isEmpty())
                .map(told -> words.text("first.by", told));
    }

    /** A statement to stand inside a sentence: without its capital, unless that is of a term such as C:N. */
    private static String inside(String statement) {
        boolean word = statement.length() > 1 && Character.isLowerCase(statement.charAt(1));
        return word || statement.startsWith("A ")
                ? Character.toLowerCase(statement.charAt(0)) + statement.substring(1)
                : statement;
    }

    private void work(Layout page, Advice advice, Afternoon work, Less less) {
        page.heading(jobs.when(work));
        String fetch = jobs.fetch(work, advice.pile());
        if (!fetch.isEmpty()) {
            page.paragraph(0, 0, words.text("work.fetch", fetch));
        }
        String others = jobs.others(work, advice.pile());
        if (!others.isEmpty()) {
            page.paragraph(0, 0, page.strong(others));
        }
        String soFar = "";
        for (Step job : work.jobs()) {
            String amount = jobs.amount(job.main(), advice.pile());
            job(page, advice, job, once(amount, soFar), less);
            soFar += amount;
        }
        List<CautionInfo> care = jobs.care(work, advice);
        if (!care.isEmpty()) {
            page.heading(words.text("section.careful"));
            care.forEach(c -> page.paragraph(0, INDENT, "- " + words.caution(c)));
        }
        page.blank();
        Step first = work.jobs().get(0);
        page.paragraph(
                0,
                0,
                less.compareTo(Less.IF_NOT) < 0 ? jobs.look(first, advice.pile()) : jobs.expect(first, advice.pile()));
    }

    /** How a large heap is taken in parts is said at the first of its amounts. */
    private String once(String amount, String soFar) {
        String how = words.text("dose.to-each.how");
        return soFar.contains(how) ? amount.replace(" " + how, "") : amount;
    }

    private void job(Layout page, Advice advice, Step job, String amount, Less less) {
        RemedyInfo info = words.way(job.main().remedy(), advice.pile());
        page.paragraph(0, INDENT, page.strong(job.rank() + ". " + info.name()));
        if (!amount.isEmpty()) {
            page.paragraph(INDENT, 0, page.strong(amount));
        }
        boolean inFull = job.rank() == 1
                || less.compareTo(Less.HOW_OF_THIRD) < 0
                || job.rank() == 2 && less.compareTo(Less.HOW_OF_SECOND) < 0;
        if (inFull) {
            page.paragraph(INDENT, 0, jobs.how(job, advice.pile()));
        }
    }

    /** To rest is no work that could wait. */
    private boolean isRest(WithheldStep held) {
        return words.knowledge().remedies().get(held.remedy()).urgency() == Urgency.REST;
    }

    private void held(Layout page, Advice advice) {
        HeldText text = new HeldText(words);
        List<HeldText.Together> held = text.of(advice.withheld().stream()
                .filter(h -> !isRest(h) && text.comesToMind(h, advice.pile()))
                .toList());
        List<String> names =
                held.stream().limit(HELD).flatMap(h -> h.names().stream()).toList();
        if (!names.isEmpty()) {
            int told = names.size() > HELD_NAMES + 1 ? HELD_NAMES : names.size();
            String first = String.join("; ", names.subList(0, told));
            page.paragraph(
                    0,
                    0,
                    told == names.size()
                            ? words.text("first.not-now", first)
                            : words.text("first.not-now-and", first, names.size() - told));
        }
    }

    private void questions(Layout page, Advice advice) {
        if (!asks(advice) || advice.questions().isEmpty()) {
            return;
        }
        page.heading(words.text("section.questions"));
        advice.questions().stream().limit(SIGNS).forEach(q -> {
            SignInfo sign = words.knowledge().signs().get(q.sign());
            page.paragraph(
                    0,
                    INDENT,
                    "- " + sign.ask() + " " + sign.how(advice.pile().container().kind()));
        });
    }

    private String more(Advice advice, Afternoon work) {
        List<String> parts = new ArrayList<>();
        int steps = advice.steps().size() - work.jobs().size();
        if (steps > 0) {
            parts.add(words.text("first.more-steps", steps));
        }
        if (!advice.withheld().isEmpty()) {
            parts.add(words.text("first.more-held", advice.withheld().size()));
        }
        parts.add(words.text("first.more-rest"));
        return words.text("first.more", String.join(", ", parts));
    }
}
