package heapwright.casebook;

import com.fasterxml.jackson.databind.JsonNode;
import heapwright.advice.winter.Factor;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Harm;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Known;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads cases: pile documents that also say what the advice on them must be. */
public final class Casebook {

    /** The folder of refused documents; they are no cases of advice. */
    private static final String INVALID = "invalid";

    /** The folder of cases that nothing may ever be fitted to, so that they can measure what was. */
    private static final String UNFITTED = "unfitted";

    private static final Set<String> FIELDS = Set.of("says", "source", "row", "known", "expect", "season");
    private static final Set<String> STAGE = Set.of("asOf", "says", "expect");
    private static final Set<String> EXPECTED = Set.of(
            "causes",
            "within",
            "likely",
            "notCauses",
            "setAside",
            "steps",
            "firstStep",
            "notSteps",
            "inOrder",
            "withheld",
            "forbidden",
            "cautions",
            "notCautions",
            "stepCautions",
            "contradictions",
            "harms",
            "audit",
            "why",
            "ready");

    private static final Set<String> WHY = Set.of("verdict", "factor", "temperatures");

    private final Knowledge knowledge;
    private final PileReader reader;

    public Casebook(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.reader = new PileReader(knowledge.vocabulary());
    }

    /**
     * Every case below a folder, in order of file name.
     *
     * @throws CaseFault when a case cannot be read
     */
    public List<Case> below(Path folder) {
        try (Stream<Path> files = Files.walk(folder, FileVisitOption.FOLLOW_LINKS)) {
            return files.filter(f -> f.toString().endsWith(".json"))
                    .filter(f -> !folder.relativize(f).startsWith(INVALID))
                    .sorted()
                    .flatMap(f -> read(folder, f).stream())
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new CaseFault(folder + ": the folder of cases cannot be read: " + e.getMessage());
        }
    }

    /** Whether a folder is, holds or lies in the one of the cases that nothing may be fitted to. */
    public static boolean keptOut(Path folder) {
        Path whole = whole(folder);
        return Files.isDirectory(whole.resolve(UNFITTED)) || within(whole);
    }

    /**
     * Those of some cases because of which something may be changed.
     *
     * @param cases cases with their files below the folder
     */
    public static List<Case> open(List<Case> cases, Path folder) {
        return within(whole(folder))
                ? List.of()
                : cases.stream().filter(c -> !within(Path.of(c.file()))).toList();
    }

