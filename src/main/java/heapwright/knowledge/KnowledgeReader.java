package heapwright.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

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

    private final Shelf shelf;
    private final TableReader reader = new TableReader();
    private final List<String> faults = new ArrayList<>();

    public KnowledgeReader(Shelf shelf) {
        this.shelf = shelf;
    }

    /**
     * Reads the tables packed with the program. They cannot change any more, so that they hang together is looked at by
     * the tests of the build and not at each start, of which it is a twentieth.
     */
    public static Knowledge packed() {
        return new KnowledgeReader(name -> KnowledgeReader.class.getResourceAsStream("/heapwright/tables/" + name))
                .sound();
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

    /** The tables, each of them sound in itself. */
    private Knowledge sound() {
        Tables tables = new Tables();
        Optional<Weights> weights = table("weights", tables::weights, w -> WEIGHTS).values().stream()
                .findFirst();
        Knowledge knowledge = new Knowledge(
                table("signs", tables::sign, SignInfo::id),
                table("causes", tables::cause, CauseInfo::id),
                table("dangers", tables::danger, DangerInfo::id),
                table("remedies", tables::remedy, RemedyInfo::id),
                table("cautions", tables::caution, CautionInfo::id),
                table("limits", tables::limit, LimitInfo::id),
                table("materials", tables::material, Material::id),
                table("measures", tables::measure, MeasureInfo::id),
                table("sources", tables::source, SourceInfo::key),
                table("usual-doses", tables::usualDose, UsualDoseInfo::id),
                table("keep-out-classes", tables::keepOut, KeepOutInfo::id),
                sanitation(),
                endUse(),
                evidence(tables),
                // Without weights there are faults, and no knowledge is handed out.
                weights.orElse(null));
        if (!faults.isEmpty()) {
            throw new KnowledgeFault(faults);
        }
        return knowledge;
    }

    private Sanitation sanitation() {
        SanitationTables heat = new SanitationTables();
        return new Sanitation(
                table("heat-rules", heat::rule, HeatRule::id),
                table("heat-equations", heat::equation, HeatEquation::id),
                table("survivors", heat::survivor, Survivor::id));
    }

    private EndUse endUse() {
        EndUseTables use = new EndUseTables();
        return new EndUse(
                table("home-tests", use::test, HomeTestInfo::id),
                table("uses", use::use, UseInfo::id),
                table("waits", use::wait, WaitInfo::id),
                table("ripeness", use::reason, RipeReasonInfo::id));
    }

    /** A table a cause, under the cause's name. */
    private List<Evidence> evidence(Tables tables) {
        List<Evidence> all = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            all.addAll(table(EVIDENCE + cause.id() + ".json", cause.id(), r -> tables.evidence(cause, r), Evidence::id)
                    .values());
        }
        return all;
    }

    private <K, V> Map<K, V> table(String name, Function<Row, V> maker, Function<V, K> key) {
        return table(name + ".json", name, maker, key);
    }

    private <K, V> Map<K, V> table(String file, String name, Function<Row, V> maker, Function<V, K> key) {
        Map<K, V> values = new LinkedHashMap<>();
        try (InputStream in = shelf.open(file)) {
            if (in == null) {
                faults.add(file + ": the table is missing");
                return values;
            }
            List<Row> rows = reader.rows(file, name, in);
            if (rows.isEmpty()) {
                faults.add(file + ": no rows under \"" + name + "\"");
            }
            rows.forEach(row -> {
                try {
                    V value = row.as(maker);
                    if (values.put(key.apply(value), value) != null) {
                        faults.add(file + ": " + key.apply(value) + " stands twice");
                    }
                } catch (RowFault e) {
                    faults.add(e.getMessage());
                }
            });
        } catch (RowFault e) {
            faults.add(e.getMessage());
        } catch (IOException e) {
            faults.add(file + ": cannot be read: " + e.getMessage());
        }
        return values;
    }
}
