package heapwright.process.use;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Trait;
import heapwright.knowledge.Wait;
import heapwright.knowledge.WaitInfo;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.OwnMaterial;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The days of a record on which ripening hangs. */
public final class PileDays {

    /** What does not set the clock back: it has rotted already or does not rot. */
    private static final Set<Trait> NOT_FRESH = EnumSet.of(Trait.STARTER, Trait.SOIL, Trait.ALKALI);

    private static final Set<String> WARM =
            Set.of(Sign.CORE_WARM.id(), Sign.CORE_HOT.id(), Sign.STEAM.id(), Sign.REHEATS_AFTER_TURNING.id());

    private final Pile pile;
    private final Knowledge knowledge;
    private final Materials materials;

    public PileDays(Pile pile, Knowledge knowledge) {
        this.pile = pile;
        this.knowledge = knowledge;
        this.materials = Materials.of(knowledge.materials(), pile.materials());
    }

    public LocalDate today() {
        return pile.asOf();
    }

    public double limit(Limit limit) {
        return pile.limits()
                .getOrDefault(limit.id(), knowledge.limits().get(limit).value());
    }

    public WaitInfo wait(Wait wait) {
        return knowledge.endUse().waits().get(wait);
    }

    public int since(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(day, pile.asOf());
    }

    /** The last day on which something fresh went in; that of building at the earliest. */
    public LocalDate lastFresh() {
        return last(m -> m.traits().stream().noneMatch(NOT_FRESH::contains)).orElse(pile.built());
    }

    /** The last day on which something with one of these traits went in. */
    public Optional<LocalDate> last(Set<Trait> traits) {
        return last(m -> m.traits().stream().anyMatch(traits::contains));
    }

    /** The last day on which what a wait is for went in. */
    public Optional<LocalDate> last(WaitInfo wait) {
        return ingredients()
                .filter(i -> wait.materials().contains(known(i.material())))
                .map(Ingredient::date)
                .max(Comparator.naturalOrder());
    }

    private Optional<LocalDate> last(Predicate<Material> which) {
        return ingredients()
                .filter(i -> which.test(materials.get(i.material())))
                .map(Ingredient::date)
                .max(Comparator.naturalOrder());
    }

    private Stream<Ingredient> ingredients() {
        return Stream.concat(pile.recipe().stream(), log().map(Entry::added).flatMap(List::stream))
                .filter(i -> !i.date().isAfter(pile.asOf()));
    }

    private Stream<Entry> log() {
        return pile.log().stream().filter(e -> !e.date().isAfter(pile.asOf()));
    }

    /** The material of the tables that an own one is like. */
    private String known(String material) {
        return pile.materials().stream()
                .filter(m -> m.id().equals(material))
                .map(OwnMaterial::like)
                .findFirst()
                .orElse(material);
    }

    /** The last day on which it was noted that some of it was spread or dug in. */
    public Optional<LocalDate> spreadOn() {
        return log().filter(e -> e.done().contains(Action.SPREAD))
                .map(Entry::date)
                .max(Comparator.naturalOrder());
    }

    /** The last day on which it was read at work or felt warm. */
    public Optional<LocalDate> lastHeat() {
        double active = limit(Limit.CORE_ACTIVE);
        return log().filter(e -> e.measured().coreC().orElse(Double.NEGATIVE_INFINITY) >= active
                        || e.seen().stream().anyMatch(WARM::contains))
                .map(Entry::date)
                .max(Comparator.naturalOrder());
    }

    /** Whether somebody says that it was warm once, with no day for it. */
    private boolean saidToHaveHeated() {
        return log().anyMatch(e -> e.seen().contains(Sign.HEATED_THEN_COOLED.id()));
    }

    /** The day on which its rest is over, where that lies ahead; by the rest after heat, else by that of a pile never hot. */
    public Optional<LocalDate> curingEnds() {
        boolean heated = lastHeat().isPresent() || saidToHaveHeated();
        Optional<LocalDate> from = heated ? lastHeat() : Optional.of(lastFresh());
        Wait wait = heated ? Wait.CURE_AFTER_HEAT : Wait.CURE_NEVER_HOT;
        return from.map(day -> day.plusDays(wait(wait).days())).filter(day -> day.isAfter(today()));
    }

    /** The day on which a wait for some material is over, where that lies ahead. */
    public Optional<LocalDate> ends(Wait wait) {
        WaitInfo info = wait(wait);
        return last(info).map(day -> day.plusDays(info.days())).filter(day -> day.isAfter(today()));
    }

    /** Whether it is younger than easy food lasts. */
    public boolean tooYoung() {
        return !pile.builtAssumed() && since(pile.built()) < limit(Limit.AGE_OLD);
    }

    /** What the days and the home tests say against using it. */
    public List<RipeReason> against(TestResults tests) {
        List<RipeReason> all = new ArrayList<>();
        if (tooYoung()) {
            all.add(RipeReason.TOO_YOUNG);
        } else if (since(lastFresh()) < wait(Wait.FRESH_STUFF).days()) {
            all.add(RipeReason.FRESH_STUFF);
        }
        if (curingEnds().isPresent()) {
            all.add(lastHeat().isPresent() ? RipeReason.STILL_CURING : RipeReason.NEVER_HOT);
        }
        if (tests.failed(knowledge)) {
            all.add(RipeReason.FAILED_TEST);
        }
        return all;
    }
}
