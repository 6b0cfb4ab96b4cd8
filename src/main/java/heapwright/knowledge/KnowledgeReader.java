package heapwright.knowledge;

import heapwright.pile.Token;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the tables and checks that they hang together. */
public final class KnowledgeReader {

    /**
     * Opens a table by its file name, for instance {@code signs.json} or {@code evidence/too-wet.json}; null when there is
     * none.
     */
    public interface Shelf {
        InputStream open(String name) throws IOException;
    }

    private static final String EVIDENCE = "evidence/";
    private static final String WEIGHTS = "the weights";

    /** What a fault of tables that do not hang together begins with: the file, the row and a colon. */
    private static final Pattern ROW = Pattern.compile("(\\S+\\.json) ([^ :]+): (.*)", Pattern.DOTALL);

    private final TableShelf tables;
    private final Optional<Knowledge> standIn;

    public KnowledgeReader(Shelf shelf) {
        this(new TableShelf(shelf, false), Optional.empty());
    }

    private KnowledgeReader(TableShelf tables, Optional<Knowledge> standIn) {
        this.tables = tables;
        this.standIn = standIn;
    }

    /**
     * Reads the tables packed with the program. They cannot change any more, so that they hang together is looked at by
     * the tests of the build and not at each start, of which it is a twentieth.
     */
    public static Knowledge packed() {
        return new KnowledgeReader(KnowledgeReader::packed).sound();
    }

    /** Opens a table packed with the program. */
    public static InputStream packed(String name) {
        return KnowledgeReader.class.getResourceAsStream("/heapwright/tables/" + name);
    }

    /** The files of all tables. */
    public static List<String> files() {
        return Stream.concat(
                        Stream.of(
                                        "signs",
                                        "causes",
                                        "dangers",
                                        "remedies",
                                        "cautions",
                                        "limits",
                                        "materials",
                                        "measures",
                                        "sources",
                                        "usual-doses",
                                        "keep-out-classes",
                                        "heat-rules",
                                        "heat-equations",
                                        "survivors",
                                        "home-tests",
                                        "uses",
                                        "waits",
                                        "ripeness",
                                        "season",
                                        "weights")
                                .map(name -> name + ".json"),
                        Arrays.stream(Cause.values()).map(cause -> EVIDENCE + cause.id() + ".json"))
                .toList();
    }

    /**
     * Reads all tables.
     *
     * @throws KnowledgeFault when a table is missing, cannot be read or does not hang together with the others
     */
    public Knowledge read() {
        Knowledge knowledge = sound();
        List<String> apart = new KnowledgeCheck(knowledge).faults();
        if (!apart.isEmpty()) {
            throw new KnowledgeFault(apart);
        }
        return knowledge;
    }

    /**
     * Looks through tables and finds every fault at once: those of a row and those between tables.
     *
     * @param shelf the tables; of one that is not there the other one is taken
     * @param others the tables that stand in, whole and sound
     */
    public static Inspection inspect(Shelf shelf, Knowledge others) {
        TableShelf tables = new TableShelf(shelf, true);
        Knowledge knowledge = new KnowledgeReader(tables, Optional.of(others)).all();
        List<String> faults = new ArrayList<>(tables.faults());
        new KnowledgeCheck(knowledge)
                .faults().stream()
                        .flatMap(fault -> placed(fault, tables).stream())
                        .forEach(faults::add);
        return new Inspection(faults, tables.counts(), faults.isEmpty() ? Optional.of(knowledge) : Optional.empty());
    }

    /** A fault between tables with its line; nothing where it only follows from another fault. */
    static Optional<String> placed(String fault, TableShelf tables) {
        boolean follows = tables.broken().stream()
                .map(place -> place.substring(place.indexOf(' ') + 1))
                .anyMatch(id -> !id.isEmpty() && (fault.contains("\"" + id + "\"") || fault.contains(" " + id + ":")));
        if (follows) {
            return Optional.empty();
        }
        Matcher row = ROW.matcher(fault);
        if (row.matches()) {
            Integer line = tables.lines().get(TableShelf.place(row.group(1), row.group(2)));
            if (line != null) {
                return Optional.of(row.group(1) + ", line " + line + ", " + row.group(2) + ": " + row.group(3));
            }
        }
        return Optional.of(fault);
    }

