package heapwright.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What a place adds to what is shipped: materials, measures, limits, sources, rows of evidence and notes on its own rules,
 * in a folder laid out like {@code rules/}. Data alone; a row whose id is taken must say that it stands in its place.
 */
public final class LocalKnowledge {

    /** The tables that may be added to, beside the evidence. */
    public static final List<String> TABLES =
            List.of("materials.json", "measures.json", "limits.json", "sources.json", LocalNote.TABLE);

    /** What the ids of rows of evidence may begin with; those of a place never meet those of a later version. */
    private static final String IDS = EvidenceCheck.SHIPPED + "|LOCAL";

    private static final String REPLACES = "replaces";

    private final Knowledge shipped;
    private final KnowledgeFolder folder;
    private final TableShelf shelf;
    private final Tables tables = new Tables();
    private final Set<String> replacing = new HashSet<>();
    private final List<String> faults = new ArrayList<>();

    private LocalKnowledge(Path folder, Knowledge shipped) {
        this.shipped = shipped;
        this.folder = new KnowledgeFolder(folder);
        this.shelf = new TableShelf(this.folder, true);
    }

    /**
     * Looks through a folder and lays what it has over what is shipped.
     *
     * @param folder a folder that is there
     * @param shipped what it is added to
     */
    public static Inspection inspect(Path folder, Knowledge shipped) {
        return new LocalKnowledge(folder, shipped).all();
    }

    private Inspection all() {
        faults.addAll(folder.foreign(TABLES));
        Map<String, Material> materials = table("materials.json", "materials", tables::material, Material::id);
        Map<String, MeasureInfo> measures = table("measures.json", "measures", tables::measure, MeasureInfo::id);
        Map<Limit, LimitInfo> limits = table("limits.json", "limits", tables::limit, LimitInfo::id);
        Map<String, SourceInfo> sources = table("sources.json", "sources", tables::source, SourceInfo::key);
        Map<String, LocalNote> notes = table(LocalNote.TABLE, LocalNote.LIST, LocalNote::of, LocalNote::id);
        Map<String, Evidence> rows = new LinkedHashMap<>();
        shipped.evidence().forEach(row -> rows.put(row.id(), row));
        for (Cause cause : Cause.values()) {
            String file = "evidence/" + cause.id() + ".json";
            Map<String, Evidence> told = table(file, cause.id(), row -> tables.evidence(cause, row), Evidence::id);
            told.values().forEach(row -> mayStand(file, row, rows.get(row.id())));
            rows.putAll(over(file, rows, told));
        }
        materials.values().forEach(m -> mayStand(m, shipped.materials().get(m.id())));
        limits.values().forEach(l -> mayStand(l, shipped.limits().get(l.id())));
        sources.keySet().stream()
                .filter(key -> replacing.contains(TableShelf.place("sources.json", key)))
                .forEach(key -> fault(
                        "sources.json",
                        key,
                        "a shipped source says the same in every place; give yours" + " another key"));
        Knowledge knowledge = shipped.with(new Knowledge.Added(
                noted(notes),
                over("limits.json", shipped.limits(), limits),
                over("materials.json", shipped.materials(), materials),
                over("measures.json", shipped.measures(), measures),
                over("sources.json", shipped.sources(), sources),
                List.copyOf(rows.values())));
        References references = new References(knowledge, faults);
        notes.values().forEach(n -> references.sources(TableShelf.place(LocalNote.TABLE, n.id()), n.sources()));
        faults.addAll(new KnowledgeCheck(knowledge, IDS).faults());
        List<String> found = new ArrayList<>(shelf.faults());
        faults.stream().flatMap(f -> KnowledgeReader.placed(f, shelf).stream()).forEach(found::add);
        List<String> told = found.stream().distinct().toList();
        return new Inspection(told, shelf.counts(), told.isEmpty() ? Optional.of(knowledge) : Optional.empty());
    }

    private <K, V> Map<K, V> table(String file, String name, Function<Row, V> maker, Function<V, K> key) {
        return shelf.table(
                file,
                name,
                row -> {
                    if (row.flagIfAny(REPLACES).orElse(false)) {
                        replacing.add(TableShelf.place(file, row.id()));
                    }
                    return maker.apply(row);
                },
                key,
                Map.of());
    }

    /** The shipped rows with the local ones in their place or behind them. */
    private <K, V> Map<K, V> over(String file, Map<K, V> there, Map<K, V> local) {
        Map<K, V> all = new LinkedHashMap<>(there);
        local.forEach((key, row) -> {
            String id = KnowledgeReader.id(key);
            boolean replaces = replacing.contains(TableShelf.place(file, id));
            if (there.containsKey(key) && !replaces) {
                fault(
                        file,
                        id,
                        "a shipped row has this id. Allowed: another id, or \"replaces\": true where yours is to"
                                + " stand in its place");
            } else if (replaces && !there.containsKey(key)) {
                fault(file, id, "says \"replaces\": true, and no shipped row has this id. See: heapwright explain ID");
            }
            all.put(key, row);
        });
        return all;
    }

    /** What must stay out stays out in every place. */
    private void mayStand(Material local, Material other) {
        if (other != null && other.keepOut().isPresent()) {
            fault(
                    "materials.json",
                    local.id(),
                    "it stays out of a home pile in every place, so no row may stand in its"
                            + " place. Allowed: another id and other names");
        }
    }

    /** A limit moves only as far as its sources differ. */
    private void mayStand(LimitInfo local, LimitInfo other) {
        if (local.lowest() < other.lowest()
                || local.highest() > other.highest()
                || !local.unit().equals(other.unit())) {
            fault(
                    "limits.json",
                    local.id().id(),
                    "found " + local.lowest() + " to " + local.highest() + " "
                            + local.unit() + ". Allowed: within " + other.lowest() + " to " + other.highest() + " "
                            + other.unit() + ", which is as far as its sources differ");
        }
    }

    /** Against a danger, and against what must not be used, nothing local speaks. */
    private void mayStand(String file, Evidence local, Evidence other) {
        if (other != null && other.cause() != local.cause()) {
            fault(
                    file,
                    local.id(),
                    "it is the id of a row on " + other.cause().id() + ". Allowed: one on the same cause");
        }
        CauseInfo.Kind kind = shipped.causes().get(local.cause()).kind();
        boolean grave = kind == CauseInfo.Kind.DANGER || kind == CauseInfo.Kind.MUST_NOT_BE_USED;
        if (grave && (other != null || local.speaks() == Evidence.Speaks.AGAINST)) {
            fault(
                    file,
                    local.id(),
                    "it is on a danger or on what must not be used. Allowed: more rows that speak for it,"
                            + " none against it and none in the place of a shipped one");
        }
    }

    private Map<Caution, CautionInfo> noted(Map<String, LocalNote> notes) {
        Map<Caution, CautionInfo> all = new LinkedHashMap<>(shipped.cautions());
        Map<Caution, String> before = new HashMap<>();
        notes.values()
                .forEach(note -> note.cautions().forEach(caution -> {
                    String other = before.put(caution, note.id());
                    if (other != null) {
                        fault(
                                LocalNote.TABLE,
                                note.id(),
                                "the note " + other + " is on " + caution.id() + " too. Allowed: one"
                                        + " note a caution");
                    }
                    all.computeIfPresent(caution, (id, info) -> info.noted(note.text()));
                }));
        return all;
    }

    private void fault(String file, String id, String what) {
        faults.add(TableShelf.place(file, id) + ": " + what + ".");
    }
}
