package heapwright.process.sanitation;

import heapwright.knowledge.HeatRule;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Sanitation;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Survivor;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How hot the core of a pile was for how long by its record, beside the published rules and trials. Nobody measured the
 * edges, so nothing here says that a pile is clean.
 *
 * @param record the readings and turns, since something that is safe only after heat last went in
 * @param countsFrom that day, where it left out earlier readings; heat of before did nothing for what went in then
 * @param levels the days at each temperature, the lowest first
 * @param between the days at each temperature from one turn to the next
 * @param rules each rule beside the record
 * @param equations how many times over the core had what each equation asks, by the id of the equation
 * @param fates what it says of each weed, pest and disease
 * @param gate what the record shows of the rule by which Heapwright takes a core for hot enough
 */
public record HeatLedger(
        HeatRecord record,
        Optional<LocalDate> countsFrom,
        List<HotDays> levels,
        List<BetweenTurns> between,
        List<RuleCheck> rules,
        Map<String, OptionalDouble> equations,
        List<Fate> fates,
        RuleCheck.Shown gate) {

    /** The temperatures of the ledger, °C: the steps of the published rules. */
    private static final List<Double> LEVELS = List.of(55.0, 60.0, 65.0, 70.0);

    /**
     * The hot days between two turns.
     *
     * @param from the day after the turn before, or the first reading
     * @param to the day of the turn, or the last reading
     * @param days the days that count at each level, the lowest first
     */
    public record BetweenTurns(LocalDate from, LocalDate to, List<Integer> days) {}

    /** The ledger of a pile. */
    public static HeatLedger of(Pile pile, Knowledge knowledge) {
        Sanitation published = knowledge.sanitation();
        HeatRecord all = HeatRecord.of(pile);
        Optional<LocalDate> lastIn = RawStuff.lastIn(pile, knowledge);
        HeatRecord record = lastIn.map(all::since).orElse(all);
        List<HotDays> levels = LEVELS.stream().map(record::at).toList();
        Map<String, OptionalDouble> equations = new LinkedHashMap<>();
        published.equations().values().forEach(e -> equations.put(e.id(), TimeAtHeat.share(e, record)));
        Set<String> stuff = stuff(pile);
        Set<String> seen = pile.log().stream()
                .filter(e -> !e.date().isAfter(pile.asOf()))
                .flatMap(e -> e.seen().stream())
                .collect(Collectors.toSet());
        return new HeatLedger(
                record,
                lastIn.filter(day -> record.cores().size() < all.cores().size()),
                levels,
                between(record, levels),
                published.rules().values().stream()
                        .map(r -> RuleCheck.of(r, record))
                        .toList(),
                equations,
                published.survivors().values().stream()
                        .map(s -> Fate.of(s, sinceItWentIn(s, pile, all), in(s, stuff, seen)))
                        .toList(),
                gate(pile, knowledge, record));
    }

    /** The record since the last day on which something went in that may carry it. */
    private static HeatRecord sinceItWentIn(Survivor survivor, Pile pile, HeatRecord all) {
        Map<String, String> like = new HashMap<>();
        pile.materials().forEach(m -> like.put(m.id(), m.like()));
        return RawStuff.lastIn(
                        pile,
                        id -> survivor.materials().contains(like.getOrDefault(id, id)),
                        survivor.signs().stream().map(Sign::id).collect(Collectors.toSet()))
                .map(all::since)
                .orElse(all);
    }

    /** What the record shows of the days and turns by which a core is taken for hot enough. */
    private static RuleCheck.Shown gate(Pile pile, Knowledge knowledge, HeatRecord record) {
        return RuleCheck.shown(
                new HeatRule.Need(
                        limit(pile, knowledge, Limit.CORE_SANITISING),
                        limit(pile, knowledge, Limit.HEAT_PROOF_DAYS),
                        (int) limit(pile, knowledge, Limit.HEAT_PROOF_TURNS),
                        0,
                        0,
                        true),
                record);
    }

    private static double limit(Pile pile, Knowledge knowledge, Limit limit) {
        return pile.limits()
                .getOrDefault(limit.id(), knowledge.limits().get(limit).value());
    }

    private static Set<String> stuff(Pile pile) {
        Set<String> ids = new HashSet<>();
        Stream.concat(
                        pile.recipe().stream(),
                        pile.log().stream()
                                .filter(e -> !e.date().isAfter(pile.asOf()))
                                .map(Entry::added)
                                .flatMap(List::stream))
                .map(Ingredient::material)
                .forEach(ids::add);
        pile.materials().stream().filter(m -> ids.contains(m.id())).forEach(m -> ids.add(m.like()));
        return ids;
    }

    private static boolean in(Survivor survivor, Set<String> stuff, Set<String> seen) {
        return survivor.materials().stream().anyMatch(stuff::contains)
                || survivor.signs().stream().map(Sign::id).anyMatch(seen::contains);
    }

    private static List<BetweenTurns> between(HeatRecord record, List<HotDays> levels) {
        List<BetweenTurns> all = new ArrayList<>();
        if (!record.measured()) {
            return all;
        }
        LocalDate from = record.cores().firstKey();
        LocalDate end = record.cores().lastKey();
        List<LocalDate> ends = new ArrayList<>(record.turns());
        ends.add(end);
        for (LocalDate to : ends) {
            if (!to.isBefore(from) && !to.isAfter(end)) {
                LocalDate first = from;
                all.add(new BetweenTurns(
                        first,
                        to,
                        levels.stream().map(l -> within(l, first, to)).toList()));
                from = to.plusDays(1);
            }
        }
        return all;
    }

    private static int within(HotDays level, LocalDate from, LocalDate to) {
        return level.stretches().stream()
                .mapToInt(s -> s.days().subSet(from, true, to, true).size())
                .sum();
    }

    /** Whether the core is shown hot enough by the days and turns that Heapwright asks. */
    public boolean hotEnoughInCore() {
        return gate.met();
    }

    /** What may be in this pile, in the order of the table. */
    public List<Fate> inThisPile() {
        return fates.stream().filter(Fate::inThisPile).toList();
    }
}