    static String id(Object key) {
        if (key instanceof Id id) {
            return id.id();
        }
        return key instanceof Token token ? token.token() : key.toString();
    }

    /** The tables, each of them sound in itself. */
    private Knowledge sound() {
        Knowledge knowledge = all();
        if (!tables.faults().isEmpty()) {
            throw new KnowledgeFault(tables.faults());
        }
        return knowledge;
    }

    /** The tables as far as they can be read; where there are faults it is no knowledge to hand out. */
    private Knowledge all() {
        Tables rows = new Tables();
        Optional<Weights> weights =
                table("weights", rows::weights, w -> WEIGHTS, k -> Map.of(WEIGHTS, k.weights())).values().stream()
                        .findFirst();
        return new Knowledge(
                table("signs", rows::sign, SignInfo::id, Knowledge::signs),
                table("causes", rows::cause, CauseInfo::id, Knowledge::causes),
                table("dangers", rows::danger, DangerInfo::id, Knowledge::dangers),
                table("remedies", rows::remedy, RemedyInfo::id, Knowledge::remedies),
                table("cautions", rows::caution, CautionInfo::id, Knowledge::cautions),
                table("limits", rows::limit, LimitInfo::id, Knowledge::limits),
                table("materials", rows::material, Material::id, Knowledge::materials),
                table("measures", rows::measure, MeasureInfo::id, Knowledge::measures),
                table("sources", rows::source, SourceInfo::key, Knowledge::sources),
                table("usual-doses", rows::usualDose, UsualDoseInfo::id, Knowledge::usualDoses),
                table("keep-out-classes", rows::keepOut, KeepOutInfo::id, Knowledge::keepOuts),
                sanitation(),
                endUse(),
                table("season", new SeasonTable()::job, SeasonJob::id, Knowledge::season),
                evidence(rows),
                weights.orElse(null));
    }

    private Sanitation sanitation() {
        SanitationTables heat = new SanitationTables();
        return new Sanitation(
                table(
                        "heat-rules",
                        heat::rule,
                        HeatRule::id,
                        k -> k.sanitation().rules()),
                table(
                        "heat-equations",
                        heat::equation,
                        HeatEquation::id,
                        k -> k.sanitation().equations()),
                table(
                        "survivors",
                        heat::survivor,
                        Survivor::id,
                        k -> k.sanitation().survivors()));
    }

    private EndUse endUse() {
        EndUseTables use = new EndUseTables();
        return new EndUse(
                table("home-tests", use::test, HomeTestInfo::id, k -> k.endUse().tests()),
                table("uses", use::use, UseInfo::id, k -> k.endUse().uses()),
                table("waits", use::wait, WaitInfo::id, k -> k.endUse().waits()),
                table(
                        "ripeness",
                        use::reason,
                        RipeReasonInfo::id,
                        k -> k.endUse().reasons()));
    }

    /** A table a cause, under the cause's name. */
    private List<Evidence> evidence(Tables rows) {
        List<Evidence> all = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            Map<String, Evidence> others = new LinkedHashMap<>();
            standIn.ifPresent(k -> k.evidence().stream()
                    .filter(row -> row.cause() == cause)
                    .forEach(row -> others.put(row.id(), row)));
            all.addAll(tables.table(
                            EVIDENCE + cause.id() + ".json",
                            cause.id(),
                            r -> rows.evidence(cause, r),
                            Evidence::id,
                            others)
                    .values());
        }
        return all;
    }

    private <K, V> Map<K, V> table(
            String name, Function<Row, V> maker, Function<V, K> key, Function<Knowledge, Map<K, V>> other) {
        return tables.table(name + ".json", name, maker, key, standIn.map(other).orElse(Map.of()));
    }
}
