package heapwright.advice.observe;

import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Did;
import heapwright.advice.fact.Fixture;
import heapwright.advice.fact.Has;
import heapwright.advice.fact.Once;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Action;
import heapwright.pile.Container;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.pile.Setting;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Turns what a person saw, did and said of the place into facts. */
public final class Answers {

    /** First aid is for the day and the day after; later it is a matter for a doctor. Judgement. */
    private static final int FIRST_DAYS = 1;

    private final Pile pile;
    private final Map<Sign, SignInfo> infos;
    private final Tried tried;
    private final int freshDays;

    /**
     * Prepares.
     *
     * @param pile the pile
     * @param infos what is said of each sign
     * @param tried what came of the steps that were taken on
     * @param freshDays for how many days an answer holds that lasts for weeks; older ones are out of date
     */
    public Answers(Pile pile, Map<Sign, SignInfo> infos, Tried tried, int freshDays) {
        this.pile = pile;
        this.infos = infos;
        this.tried = tried;
        this.freshDays = freshDays;
    }

    /** Days from an entry to the day of advice; negative for entries after it. */
    int daysAgo(Entry entry) {
        return (int) ChronoUnit.DAYS.between(entry.date(), pile.asOf());
    }

    /**
     * Facts of signs: of each sign the latest answer that is still fresh. A yes that is older than what was done about it
     * is marked as outlived.
     *
     * @param wentIn what went in
     */
    public List<Object> signs(Collection<WentIn> wentIn) {
        Map<Sign, Object> latest = new EnumMap<>(Sign.class);
        if (pile.container().kind() == Container.Kind.FED_BIN) {
            latest.put(Sign.FED_LITTLE_AND_OFTEN, new Seen(Sign.FED_LITTLE_AND_OFTEN, 0));
        }
        for (Entry entry : pile.log()) {
            int days = daysAgo(entry);
            if (days < 0) {
                continue;
            }
            fresh(entry.notSeen(), days).forEach(s -> latest.put(s, new Denied(s, days)));
            fresh(entry.seen(), days).forEach(s -> latest.put(s, new Seen(s, days, changedSince(s, days, wentIn))));
        }
        return new ArrayList<>(latest.values());
    }

    private boolean changedSince(Sign sign, int days, Collection<WentIn> wentIn) {
        SignInfo info = infos.get(sign);
        LocalDate seen = pile.asOf().minusDays(days);
        if (tried.stands(sign, seen)) {
            return false;
        }
        return tried.mended(sign, seen)
                || pile.log().stream()
                        .filter(e -> isSince(daysAgo(e), days))
                        .anyMatch(e -> e.done().stream().anyMatch(info.changedBy()::contains))
                || wentIn.stream()
                        .anyMatch(w ->
                                isSince(w.daysAgo(), days) && info.changedWith().contains(w.trait()));
    }

    /**
     * Whether something was done after a sign was noted. On one past day a person looks first and then mends what was
     * found; of today's note nobody knows yet what the work of today did.
     */
    private static boolean isSince(int doneDaysAgo, int notedDaysAgo) {
        return doneDaysAgo >= 0 && (doneDaysAgo < notedDaysAgo || doneDaysAgo == notedDaysAgo && notedDaysAgo > 0);
    }

    private Stream<Sign> fresh(List<String> ids, int days) {
        return ids.stream().flatMap(id -> sign(id).stream()).filter(s -> days <= holds(s));
    }

    /** For how many days an answer to a sign holds. */
    private int holds(Sign sign) {
        return switch (infos.get(sign).lasts()) {
            case DAYS -> FIRST_DAYS;
            case WEEKS -> freshDays;
            case ALWAYS -> Integer.MAX_VALUE;
        };
    }

    private static Optional<Sign> sign(String id) {
        return Arrays.stream(Sign.values()).filter(s -> s.id().equals(id)).findFirst();
    }

    /** The signs that were seen and not outlived, of the facts of signs. */
    public static Set<Sign> seen(List<Object> signs) {
        Set<Sign> seen = EnumSet.noneOf(Sign.class);
        signs.forEach(fact -> {
            if (fact instanceof Seen s && !s.outlived()) {
                seen.add(s.sign());
            }
        });
        return seen;
    }

    /** Every sign that was seen on an earlier day, with the latest such day. */
    public List<Once> once() {
        Map<Sign, Once> latest = new EnumMap<>(Sign.class);
        for (Entry entry : pile.log()) {
            int days = daysAgo(entry);
            if (days > 0) {
                entry.seen().stream()
                        .flatMap(id -> sign(id).stream())
                        .forEach(s -> latest.merge(s, new Once(s, days), (a, b) -> a.daysAgo() < b.daysAgo() ? a : b));
            }
        }
        return List.copyOf(latest.values());
    }

