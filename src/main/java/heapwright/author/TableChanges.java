package heapwright.author;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.EvidenceWords;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.LimitInfo;
import heapwright.knowledge.Strength;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;

/** Tells which rows of two knowledge bases differ. */
public final class TableChanges {

    private final Knowledge before;
    private final Knowledge after;
    private final List<String> lines = new ArrayList<>();

    public TableChanges(Knowledge before, Knowledge after) {
        this.before = before;
        this.after = after;
    }

    /** Each row that is new, gone or other, a line each. */
    public List<String> lines() {
        compare("evidence", rows(before), rows(after), this::row);
        compare("limit", before.limits(), after.limits(), TableChanges::limit);
        compare(
                "cause",
                before.causes(),
                after.causes(),
                (b, a) -> b.baseRate() == a.baseRate()
                        ? "its words change"
                        : "baseRate " + b.baseRate() + ", now " + a.baseRate());
        compare("material", before.materials(), after.materials(), TableChanges::other);
        compare(
                "measure",
                before.measures(),
                after.measures(),
                (b, a) -> b.litres() == a.litres() ? "changes" : b.litres() + " L, now " + a.litres() + " L");
        compare("sign", before.signs(), after.signs(), TableChanges::other);
        compare("danger", before.dangers(), after.dangers(), TableChanges::other);
        compare("remedy", before.remedies(), after.remedies(), TableChanges::other);
        compare("caution", before.cautions(), after.cautions(), TableChanges::other);
        compare("source", before.sources(), after.sources(), TableChanges::other);
        compare("home remedy", before.usualDoses(), after.usualDoses(), TableChanges::other);
        compare("class that stays out", before.keepOuts(), after.keepOuts(), TableChanges::other);
        compare("heat rule", before.sanitation().rules(), after.sanitation().rules(), TableChanges::other);
        compare(
                "heat equation",
                before.sanitation().equations(),
                after.sanitation().equations(),
                TableChanges::other);
        compare("survivor", before.sanitation().survivors(), after.sanitation().survivors(), TableChanges::other);
        compare("home test", before.endUse().tests(), after.endUse().tests(), TableChanges::other);
        compare("use", before.endUse().uses(), after.endUse().uses(), TableChanges::other);
        compare("waiting time", before.endUse().waits(), after.endUse().waits(), TableChanges::other);
        compare("reason to wait", before.endUse().reasons(), after.endUse().reasons(), TableChanges::other);
        compare("job of the season", before.season(), after.season(), TableChanges::other);
        for (Strength strength : Strength.values()) {
            weight(strength.id(), before.weights().of(strength), after.weights().of(strength));
        }
        weight("again", before.weights().again(), after.weights().again());
        return List.copyOf(lines);
    }

    private <K, V> void compare(String kind, Map<K, V> one, Map<K, V> other, BiFunction<V, V, String> how) {
        Set<K> keys = new LinkedHashSet<>(one.keySet());
        keys.addAll(other.keySet());
        for (K key : keys) {
            V was = one.get(key);
            V is = other.get(key);
            if (was == null) {
                lines.add(kind + " " + id(key) + ": is new");
            } else if (is == null) {
                lines.add(kind + " " + id(key) + ": is gone");
            } else if (!was.equals(is)) {
                lines.add(kind + " " + id(key) + ": " + how.apply(was, is));
            }
        }
    }

    private void weight(String name, double was, double is) {
        if (was != is) {
            lines.add("weight of " + name + ": " + was + ", now " + is);
        }
    }

    private static Map<String, Evidence> rows(Knowledge knowledge) {
        Map<String, Evidence> rows = new LinkedHashMap<>();
        knowledge.evidence().forEach(row -> rows.put(row.id(), row));
        return rows;
    }

    private String row(Evidence was, Evidence is) {
        List<String> parts = new ArrayList<>();
        if (was.speaks() != is.speaks()) {
            parts.add("speaks " + was.speaks().id() + ", now " + is.speaks().id());
        }
        if (was.strength() != is.strength()) {
            parts.add(
                    "strength " + was.strength().id() + ", now " + is.strength().id());
        }
        if (was.witness() != is.witness()) {
            parts.add("witness " + was.witness().id() + ", now " + is.witness().id());
        }
        if (!was.when().equals(is.when())) {
            parts.add("when " + new EvidenceWords(before).when(was.when()) + ", now "
                    + new EvidenceWords(after).when(is.when()));
        }
        return parts.isEmpty() ? "its reason or source changes" : String.join("; ", parts);
    }

    private static String limit(LimitInfo was, LimitInfo is) {
        return was.value() == is.value()
                ? "its span, source or words change"
                : was.value() + " " + was.unit() + ", now " + is.value() + " " + is.unit();
    }

    private static String other(Object was, Object is) {
        return "changes";
    }

    private static String id(Object key) {
        return key instanceof Id id ? id.id() : key.toString();
    }
}
