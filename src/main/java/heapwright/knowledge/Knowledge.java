package heapwright.knowledge;

import heapwright.pile.MaterialNames;
import heapwright.pile.Vocabulary;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The tables of the knowledge base, read and checked. Every map keeps the order of its table.
 *
 * @param signs what is said of each sign
 * @param causes what is said of each cause
 * @param dangers what is said of each danger
 * @param remedies what is said of each remedy
 * @param cautions what is said of each caution
 * @param limits what is said of each limit
 * @param materials materials by id
 * @param measures household measures by id
 * @param sources sources by key
 * @param usualDoses what is said of each home remedy
 * @param keepOuts what is said of each class of stuff that stays out
 * @param sanitation what is published on heat that cleans compost
 * @param endUse what is known of ripe compost and of using it
 * @param season what there is to do at each time of the year, by id
 * @param evidence every row of evidence, cause by cause
 * @param weights what the strengths of the rows weigh
 */
public record Knowledge(
        Map<Sign, SignInfo> signs,
        Map<Cause, CauseInfo> causes,
        Map<Danger, DangerInfo> dangers,
        Map<Remedy, RemedyInfo> remedies,
        Map<Caution, CautionInfo> cautions,
        Map<Limit, LimitInfo> limits,
        Map<String, Material> materials,
        Map<String, MeasureInfo> measures,
        Map<String, SourceInfo> sources,
        Map<UsualDose, UsualDoseInfo> usualDoses,
        Map<KeepOutClass, KeepOutInfo> keepOuts,
        Sanitation sanitation,
        EndUse endUse,
        Map<String, SeasonJob> season,
        List<Evidence> evidence,
        Weights weights) {

    public Knowledge {
        signs = Collections.unmodifiableMap(signs);
        causes = Collections.unmodifiableMap(causes);
        dangers = Collections.unmodifiableMap(dangers);
        remedies = Collections.unmodifiableMap(remedies);
        cautions = Collections.unmodifiableMap(cautions);
        limits = Collections.unmodifiableMap(limits);
        materials = Collections.unmodifiableMap(materials);
        measures = Collections.unmodifiableMap(measures);
        sources = Collections.unmodifiableMap(sources);
        usualDoses = Collections.unmodifiableMap(usualDoses);
        keepOuts = Collections.unmodifiableMap(keepOuts);
        season = Collections.unmodifiableMap(season);
        evidence = List.copyOf(evidence);
    }

    /**
     * The same knowledge with the sentences of signs, causes, remedies, cautions and home remedies put another way, for
     * instance in other units. Sources, limits and materials stay as their sources have them.
     *
     * @param wording what becomes of a sentence
     */
    public Knowledge reworded(UnaryOperator<String> wording) {
        return new Knowledge(
                each(signs, s -> s.reworded(wording)),
                each(causes, c -> c.reworded(wording)),
                each(dangers, d -> d.reworded(wording)),
                each(remedies, r -> r.reworded(wording)),
                each(cautions, c -> c.reworded(wording)),
                limits,
                materials,
                measures,
                sources,
                each(usualDoses, u -> u.reworded(wording)),
                keepOuts,
                sanitation.reworded(wording),
                endUse.reworded(wording),
                each(season, j -> j.reworded(wording)),
                evidence,
                weights);
    }

    /**
     * The same knowledge but one row of evidence, which then never speaks: it shows what that row is needed for.
     *
     * @param id the id of a row
     * @throws IllegalArgumentException when there is no such row
     */
    public Knowledge without(String id) {
        List<Evidence> others =
                evidence.stream().filter(row -> !row.id().equals(id)).toList();
        if (others.size() == evidence.size()) {
            throw new IllegalArgumentException("There is no row of evidence \"" + id + "\" to leave out");
        }
        return with(others, weights);
    }

    /** The same knowledge with other tables of those that a place may add to. */
    Knowledge with(Added added) {
        return new Knowledge(
                signs,
                causes,
                dangers,
                remedies,
                added.cautions(),
                added.limits(),
                added.materials(),
                added.measures(),
                added.sources(),
                usualDoses,
                keepOuts,
                sanitation,
                endUse,
                season,
                added.evidence(),
                weights);
    }

    /** The tables that a place may add to, with what it adds. */
    record Added(
            Map<Caution, CautionInfo> cautions,
            Map<Limit, LimitInfo> limits,
            Map<String, Material> materials,
            Map<String, MeasureInfo> measures,
            Map<String, SourceInfo> sources,
            List<Evidence> evidence) {}

    /** The same knowledge with other weights of evidence: it shows what a fit to other cases would make of it. */
    public Knowledge weighing(Weights others) {
        return with(evidence, others);
    }

    private Knowledge with(List<Evidence> rows, Weights weighing) {
        return new Knowledge(
                signs,
                causes,
                dangers,
                remedies,
                cautions,
                limits,
                materials,
                measures,
                sources,
                usualDoses,
                keepOuts,
                sanitation,
                endUse,
                season,
                rows,
                weighing);
    }

    private static <K, V> Map<K, V> each(Map<K, V> rows, UnaryOperator<V> change) {
        Map<K, V> changed = new LinkedHashMap<>();
        rows.forEach((key, row) -> changed.put(key, change.apply(row)));
        return changed;
    }

    /** The words by which materials may be called. */
    public MaterialNames materialNames() {
        return new MaterialNames(vocabulary());
    }

    /** The material with this id or other name, as {@link MaterialNames} takes it. */
    public Optional<Material> material(String idOrAlias) {
        Material byId = materials.get(idOrAlias);
        if (byId != null) {
            return Optional.of(byId);
        }
        return materialNames().named(idOrAlias).map(materials::get);
    }

    /** A material that stays out, or one that a person named as such: itself, or the one it is called after. */
    public Optional<Material> barred(Material material) {
        if (material.keepOut().isPresent()) {
            return Optional.of(material);
        }
        // To look a name up takes a while, and a record may name thousands: one of the tables is not called after
        // another.
        Material known = materials.get(material.id());
        if (known != null && known.name().equals(material.name())) {
            return Optional.empty();
        }
        return material(material.name()).filter(named -> named.keepOut().isPresent());
    }

    /** The ids that a pile document may use. */
    public Vocabulary vocabulary() {
        Map<String, String> aliases = new LinkedHashMap<>();
        for (Material m : materials.values()) {
            aliases.put(m.name().toLowerCase(Locale.ROOT), m.id());
            m.aliases().forEach(a -> aliases.put(a.toLowerCase(Locale.ROOT), m.id()));
        }
        Map<String, Double> litres = new LinkedHashMap<>();
        Map<String, Double> pressed = new LinkedHashMap<>();
        Map<String, String> measureWords = new LinkedHashMap<>();
        for (MeasureInfo m : measures.values()) {
            litres.put(m.id(), m.litres());
            m.kilograms().ifPresent(kilograms -> pressed.put(m.id(), kilograms));
            measureWords.put(m.name().one(), m.id());
            measureWords.put(m.name().many(), m.id());
            m.aliases().forEach(a -> measureWords.put(a, m.id()));
        }
        Map<String, double[]> spans = new LinkedHashMap<>();
        limits.values().forEach(l -> spans.put(l.id().id(), new double[] {l.lowest(), l.highest()}));
        List<String> stepIds = remedies.keySet().stream().map(Id::id).toList();
        List<String> signIds = signs.keySet().stream().map(Id::id).toList();
        return new Vocabulary() {
            @Override
            public Collection<String> steps() {
                return stepIds;
            }

            @Override
            public Collection<String> signs() {
                return signIds;
            }

            @Override
            public Collection<String> materials() {
                return materials.keySet();
            }

            @Override
            public Map<String, String> materialAliases() {
                return aliases;
            }

            @Override
            public Map<String, Double> measures() {
                return litres;
            }

            @Override
            public Map<String, Double> pressed() {
                return pressed;
            }

            @Override
            public Map<String, String> measureAliases() {
                return measureWords;
            }

            @Override
            public Map<String, double[]> limits() {
                return spans;
            }

            @Override
            public Optional<Chemistry> chemistry(String material) {
                return Optional.ofNullable(materials.get(material))
                        .map(m -> new Chemistry(
                                m.carbonPct().typical(), m.carbonToNitrogen().typical(), m.typicalNitrogenPct()));
            }
        };
    }
}
