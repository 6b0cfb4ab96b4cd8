package heapwright.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Checks that the tables are whole and speak of the same things. */
final class KnowledgeCheck {

    private final Knowledge knowledge;
    private final String ids;
    private final List<String> faults = new ArrayList<>();
    private final References references;

    KnowledgeCheck(Knowledge knowledge) {
        this(knowledge, EvidenceCheck.SHIPPED);
    }

    /** @param ids what the ids of rows of evidence begin with */
    KnowledgeCheck(Knowledge knowledge, String ids) {
        this.knowledge = knowledge;
        this.ids = ids;
        this.references = new References(knowledge, faults);
    }

    List<String> faults() {
        whole("signs.json", Sign.values(), knowledge.signs());
        whole("causes.json", Cause.values(), knowledge.causes());
        whole("dangers.json", Danger.values(), knowledge.dangers());
        whole("remedies.json", Remedy.values(), knowledge.remedies());
        whole("cautions.json", Caution.values(), knowledge.cautions());
        whole("limits.json", Limit.values(), knowledge.limits());
        whole("usual-doses.json", UsualDose.values(), knowledge.usualDoses());
        whole("keep-out-classes.json", KeepOutClass.values(), knowledge.keepOuts());
        knowledge.keepOuts().values().forEach(this::keepOut);
        knowledge.usualDoses().values().forEach(u -> sources("usual-doses.json " + u.id().id(), u.sources()));
        knowledge.season().values().forEach(j -> sources("season.json " + j.id(), j.sources()));
        knowledge.causes().values().forEach(c -> {
            sources("causes.json " + c.id().id(), c.sources());
            if (!(c.baseRate() > 0 && c.baseRate() < 1)) {
                faults.add("causes.json " + c.id().id() + ": baseRate " + c.baseRate() + " is not between 0 and 1");
            }
        });
        knowledge.cautions().values().forEach(c -> sources("cautions.json " + c.id().id(), c.sources()));
        knowledge.measures().values().forEach(this::measure);
        measureNames();
        knowledge.dangers().values().forEach(this::danger);
        knowledge.remedies().values().forEach(this::remedy);
        knowledge.limits().values().forEach(this::limit);
        knowledge
                .materials()
                .values()
                .forEach(m -> m.figures().forEach(f -> sources("materials.json " + m.id(), List.of(f.source()))));
        faults.addAll(new MaterialCheck(knowledge).faults());
        faults.addAll(knowledge.sanitation().faults(knowledge));
        faults.addAll(knowledge.endUse().faults(knowledge));
        faults.addAll(new EvidenceCheck(knowledge, ids).faults());
        return List.copyOf(faults);
    }

    private void whole(String table, Id[] ids, Map<?, ?> rows) {
        for (Id id : ids) {
            if (!rows.containsKey(id)) {
                faults.add(table + ": no row for " + id.id());
            }
        }
    }

    private void sources(String where, Collection<String> keys) {
        references.sources(where, keys);
    }

    private void measure(MeasureInfo measure) {
        String where = "measures.json " + measure.id();
        sources(where, measure.sources());
        if (!(measure.litres() > 0)) {
            faults.add(where + ": holds " + measure.litres() + " litres. Allowed: more than 0. Example: 10.");
        }
        measure.kilograms().ifPresent(kg -> {
            if (!(kg > 0)) {
                faults.add(where + ": weighs " + kg + " kg. Allowed: more than 0. Example: 12.");
            }
        });
    }

    private void measureNames() {
        Map<String, String> owner = new HashMap<>();
        for (MeasureInfo m : knowledge.measures().values()) {
            List<String> names = new ArrayList<>(m.aliases());
            names.addAll(List.of(m.id(), m.name().one(), m.name().many()));
            for (String name : names) {
                String before = owner.put(name, m.id());
                if (before != null && !before.equals(m.id())) {
                    faults.add("measures.json " + m.id() + ": the name \"" + name + "\" is that of " + before + " too");
                }
            }
        }
    }

    private void danger(DangerInfo danger) {
        String where = "dangers.json " + danger.id().id();
        sources(where, danger.sources());
        if (knowledge.causes().get(danger.cause()).kind() != CauseInfo.Kind.DANGER) {
            faults.add(where + ": " + danger.cause().id() + " is not of kind danger");
        }
        if (danger.steps().isEmpty()) {
            faults.add(where + ": has no steps");
        }
        danger.steps().stream()
                .filter(r ->
                        danger.closes() && knowledge.remedies().get(r).does().disturbs())
                .forEach(r -> faults.add(
                        where + ": closes the pile, yet its step " + r.id() + " opens, turns, wets or feeds it"));
        danger.asks().stream()
                .filter(s -> knowledge.signs().get(s).where() != SignInfo.Where.OUTSIDE)
                .forEach(s -> faults.add(where + ": asks " + s.id() + ", which cannot be answered from outside"));
    }

    private void remedy(RemedyInfo remedy) {
        String where = "remedies.json " + remedy.id().id();
        sources(where, remedy.sources());
        remedy.ways().forEach(w -> references.materials(where, w.stuff()));
        for (Remedy other : remedy.undoes()) {
            if (!knowledge.remedies().get(other).undoes().contains(remedy.id())) {
                faults.add(where + ": undoes " + other.id() + ", but " + other.id() + " does not name it back");
            }
        }
        if (remedy.effort().heavy() != remedy.gently().isPresent()) {
            faults.add(where + ": tells how to do it gently where, and only where, it is heavy work");
        }
        if (remedy.expectDays().from() > remedy.expectDays().to()) {
            faults.add(where + ": expectDays run backwards");
        }
    }

    private void keepOut(KeepOutInfo info) {
        String where = "keep-out-classes.json " + info.id().id();
        sources(where, info.sources());
        if (info.nothingForkedThrough() && info.step().isEmpty()) {
            faults.add(where + ": nothing is forked through, but no step says what to do");
        }
        for (Sign sign : info.signs()) {
            if (knowledge.keepOuts().values().stream()
                    .anyMatch(o -> o.id() != info.id() && o.signs().contains(sign))) {
                faults.add(where + ": the sign " + sign.id() + " stands for another class too");
            }
        }
    }

    private void limit(LimitInfo limit) {
        String where = "limits.json " + limit.id().id();
        sources(where, limit.sources());
        if (!(limit.lowest() <= limit.value() && limit.value() <= limit.highest())) {
            faults.add(where + ": value " + limit.value() + " is outside " + limit.lowest() + " to " + limit.highest());
        }
    }
}
