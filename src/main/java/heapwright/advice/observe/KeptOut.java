package heapwright.advice.observe;

import heapwright.advice.fact.AlreadyIn;
import heapwright.knowledge.KeepOutClass;
import heapwright.knowledge.KeepOutInfo;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Turns what should have stayed out into facts, by the same table as the audit. Unlike other signs these never go out of
 * date: what went in is in until it is denied or taken out.
 */
public final class KeptOut {

    private final Pile pile;
    private final Knowledge knowledge;
    private final Materials materials;

    public KeptOut(Pile pile, Knowledge knowledge, Materials materials) {
        this.pile = pile;
        this.knowledge = knowledge;
        this.materials = materials;
    }

    /** One fact a class that went in; none of a class that leaves no trace once it has been taken out. */
    public List<AlreadyIn> facts() {
        Map<KeepOutClass, LocalDate> last = new EnumMap<>(KeepOutClass.class);
        materials()
                .forEach(i -> knowledge
                        .barred(materials.get(i.material()))
                        .flatMap(m -> m.keepOut())
                        .ifPresent(k -> last.merge(k.kind(), i.date(), KeptOut::later)));
        for (KeepOutInfo info : knowledge.keepOuts().values()) {
            for (Sign sign : info.signs()) {
                seen(sign).ifPresent(day -> last.merge(info.id(), day, KeptOut::later));
            }
        }
        List<AlreadyIn> facts = new ArrayList<>();
        last.forEach((kind, day) -> {
            KeepOutInfo info = knowledge.keepOuts().get(kind);
            boolean stillIn = !takenOutSince(day);
            if (stillIn || info.staysTainted()) {
                facts.add(new AlreadyIn(
                        kind, info.nothingForkedThrough(), stillIn, (int) ChronoUnit.DAYS.between(day, pile.asOf())));
            }
        });
        return facts;
    }

    private Stream<Ingredient> materials() {
        return Stream.concat(pile.recipe().stream(), pile.log().stream().flatMap(e -> e.added().stream()))
                .filter(i -> !i.date().isAfter(pile.asOf()));
    }

    /** The day on which a sign was last seen, unless it was denied since. */
    private Optional<LocalDate> seen(Sign sign) {
        String id = sign.id();
        LocalDate day = null;
        for (Entry entry : pile.log()) {
            if (entry.date().isAfter(pile.asOf())) {
                continue;
            }
            if (entry.seen().contains(id)) {
                day = entry.date();
            } else if (entry.notSeen().contains(id)) {
                day = null;
            }
        }
        return Optional.ofNullable(day);
    }

    private boolean takenOutSince(LocalDate day) {
        return pile.log().stream()
                .filter(e -> !e.date().isBefore(day) && !e.date().isAfter(pile.asOf()))
                .anyMatch(e -> e.done().contains(Action.TAKEN_OUT));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
