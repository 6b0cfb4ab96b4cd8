package heapwright.report;

import static heapwright.advice.audit.Audits.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Audits;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

@DisplayName("The audit on paper")
@Tag("thorough")
class AuditReportTest {

    private static final int LINES_A_PAGE = 66;

    private static List<Case> cases() {
        return new Casebook(Audits.advisor().knowledge()).below(Path.of("cases"));
    }

    @TestFactory
    @DisplayName("fits a page for every recipe of the demo, before the cautions in full")
    Stream<DynamicTest> onePage() {
        String inFull = Audits.words(Units.METRIC).text("audit.section.cautions");
        return cases().stream()
                .filter(c -> c.file().startsWith("demo/recipe"))
                .map(c -> DynamicTest.dynamicTest(c.file(), () -> {
                    String page = text(Audits.of(c.pile())).split(inFull)[0].stripTrailing();
                    assertTrue(
                            page.lines().count() <= LINES_A_PAGE, page.lines().count() + " lines\n" + page);
                }));
    }

    @Test
    @DisplayName("has a document that its schema allows, for every case with a recipe")
    void schema() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("docs", "schema", "audit.schema.json")), InputFormat.JSON);
        int written = 0;
        for (Case one : cases()) {
            OptionalDouble own = one.expect().audit().map(a -> a.ownRatio()).orElse(OptionalDouble.empty());
            Audit audit = Audits.advisor().audit(one.pile(), own).orElse(null);
            if (audit != null) {
                String json = new AuditJson(Audits.words(Units.METRIC), "test").write(audit);
                assertEquals(List.of(), schema.validate(json, InputFormat.JSON), one.file());
                written++;
            }
        }
        assertTrue(written > 100, "audits written: " + written);
    }

    @Test
    @DisplayName("measures powder and fertiliser with spoons and cups, never by the handful or bucket")
    void spoons() {
        Pattern wrong = Pattern.compile("(handful|bucket|spadeful)s? of (urea|blood meal|baking soda|wood ash|sugar)");
        for (Case one : cases()) {
            if (one.file().startsWith("demo/") || one.file().startsWith("practice/")) {
                Audits.advisor()
                        .audit(one.pile(), OptionalDouble.empty())
                        .map(AuditReportTest::text)
                        .map(t -> t.replaceAll("\\s+", " "))
                        .ifPresent(t -> assertFalse(wrong.matcher(t).find(), one.file() + "\n" + t));
            }
        }
    }

    @Test
    @DisplayName("says that nothing is at hand, and what one thing would do it and how much of it")
    void nothingAtHand() {
        String text =
                flat(Audits.of(some("grass-clippings", 50, "bucket") + "," + some("kitchen-scraps", 10, "bucket"), ""));
        assertTrue(text.contains("You listed nothing at hand"), text);
        assertTrue(text.matches(".*One thing more would do it: [^.]*bucket[^.]* of straw.*"), text);
    }

    @Test
    @DisplayName("opens with what is wrong, and tells the sources' spread where a limit decided")
    void headline() {
        String text = flat(Audits.of(some("leaves-old-brown", 60, "bucket"), ""));
        assertTrue(text.contains("It will go wrong as it stands"), text);
        assertTrue(text.contains("Above all: moisture: too dry to start"), text);
        assertTrue(text.contains("Sources: Slow below 35–40 % (Cornell)."), text);
    }

    @Test
    @DisplayName("explains the gap to an average, and doubts figures that imply too much carbon")
    void ownFigures() {
        Audit audit = Audits.advisor()
                .audit(
                        Audits.pile(
                                some("dust", 2, "bucket") + "," + some("grass-clippings", 1, "bucket"),
                                ",\"materials\":[{\"id\":\"dust\",\"like\":\"sawdust\",\"carbonToNitrogen\":442,"
                                        + "\"nitrogen\":{\"value\":0.24,\"unit\":\"%\"}}]"),
                        OptionalDouble.of(300))
                .orElseThrow();
        String text = flat(audit);
        assertTrue(text.contains("imply 110 % carbon, more than there can be"), text);
        assertTrue(text.contains("is the average of the materials by volume"), text);
    }

    @Test
    @DisplayName("calls a figure the person's own only where it was told")
    void usualBesideOwn() {
        String some = some("own", 2, "bucket") + "," + some("leaves-mixed", 8, "bucket");
        String nitrogen = "\"nitrogen\":{\"value\":0,\"unit\":\"%\"}";
        String ratio = "\"carbonToNitrogen\":2";
        String none = doubt(some, nitrogen);
        assertTrue(none.contains("(no nitrogen) lie far from what is usual"), none);
        String rich = doubt(some, nitrogen.replace(":0,", ":20,"));
        assertTrue(rich.matches(".*\\(nitrogen 20 %, which would mean C:N [0-9.]+\\).*"), rich);
        String alone = doubt(some, ratio);
        assertTrue(alone.matches(".*\\(C:N 2.0, which would mean nitrogen [0-9.]+ %\\).*"), alone);
        String both = doubt(some, nitrogen.replace(":0,", ":1,") + "," + ratio);
        assertTrue(both.contains("(C:N 2.0, nitrogen 1.0 %) imply only 2.0 % carbon"), both);
    }

    private String doubt(String recipe, String own) {
        return flat(Audits.of(recipe, ",\"materials\":[{\"id\":\"own\",\"like\":\"grass-clippings\"," + own + "}]"));
    }

    @Test
    @DisplayName("tells US measures to whom asks for them, in the plan too")
    void us() {
        Audit audit = Audits.of(some("leaves-old-brown", 80, "bucket"), ",\"atHand\":[" + some("urea", 5, "kg") + "]");
        String text = new AuditReport(Audits.words(Units.US), false).write(audit);
        String plan = text.substring(text.indexOf("Build it"), text.indexOf("Careful"));
        assertTrue(plan.contains("five-gallon bucket") && plan.contains(" in deep") && plan.contains("gal"), plan);
        assertFalse(Pattern.compile("\\d (cm|kg|L|g|m)\\b").matcher(plan).find(), plan);
    }

    @Test
    @DisplayName("gives first checks and doses their days")
    void days() {
        String text = flat(
                Audits.of(some("leaves-old-brown", 120, "bucket"), ",\"atHand\":[" + some("urea", 10, "kg") + "]"));
        assertTrue(text.contains("On 21 October 2026 and 25 October 2026 feel a rod"), text);
        assertTrue(text.contains("1 November 2026"), text);
    }

    @Test
    @DisplayName("has a tumbler filled and turned, not layered on a base, and asks for no forty times as much")
    void tumbler() {
        String text = flat(Audits.of(
                some("coffee-grounds", 5, "L") + "," + some("cardboard", 20, "L"),
                ",\"container\":{\"kind\":\"tumbler\"}"));
        assertTrue(text.contains("Fill in, a little of each in turn"), text);
        assertFalse(text.contains("Base") || text.contains("Footprint"), text);
        assertTrue(text.contains("So small a pile stays cool"), text);
        assertTrue(text.contains("Turn the drum over five or six times, two or three times a week."), text);
        assertFalse(text.contains("First turn about"), text);
    }

    private static String text(Audit audit) {
        return new AuditReport(Audits.words(Units.METRIC), false).write(audit);
    }

    private static String flat(Audit audit) {
        return text(audit).replaceAll("\\s+", " ");
    }
}