    /** Where a folder truly lies, whatever link it is named by. */
    private static Path whole(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            return folder.toAbsolutePath().normalize();
        }
    }

    private static boolean within(Path folder) {
        for (Path part : folder) {
            if (part.endsWith(UNFITTED)) {
                return true;
            }
        }
        return false;
    }

    private List<Case> read(Path folder, Path file) {
        String name = folder.relativize(file).toString();
        ReadResult result;
        try {
            result = reader.read(name, Files.readAllBytes(file));
        } catch (IOException e) {
            throw new CaseFault(name + ": cannot be read: " + e.getMessage());
        }
        if (!(result instanceof ReadResult.Accepted accepted)) {
            throw new CaseFault(result.problems().stream().map(Problem::message).collect(Collectors.joining("\n")));
        }
        JsonNode told = accepted.caseObject().orElseThrow(() -> new CaseFault(name + ": says nothing under \"case\""));
        checkFields(name, told, FIELDS);
        String source = text(name, told, "source");
        if (!knowledge.sources().containsKey(source)) {
            throw new CaseFault(name + ": source \"" + source + "\" is not in sources.json");
        }
        Known known = one(name, Known.values(), text(name, told, "known"));
        String row = told.path("row").asText("");
        if (!told.has("season")) {
            String says = text(name, told, "says");
            return List.of(
                    new Case(name, says, source, row, known, accepted.value(), expectation(name, told.path("expect"))));
        }
        List<Case> stages = new ArrayList<>();
        for (JsonNode stage : told.get("season")) {
            checkFields(name, stage, STAGE);
            LocalDate day = day(name, text(name, stage, "asOf"), accepted.value());
            stages.add(new Case(
                    name + ", " + day,
                    text(name, told, "says") + " " + text(name, stage, "says"),
                    source,
                    row,
                    known,
                    new Season(accepted.value()).on(day),
                    expectation(name, stage.path("expect"))));
        }
        return stages;
    }

    private static LocalDate day(String name, String told, Pile pile) {
        try {
            LocalDate day = LocalDate.parse(told);
            if (!day.isBefore(pile.built()) && !day.isAfter(pile.asOf())) {
                return day;
            }
        } catch (DateTimeParseException e) {
            // Told below, like a day that is not of the season.
        }
        throw new CaseFault(name + ": \"" + told + "\" is no day of the season, such as " + pile.asOf());
    }

    private Expectation expectation(String name, JsonNode expect) {
        checkFields(name, expect, EXPECTED);
        List<List<Sign>> pairs = new ArrayList<>();
        expect.path("contradictions").forEach(pair -> pairs.add(all(name, Sign.values(), pair)));
        List<List<Remedy>> inOrder = new ArrayList<>();
        expect.path("inOrder").forEach(steps -> inOrder.add(all(name, Remedy.values(), steps)));
        return new Expectation(
                all(name, Cause.values(), expect.path("causes")),
                expect.path("within").asInt(1),
                all(name, Cause.values(), expect.path("likely")),
                all(name, Cause.values(), expect.path("notCauses")),
                all(name, Cause.values(), expect.path("setAside")),
                all(name, Remedy.values(), expect.path("steps")),
                expect.hasNonNull("firstStep")
                        ? Optional.of(one(
                                name, Remedy.values(), expect.get("firstStep").asText()))
                        : Optional.empty(),
                all(name, Remedy.values(), expect.path("notSteps")),
                inOrder,
                all(name, Remedy.values(), expect.path("withheld")),
                all(name, Remedy.values(), expect.path("forbidden")),
                all(name, Caution.values(), expect.path("cautions")),
                all(name, Caution.values(), expect.path("notCautions")),
                stepCautions(name, expect.path("stepCautions")),
                pairs,
                all(name, Harm.values(), expect.path("harms")),
                expect.hasNonNull("audit")
                        ? Optional.of(new AuditReader(name, knowledge).read(expect.get("audit")))
                        : Optional.empty(),
                expect.has("why") ? Optional.of(why(name, expect.get("why"))) : Optional.empty(),
                expect.has("ready")
                        ? Optional.of(new ReadyDemandReader(name, knowledge).read(expect.get("ready")))
                        : Optional.empty());
    }

    private static Map<Remedy, List<Caution>> stepCautions(String name, JsonNode told) {
        Map<Remedy, List<Caution>> demanded = new EnumMap<>(Remedy.class);
        told.properties()
                .forEach(e -> demanded.put(
                        one(name, Remedy.values(), e.getKey()), all(name, Caution.values(), e.getValue())));
        return demanded;
    }

    private static WhyDemand why(String name, JsonNode why) {
        checkFields(name, why, WHY);
        return new WhyDemand(
                maybe(name, heapwright.advice.winter.Verdict.values(), why.path("verdict")),
                maybe(name, Factor.values(), why.path("factor")),
                maybe(name, heapwright.advice.winter.Verdict.values(), why.path("temperatures")));
    }

    private static <T extends Id> Optional<T> maybe(String file, T[] values, JsonNode id) {
        return id.isMissingNode() ? Optional.empty() : Optional.of(one(file, values, id.asText()));
    }

    static void checkFields(String file, JsonNode node, Set<String> allowed) {
        if (!node.isObject() || node.isEmpty()) {
            throw new CaseFault(file + ": \"case\" and \"expect\" must be objects that say something");
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String field = names.next();
            if (!allowed.contains(field)) {
                throw new CaseFault(file + ": \"" + field + "\" is none of " + allowed);
            }
        }
    }

    private static String text(String file, JsonNode node, String field) {
        String value = node.path(field).asText("");
        if (value.isBlank()) {
            throw new CaseFault(file + ": the case does not say its \"" + field + "\"");
        }
        return value;
    }

    private static <T extends Id> List<T> all(String file, T[] values, JsonNode ids) {
        List<T> found = new ArrayList<>();
        ids.forEach(id -> found.add(one(file, values, id.asText())));
        return found;
    }

    static <T extends Id> T one(String file, T[] values, String id) {
        return Arrays.stream(values)
                .filter(v -> v.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new CaseFault(file + ": \"" + id + "\" is not an id of "
                        + values.getClass().getComponentType().getSimpleName()));
    }
}
