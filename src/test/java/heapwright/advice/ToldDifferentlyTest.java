package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.audit.Audit;
import heapwright.casebook.Case;
import heapwright.casebook.JudgedCases;
import heapwright.casebook.JudgedCases.Judged;
import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import heapwright.report.AuditReport;
import heapwright.report.AuditTable;
import heapwright.report.Catalogue;
import heapwright.report.OutlookReport;
import heapwright.report.TextReport;
import heapwright.report.TraceReport;
import heapwright.report.Units;
import heapwright.report.WhyReport;
import heapwright.report.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A pile told in another way is the same pile. All of it starts from the gathered pile, so every case is compared
 * there, which costs nothing; all ways at once go through the rules for every case; and every way by itself goes through
 * all four answers for some cases of every folder.
 */
@DisplayName("The same pile told differently")
@Tag("thorough")
class ToldDifferentlyTest {

    private static final Path CASES = Path.of(System.getProperty("cases.dir", "cases"));
    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);

    /** Every so many of the cases goes through all four answers. */
    private static final int SAMPLED = 24;

    /** Another way to tell the pile of a case. */
    private record Way(String name, UnaryOperator<Pile> told, boolean units) {}

    private static final List<Way> WAYS = List.of(
            new Way("in another order", pile -> ToldDifferently.inOtherOrder(pile, 7), false),
            new Way("with every amount in two lines", ToldDifferently::inTwoLines, false),
            new Way("with a day in many entries", ToldDifferently::inManyEntries, false),
            new Way("with another name and an idle entry", ToldDifferently::withMoreWords, false),
            new Way("in other units", pile -> pile, true));

    /** The cases that stand in a file as they are; a look at a season is a part of one. */
    private static List<Judged> inFiles() {
        return JudgedCases.all().stream()
                .filter(j -> Files.exists(CASES.resolve(j.tested().file())))
                .toList();
    }

    @Test
    @DisplayName("is gathered to the same, in every case and every way")
    void gathered() {
        List<String> differ = new ArrayList<>();
        int converted = 0;
        for (Judged judged : inFiles()) {
            Case one = judged.tested();
            Path file = CASES.resolve(one.file());
            converted += ToldDifferently.figures(file);
            for (Way way : WAYS) {
                Pile told = way.told().apply(way.units() ? ToldDifferently.inOtherUnits(file) : one.pile());
                if (!plain(Gathered.of(told)).equals(plain(Gathered.of(one.pile())))) {
                    differ.add(one.file() + " " + way.name() + ": "
                            + firstDifference(
                                    plain(Gathered.of(one.pile())).toString().replace(", ", "\n"),
                                    plain(Gathered.of(told)).toString().replace(", ", "\n")));
                }
            }
        }
        assertEquals("", String.join("\n", differ));
        assertTrue(converted > 800, "only " + converted + " figures have another unit");
    }

    @Test
    @DisplayName("gets the same advice, in every case, told in all ways at once")
    void advised() {
        List<String> differ = new ArrayList<>();
        for (Judged judged : inFiles()) {
            Case one = judged.tested();
            Pile told = ToldDifferently.inOtherUnits(CASES.resolve(one.file()));
            for (Way way : WAYS) {
                told = way.told().apply(told);
            }
            compare(differ, one, "all ways", checkup(judged.advice()), checkup(TestPile.ADVISOR.diagnose(told)));
        }
        assertEquals("", String.join("\n", differ));
    }

    @Test
    @DisplayName("gets the same checkup, why, audit and outlook in each way, in some cases of every folder")
    void answered() {
        List<String> differ = new ArrayList<>();
        List<Judged> all = inFiles();
        int compared = 0;
        for (int i = 0; i < all.size(); i += SAMPLED) {
            Case one = all.get(i).tested();
            List<String> before = answers(one.pile());
            Way way = WAYS.get(i / SAMPLED % WAYS.size());
            Pile told = way.told()
                    .apply(way.units() ? ToldDifferently.inOtherUnits(CASES.resolve(one.file())) : one.pile());
            List<String> after = answers(told);
            for (int k = 0; k < before.size(); k++) {
                compare(differ, one, way.name(), before.get(k), after.get(k));
                compared++;
            }
        }
        assertEquals("", String.join("\n", differ));
        assertTrue(compared >= 100, "only " + compared + " answers were compared");
    }

    private static void compare(List<String> differ, Case one, String way, String before, String after) {
        String told = after.replace(ToldDifferently.OTHER_NAME, one.pile().name());
        if (!before.equals(told)) {
            differ.add(one.file() + " " + way + ": " + firstDifference(before, told));
        }
    }

    private static String firstDifference(String one, String other) {
        List<String> these = one.lines().toList();
        List<String> those = other.lines().toList();
        for (int i = 0; i < Math.min(these.size(), those.size()); i++) {
            if (!these.get(i).equals(those.get(i))) {
                return "\n  " + these.get(i) + "\n  " + those.get(i);
            }
        }
        return "one is longer";
    }

    private static String checkup(Advice advice) {
        return new TextReport(WORDS, false).write(advice) + new TraceReport(WORDS).whole(advice);
    }

    /** The four answers; where there is no recipe, those that need one are empty. */
    private static List<String> answers(Pile pile) {
        Advice advice = TestPile.ADVISOR.diagnose(pile);
        return List.of(
                checkup(advice),
                new WhyReport(WORDS, false).write(advice),
                TestPile.ADVISOR
                        .audit(pile, OptionalDouble.empty())
                        .map(ToldDifferentlyTest::audited)
                        .orElse(""),
                new Forecaster(TestPile.KNOWLEDGE)
                        .ahead(pile)
                        .map(new OutlookReport(WORDS, false)::write)
                        .orElse(""));
    }

    /** The rows of the table stand in the order in which the person told the ingredients; the rest does not. */
    private static String audited(Audit audit) {
        return new AuditReport(WORDS, false).write(audit)
                + new AuditTable(WORDS).write(audit).lines().sorted().collect(Collectors.joining("\n"));
    }

    /** Without name and notes, and with the idle entry left out. */
    private static Pile plain(Pile pile) {
        return pile.with(
                "",
                pile.asOf(),
                pile.recipe(),
                pile.log().stream()
                        .map(e -> new heapwright.pile.Entry(
                                e.date(), e.seen(), e.notSeen(), e.measured(), e.done(), e.added(), ""))
                        .filter(e -> !e.seen().isEmpty()
                                || !e.notSeen().isEmpty()
                                || !e.done().isEmpty()
                                || !e.added().isEmpty()
                                || !e.measured().equals(heapwright.pile.Measured.nothing()))
                        .toList());
    }
}