    /** What went in by the answers, of unknown amount; what is in stays in, however old the answer. */
    public List<WentIn> inputs() {
        Set<WentIn> inputs = new LinkedHashSet<>();
        for (Entry entry : pile.log()) {
            int days = daysAgo(entry);
            if (days >= 0) {
                entry.seen().stream()
                        .flatMap(id -> sign(id).stream())
                        .flatMap(s -> infos.get(s).brings().stream())
                        .forEach(trait -> inputs.add(new WentIn(trait, days, Double.NaN)));
            }
        }
        return List.copyOf(inputs);
    }

    /** Facts of what was done: of each action the latest. */
    public List<Object> actions() {
        Map<Action, Integer> latest = new EnumMap<>(Action.class);
        for (Entry entry : pile.log()) {
            int days = daysAgo(entry);
            if (days >= 0) {
                entry.done().forEach(a -> latest.merge(a, days, Math::min));
            }
        }
        List<Object> facts = new ArrayList<>();
        latest.forEach((action, days) -> facts.add(new Did(action, days)));
        return facts;
    }

    /** Facts of place, container and aim. */
    public List<Object> fixtures() {
        Set<Fixture> fixtures = EnumSet.noneOf(Fixture.class);
        for (Setting setting : pile.place().settings()) {
            fixtures.add(
                    switch (setting) {
                        case CLOSED_SHED -> Fixture.CLOSED_SHED;
                        case NEAR_WATER -> Fixture.NEAR_WATER;
                        case LOW_WET_GROUND -> Fixture.LOW_WET_GROUND;
                        case WINDY -> Fixture.WINDY;
                        case KEEPS_ANIMALS -> Fixture.KEEPS_ANIMALS;
                        case PETS_ABOUT -> Fixture.PETS_ABOUT;
                        case RATS_ABOUT -> Fixture.RATS_ABOUT;
                    });
        }
        container(pile.container(), fixtures);
        switch (pile.aim().use()) {
            case VEGETABLE_BED, FRUIT_AND_SHRUBS -> fixtures.add(Fixture.FOR_FOOD);
            case SEEDLINGS, POTTING_MIX -> fixtures.add(Fixture.FOR_SEEDLINGS);
            case FLOWER_BED, LAWN, MULCH, UNKNOWN -> {}
        }
        return fixtures.stream().map(f -> (Object) new Has(f)).toList();
    }

    private static void container(Container container, Set<Fixture> fixtures) {
        switch (container.kind()) {
            case CLOSED_BIN, FED_BIN -> fixtures.add(Fixture.CLOSED_BIN);
            case INSULATED_BIN -> fixtures.addAll(List.of(Fixture.CLOSED_BIN, Fixture.INSULATED_BIN));
            case TUMBLER -> fixtures.add(Fixture.TUMBLER);
            case PIT -> fixtures.add(Fixture.PIT);
            case TRENCH -> fixtures.add(Fixture.TRENCH);
            case LEAF_CAGE -> fixtures.add(Fixture.LEAF_CAGE);
            case WORM_BIN -> fixtures.add(Fixture.WORM_BIN);
            case BOKASHI -> fixtures.add(Fixture.BOKASHI);
            case OPEN_HEAP, WIRE_RING, SLATTED_BIN, UNKNOWN -> {}
        }
        switch (container.cover()) {
            case NONE -> fixtures.add(Fixture.NO_COVER);
            case SEALED_PLASTIC -> fixtures.add(Fixture.SEALED_COVER);
            case STRAW_OR_LEAVES, FINISHED_COMPOST -> {
                // A thatch over sides that are told to be bare is no coat.
                if (container.insulation() != Container.Insulation.NONE) {
                    fixtures.add(Fixture.INSULATION);
                }
            }
            case SNOW -> fixtures.addAll(List.of(Fixture.INSULATION, Fixture.SNOW_COVER));
            case LID, BOARDS_OR_ROOF, LOOSE_TARP, BREATHING_FLEECE, UNKNOWN -> {}
        }
        switch (container.insulation()) {
            case STRAW, LEAVES, FOAM, SNOW_BANK, EARTH -> fixtures.add(Fixture.INSULATION);
            case NONE, WOOD, UNKNOWN -> {}
        }
        if (container.rodentProof()) {
            fixtures.add(Fixture.RODENT_PROOF);
        }
    }
}
