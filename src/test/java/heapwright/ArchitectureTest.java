package heapwright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The program")
class ArchitectureTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(place -> !place.contains("/heapwright/rules/"))
            .importPackages("heapwright");

    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final int MOST_LINES = 300;

    /** Fields that change, with the reason. */
    private static final Map<String, String> CHANGING = Map.of(
            "heapwright.advice.engine.Recorder.because", "the ground of the rule that is firing, within one session",
            "heapwright.process.mend.WholeBuckets.best", "the best so far, within one search",
            "heapwright.process.mend.WholeBuckets.leastEffort", "the effort of the best so far");

    @Test
    @DisplayName("reads the pile document without knowing anything else")
    void pileKnowsNothing() {
        only("pile", "com.fasterxml.jackson..").check(CLASSES);
    }

    @Test
    @DisplayName("reads the tables with the pile document beside them")
    void knowledgeKnowsPile() {
        only("knowledge", "heapwright.pile..", "com.fasterxml.jackson..").check(CLASSES);
    }

    @Test
    @DisplayName("understands words with the tables and the units beside it")
    void phraseKnowsTables() {
        only("phrase", "heapwright.pile..", "heapwright.knowledge..").check(CLASSES);
    }

    @Test
    @DisplayName("reads a logger's file with the units beside it")
    void loggerKnowsUnits() {
        only("logger", "heapwright.pile..").check(CLASSES);
    }

    @Test
    @DisplayName("calculates without rules and without JSON")
    void processIsPure() {
        only("process", "heapwright.pile..", "heapwright.knowledge..", "org.hipparchus..")
                .check(CLASSES);
    }

    @Test
    @DisplayName("advises without knowing a door, a screen or a disk")
    void adviceKnowsNoDoor() {
        only(
                        "advice",
                        "heapwright.pile..",
                        "heapwright.knowledge..",
                        "heapwright.process..",
                        "org.kie..",
                        "org.drools..")
                .check(CLASSES);
    }

    @Test
    @DisplayName("knows the rule engine in one package only")
    void oneRoomForDrools() {
        noClasses()
                .that()
                .resideOutsideOfPackage("heapwright.advice.engine..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.kie..", "org.drools..")
                .check(CLASSES);
    }

    @Test
    @DisplayName("gives the rules facts that know the names of the knowledge and the actions only")
    void factsArePlain() {
        classes()
                .that()
                .resideInAPackage("heapwright.advice.fact..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage("java..", "heapwright.advice.fact", "heapwright.knowledge")
                        .or(JavaClass.Predicates.type(heapwright.pile.Action.class)))
                .check(CLASSES);
    }

    @Test
    @DisplayName("keeps a journal of piles and knows only piles")
    void journalKnowsPile() {
        only("journal", "heapwright.pile..", "com.fasterxml.jackson..", "org.slf4j..")
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    @DisplayName("reports what was worked out and works nothing out itself")
    void reportShowsData() {
        only(
                        "report",
                        "heapwright.advice..",
                        "heapwright.pile..",
                        "heapwright.knowledge..",
                        "heapwright.process..",
                        "com.fasterxml.jackson..")
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAPackage("heapwright.report..")
                .should()
                .dependOnClassesThat()
                .haveNameMatching("heapwright\\.process\\..*(Calculator|Mender|Equations|Simulator)")
                .check(CLASSES);
    }

    @Test
    @DisplayName("judges cases by the advice and the figures of the audit")
    void casebookKnowsAdvice() {
        only(
                        "casebook",
                        "heapwright.advice..",
                        "heapwright.process.mixture..",
                        "heapwright.process.mend..",
                        "heapwright.pile..",
                        "heapwright.knowledge..",
                        "com.fasterxml.jackson..",
                        "org.hipparchus..")
                .check(CLASSES);
    }

    @Test
    @DisplayName("helps those who write knowledge by the tables, the rules and the cases")
    void authorKnowsCases() {
        only("author", "heapwright.casebook..", "heapwright.advice..", "heapwright.pile..", "heapwright.knowledge..")
                .check(CLASSES);
    }

    @Test
    @DisplayName("is entered by doors on which nothing inside depends")
    void nothingKnowsDoors() {
        noClasses()
                .that()
                .resideOutsideOfPackages("heapwright.cli..", "heapwright.web..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("heapwright.cli..", "heapwright.web..")
                .check(CLASSES);
    }

    @Test
    @DisplayName("has no circles between its rooms")
    void noCircles() {
        slices().matching("heapwright.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    @DisplayName("has no circles between its packages")
    void noCirclesInside() {
        slices().matching("heapwright.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    @DisplayName("changes no field after it was set, but for the options of a command line")
    void fieldsAreFinal() {
        fields().that(describe(
                        "are not options of a command or known to change",
                        f -> !f.getOwner().getPackageName().equals("heapwright.cli")
                                && !heldByOneRun(f)
                                && !CHANGING.containsKey(f.getFullName())))
                .should()
                .beFinal()
                .check(CLASSES);
        Set<String> known = new TreeSet<>(CHANGING.keySet());
        CLASSES.forEach(c -> c.getFields().stream()
                .filter(f -> !f.getModifiers().contains(JavaModifier.FINAL))
                .forEach(f -> known.remove(f.getFullName())));
        assertEquals(Set.of(), known, "listed as changing, but final or gone");
    }

    /** The shells of a pile change with every step of one simulation; nobody outside its package sees them. */
    private static boolean heldByOneRun(JavaField field) {
        return field.getOwner().getPackageName().equals("heapwright.process.heat")
                && !field.getOwner().getModifiers().contains(JavaModifier.PUBLIC);
    }

    @Test
    @DisplayName("keeps no state in static fields")
    void noStaticState() {
        noFields()
                .that()
                .areStatic()
                .and(describe("are written by people", f -> !f.getName().contains("$")))
                .should()
                .notBeFinal()
                .orShould()
                .haveRawType(describe("something that changes", ArchitectureTest::changes))
                .check(CLASSES);
    }

    private static boolean changes(JavaClass type) {
        return Set.of("java.util.concurrent.atomic", "java.util.concurrent").contains(type.getPackageName())
                || Set.of("ArrayList", "HashMap", "HashSet", "TreeMap", "EnumMap", "StringBuilder", "Random")
                        .contains(type.getSimpleName());
    }

    @Test
    @DisplayName("shows no stack trace and writes only where it was told to")
    void noStackTraces() {
        noClasses()
                .should()
                .callMethodWhere(target("prints a stack trace", t -> t.getName().equals("printStackTrace")))
                .check(CLASSES);
        noClasses()
                .that()
                .resideOutsideOfPackages("heapwright.cli..", "heapwright.web..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(CLASSES);
    }

    @Test
    @DisplayName("ends the machine where a command ends, or where memory has run out and nothing else can")
    void exits() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("heapwright.cli.Main")
                .and()
                .doNotHaveFullyQualifiedName("heapwright.cli.OutOfMemoryExit")
                .should()
                .callMethodWhere(target(
                        "ends the machine",
                        t -> t.getFullName().matches("java.lang.(System.exit|Runtime.(exit|halt)).*")))
                .check(CLASSES);
    }

    @Test
    @DisplayName("reaches for no network but through its page")
    void noNetwork() {
        noClasses()
                .that()
                .resideOutsideOfPackage("heapwright.web..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net..", "javax.net..", "com.sun.net..")
                .check(CLASSES);
    }

    @Test
    @DisplayName("reads no clock inside: the day is an input")
    void noClock() {
        noClasses()
                .that()
                .resideOutsideOfPackages("heapwright.cli..", "heapwright.web..", "heapwright.journal..")
                .should()
                .callMethodWhere(target(
                        "reads a clock",
                        t -> t.getFullName().matches("java\\.time\\..*\\.(now|system\\w*)\\(.*")
                                || t.getFullName().matches("java\\.lang\\.System\\.(currentTimeMillis|nanoTime)\\(.*")))
                .orShould()
                .callConstructor(java.util.Date.class)
                .check(CLASSES);
    }

    @Test
    @DisplayName("throws no dice: the same pile gets the same advice")
    void noChance() {
        noClasses()
                .should()
                .callConstructor(Random.class)
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(java.util.UUID.class, "randomUUID")
                .check(CLASSES);
    }

    @Test
    @DisplayName("stands in sources that can be read at one sitting")
    void shortSources() throws IOException {
        List<String> tooLong = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                String name = SOURCES.relativize(file).toString();
                int lines = Files.readAllLines(file).size();
                if (lines > MOST_LINES) {
                    tooLong.add(name + " has " + lines);
                }
            }
        }
        assertEquals(List.of(), tooLong);
    }

    @Test
    @DisplayName("is there to be looked at")
    void somethingWasRead() {
        assertTrue(CLASSES.contain(heapwright.advice.Advisor.class));
    }

    /** Classes of a room depend on Java, their own room and these. */
    private static com.tngtech.archunit.lang.syntax.elements.ClassesShouldConjunction only(
            String room, String... others) {
        String own = "heapwright." + room + "..";
        String[] all =
                Stream.concat(Stream.of("java..", own), Arrays.stream(others)).toArray(String[]::new);
        return classes().that().resideInAPackage(own).should().onlyDependOnClassesThat(resideInAnyPackage(all));
    }

    private static DescribedPredicate<JavaCall<?>> target(
            String what, java.util.function.Predicate<CodeUnitCallTarget> matches) {
        return describe(what, call -> matches.test(call.getTarget()));
    }
}
