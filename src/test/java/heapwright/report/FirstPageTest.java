package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.Afternoon;
import heapwright.advice.Forecaster;
import heapwright.advice.Step;
import heapwright.advice.TestPile;
import heapwright.advice.winter.PileOutlook;
import heapwright.casebook.JudgedCases;
import heapwright.casebook.JudgedCases.Judged;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.CautionInfo.Severity;
import heapwright.pile.Pile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The first page is short, says its first job and when to look again, and leaves no danger to the pages behind it. */
@DisplayName("The first page of a checkup")
@Tag("thorough")
class FirstPageTest {

    /** Asked for by those who use it. */
    private static final int LINES = 45;

    private static final int WORDS = 250;

    /** The layers of a recipe of ten things are its answer and are not left away. */
    private static final int WORDS_WITH_LAYERS = 330;

    private static final Words IN_METRIC = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
    private static final Words IN_US = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.US);

    @Test
    @DisplayName("holds at most 45 lines and 250 words, in every case")
    void isShort() {
        List<String> tooLong = new ArrayList<>();
        for (Judged judged : JudgedCases.all()) {
            for (Words words : List.of(IN_METRIC, IN_US)) {
                look("checkup " + judged.tested().file(), new FirstPage(words, false).write(judged.advice()), WORDS)
                        .ifPresent(tooLong::add);
            }
        }
        assertEquals("", String.join("\n", tooLong));
    }

    @Test
    @DisplayName("begins no statement inside a sentence with a capital")
    void goesBy() {
        List<String> capitals = JudgedCases.all().stream()
                .map(j -> new FirstPage(IN_METRIC, false).write(j.advice()).replaceAll("\\s+", " "))
                .filter(page -> page.matches(".*Going by: [^.]*; A .*"))
                .toList();
        assertEquals(List.of(), capitals);
    }

    @Test
    @DisplayName("holds back a fertiliser only before whoever has one")
    void fertiliserNobodyHas() {
        String sawdust = """
                "built": "2026-05-15", "recipe": [
                   {"material": "sawdust", "amount": 20, "unit": "bucket"},
                   {"material": "manure-sheep", "amount": 3, "unit": "bucket"},
                   {"material": "water", "amount": 6, "unit": "bucket"}],
                 "atHand": [%s],
                 "log": [{"date": "2026-06-25", "seen": ["core-cold", "never-heated", "squeeze-holds"],
                   "notSeen": ["smells-ammonia", "soggy"]}]
                """;
        String without = page(sawdust.formatted(""));
        assertTrue(!without.contains("urea"), without);
        String with = page(sawdust.formatted("{\"material\": \"urea\", \"amount\": 2, \"unit\": \"kg\"}"));
        assertTrue(with.contains("urea"), with);
    }

    private static String page(String pile) {
        return new FirstPage(IN_METRIC, false).write(TestPile.advice(pile));
    }

    @Test
    @DisplayName("is the same where only the questions that it tells are worked out")
    void questionsOnlyWhereTold() {
        int asking = 0;
        for (Judged judged : JudgedCases.below("winter")) {
            Pile pile = judged.advice().pile();
            Advice part = TestPile.ADVISOR.adviseAsking(pile, FirstPage::asks);
            assertEquals(
                    new FirstPage(IN_METRIC, false).write(TestPile.ADVISOR.advise(pile)),
                    new FirstPage(IN_METRIC, false).write(part));
            asking += part.questions().isEmpty() ? 0 : 1;
        }
        Pile untold = TestPile.seen("", "");
        assertFalse(TestPile.ADVISOR
                .adviseAsking(untold, FirstPage::asks)
                .questions()
                .isEmpty());
        assertEquals(0, asking, "each of these has a finding");
    }

    @Test
    @DisplayName("warns of poisonous clippings where there are animals, before the usual cares of the work")
    void poisonousClippings() {
        String page = JudgedCases.all().stream()
                .filter(j -> j.tested().file().contains("oleander-is-fenced-from-pets"))
                .map(j -> new FirstPage(IN_METRIC, false).write(j.advice()))
                .findFirst()
                .orElseThrow();
        assertTrue(page.contains("Keep poisonous clippings away from animals"), page);
    }

    @Test
    @DisplayName("of why holds no more, in every case")
    void whyIsShort() {
        List<String> tooLong = new ArrayList<>();
        for (Judged judged : JudgedCases.all()) {
            look("why " + judged.tested().file(), new FirstPageOfWhy(IN_METRIC, false).write(judged.advice()), WORDS)
                    .ifPresent(tooLong::add);
        }
        assertEquals("", String.join("\n", tooLong));
    }

    @Test
    @DisplayName("of an audit holds no more lines, and words for the layers, in every case with demands on its recipe")
    void auditIsShort() {
        List<String> tooLong = new ArrayList<>();
        int audits = 0;
        for (Judged judged : JudgedCases.all()) {
            if (judged.audit().isPresent()) {
                audits++;
                String page = new FirstPageOfAudit(IN_METRIC, false)
                        .write(judged.audit().get());
                look("audit " + judged.tested().file(), page, WORDS_WITH_LAYERS).ifPresent(tooLong::add);
            }
        }
        assertEquals("", String.join("\n", tooLong));
        assertTrue(audits > 100, "only " + audits + " audits");
    }

    @Test
    @DisplayName("of an outlook holds no more, in every thirtieth case that the model can reckon")
    void outlookIsShort() {
        List<String> tooLong = new ArrayList<>();
        Forecaster forecaster = new Forecaster(TestPile.KNOWLEDGE);
        List<Judged> all = JudgedCases.all();
        int outlooks = 0;
        for (int i = 0; i < all.size(); i += 30) {
            Optional<PileOutlook> ahead = forecaster.ahead(all.get(i).tested().pile());
            if (ahead.isPresent()) {
                outlooks++;
                look(
                                "outlook " + all.get(i).tested().file(),
                                new FirstPageOfOutlook(IN_METRIC, false).write(ahead.get()),
                                WORDS)
                        .ifPresent(tooLong::add);
            }
        }
        assertEquals("", String.join("\n", tooLong));
        assertTrue(outlooks > 10, "only " + outlooks + " outlooks");
    }

    private static Optional<String> look(String name, String page, int most) {
        long lines = page.lines().count();
        long count = Arrays.stream(page.strip().split("\\s+"))
                .filter(w -> w.matches(".*[\\p{L}\\p{N}].*"))
                .count();
        return lines > LINES || count > most
                ? Optional.of(name + ": " + lines + " lines, " + count + " words")
                : Optional.empty();
    }

    @Test
    @DisplayName("says no sentence twice, in every case")
    void saysNothingTwice() {
        List<String> twice = new ArrayList<>();
        for (Judged judged : JudgedCases.all()) {
            String page = new FirstPage(IN_METRIC, false).write(judged.advice()).replaceAll("\\s+", " ");
            Set<String> said = new HashSet<>();
            for (String sentence : page.split("(?<=[.!?]) ")) {
                if (sentence.split(" ").length > 3 && !said.add(sentence)) {
                    twice.add(judged.tested().file() + ": " + sentence);
                }
            }
        }
        assertEquals("", String.join("\n", twice));
    }

    @Test
    @DisplayName("names the headline, each job and every danger of the work, in every case")
    void saysWhatMatters() {
        List<String> missing = new ArrayList<>();
        int jobs = 0;
        for (Judged judged : JudgedCases.all()) {
            Advice advice = judged.advice();
            String page = new FirstPage(IN_METRIC, false).write(advice).replaceAll("\\s+", " ");
            List<String> wanted = new ArrayList<>();
            wanted.add(new HeadlineText(IN_METRIC).of(advice));
            Set<Caution> cautions = new HashSet<>(advice.cautions());
            List<Step> work = Afternoon.of(advice, TestPile.KNOWLEDGE).jobs();
            work.stream().limit(2).forEach(job -> {
                wanted.add(job.rank() + ". "
                        + IN_METRIC.way(job.main().remedy(), advice.pile()).name());
                cautions.addAll(job.main().cautions());
            });
            jobs += work.size();
            cautions.stream()
                    .map(c -> TestPile.KNOWLEDGE.cautions().get(c))
                    .filter(c -> c.severity() == Severity.DANGER)
                    .map(CautionInfo::title)
                    .forEach(wanted::add);
            wanted.stream()
                    .filter(w -> !page.contains(Words.withoutStop(w).replaceAll("\\s+", " ")))
                    .forEach(w -> missing.add(judged.tested().file() + ": " + w));
        }
        assertEquals("", String.join("\n", missing));
        assertTrue(jobs > 1500, "only " + jobs + " jobs");
    }
}
