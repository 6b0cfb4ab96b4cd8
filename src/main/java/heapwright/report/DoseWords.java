package heapwright.report;

import heapwright.advice.Option;
import heapwright.advice.People;
import heapwright.knowledge.Dose;
import heapwright.pile.Pile;
import heapwright.process.dose.Cap;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.Household;
import heapwright.process.dose.Term;
import heapwright.process.mixture.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/** Puts doses into words: the amount with its span, then the measure of the house beside it. */
public final class DoseWords {

    /** Doses that are measured with spoons and cups. */
    private static final Set<Dose> SPOONED = Set.of(Dose.UREA, Dose.AMMONIUM_SULPHATE, Dose.MEAL, Dose.ASH);

    private static final Set<Dose> FOOD_OR_DRY = Set.of(Dose.GREENS, Dose.MANURE, Dose.BIND_NITROGEN, Dose.SOAK_UP);

    /** More portions than this, each a third of it, would be a heap of something else; and many frighten. Judgement. */
    private static final int MOST_PORTIONS = 2;

    /** So little more than a whole number of portions is none more. */
    private static final double PORTION_EDGE = 0.05;

    private final Words words;
    private final TermWords terms;

    public DoseWords(Words words) {
        this.words = words;
        this.terms = new TermWords(words);
    }

    /** The amounts of a step, a line each. */
    public List<String> lines(Option option, Pile pile) {
        return option.doses().stream().flatMap(d -> line(d, pile).stream()).toList();
    }

    /** The amounts of a step as the first page tells them: what to give now, or all that it takes, without the span. */
    List<String> brief(Option option, Pile pile) {
        return option.doses().stream()
                .flatMap(d -> d.isNeeded() ? Stream.of(brief(d, pile)) : briefWhole(d, pile).stream())
                .toList();
    }

    private Optional<String> briefWhole(DoseAmount dose, Pile pile) {
        return dose.cap()
                .filter(c -> c == Cap.TOO_LITTLE && FOOD_OR_DRY.contains(dose.dose()))
                .map(c -> dose.whole()
                        .filter(w -> HeapPart.of(w, pile).isEmpty())
                        .map(w -> words.text(
                                "dose.brief-whole",
                                measured(w, w.litres(), pile),
                                what(w),
                                words.figures().mass(w.kg().likely())))
                        .orElseGet(() -> words.text(
                                People.of(pile).cannotLift()
                                        ? "dose.brief-too-little-gently"
                                        : "dose.brief-too-little")));
    }

    private String brief(DoseAmount dose, Pile pile) {
        Optional<HeapPart> part = HeapPart.of(dose, pile);
        if (part.isPresent()) {
            return inParts(dose, part.get(), pile);
        }
        String what = what(dose);
        String house = measured(dose, dose.litresEach(), pile);
        String amount = dose.material().isEmpty()
                ? words.figures().volume(dose.litresEach().likely())
                : words.figures().mass(dose.kgEach().likely());
        String told = dose.parts() == 1
                ? words.text("dose.brief", house, what, amount)
                : words.text("dose.brief-split", house, what, amount, dose.parts(), dose.intervalDays());
        return dose.carrierLitres().likely() > 0
                ? told + " " + words.text("dose.carrier", likely(dose.carrierLitres()))
                : portions(dose)
                        .map(n -> n <= MOST_PORTIONS
                                ? words.text("dose.brief-portion", house, what, amount, n)
                                : words.text(most(dose), house, what, amount))
                        .orElse(told);
    }

    /** What a part of the heap gets, where all of it would take more than a day's carting. */
    private String inParts(DoseAmount dose, HeapPart part, Pile pile) {
        Band litres = dose.litresEach().times(1.0 / part.parts());
        Band kg = dose.kgEach().times(1.0 / part.parts());
        String amount =
                dose.material().isEmpty() ? likely(litres) : words.figures().mass(kg.likely());
        String told = part.told(words, measured(dose, litres, pile), what(dose), amount);
        return dose.parts() == 1
                ? told
                : told + " " + words.text("dose.to-each-again", dose.parts(), dose.intervalDays());
    }

    /** Of a heap too wet or too rich some can be taken out instead; of one too lean that would help nothing. */
    private static String most(DoseAmount dose) {
        if (!isBulk(dose)) {
            return "dose.brief-more";
        }
        return dose.dose() == Dose.SOAK_UP || dose.dose() == Dose.BIND_NITROGEN
                ? "dose.brief-most"
                : "dose.brief-most-lean";
    }

    /** The stuff that the amounts of a step name, each once; water and fresh mix are not fetched. */
    List<String> stuff(Option option) {
        return option.doses().stream()
                .filter(DoseAmount::isNeeded)
                .flatMap(d -> d.material().stream())
                .map(words::thing)
                .distinct()
                .toList();
    }

    /**
     * One amount in parts, for a page that sets them apart.
     *
     * @param amount what to give at a time, as likely with its span
     * @param thing of what
     * @param house the same in a measure of the house
     * @param more how often and in what, where it is given in several doses or dissolved
     */
    public record Told(String amount, String thing, String house, List<String> more) {
        public Told {
            more = List.copyOf(more);
        }
    }

    /** The amounts of a step in parts. */
    public List<Told> told(Option option, Pile pile) {
        return option.doses().stream()
                .filter(DoseAmount::isNeeded)
                .map(d -> told(d, pile))
                .toList();
    }

    private Told told(DoseAmount dose, Pile pile) {
        List<String> more = new ArrayList<>();
        if (dose.parts() > 1) {
            more.add(words.text(
                    "dose.parts", amount(dose, dose.kg(), dose.litres()), dose.parts(), dose.intervalDays()));
        }
        if (dose.carrierLitres().likely() > 0) {
            more.add(words.text("dose.carrier", likely(dose.carrierLitres())));
        }
        return new Told(
                amount(dose, dose.kgEach(), dose.litresEach()), what(dose), house(dose, dose.litresEach(), pile), more);
    }

    private String what(DoseAmount dose) {
        return dose.material()
                .map(words::thing)
                .orElseGet(() -> words.text("dose.thing." + (dose.dose() == Dose.ENLARGE ? "mix" : "water")));
    }

    /** What to know about the amounts of a step: where they were held down, and what they rest on. */
    public List<String> remarks(Option option, Pile pile) {
        List<String> remarks = new ArrayList<>();
        for (DoseAmount dose : option.doses()) {
            limit(dose, pile).ifPresent(remarks::add);
            atHand(dose).ifPresent(remarks::add);
            working(dose).ifPresent(remarks::add);
        }
        return remarks;
    }

    /** What held a dose down, and how the rest of the need is met, in one remark. */
    private Optional<String> limit(DoseAmount dose, Pile pile) {
        Optional<DoseAmount> whole = dose.cap()
                .filter(c -> c == Cap.TOO_LITTLE)
                .flatMap(c -> dose.whole())
                .filter(w -> HeapPart.of(w, pile).isEmpty());
        if (whole.isPresent()) {
            return whole.map(w ->
                    words.text("dose.whole", measured(w, w.litres(), pile), what(w), amount(w, w.kg(), w.litres())));
        }
        return portions(dose).map(n -> portion(dose, n)).or(() -> dose.cap().map(c -> cap(dose.dose(), c)));
    }

    private String cap(Dose dose, Cap cap) {
        String own = "cap." + cap.id() + "." + dose.id();
        return words.catalogue().has(own) ? words.text(own) : words.word("cap", cap);
    }

    private String portion(DoseAmount dose, int of) {
        String told = of > MOST_PORTIONS && isBulk(dose) ? "dose.small-part" : "dose.portion";
        return words.text(dose.dose() == Dose.ENLARGE ? "dose.portion.enlarge" : told, of);
    }

    /** Stuff that swells the heap and, given again and again, would outgrow it. */
    private static boolean isBulk(DoseAmount dose) {
        return dose.material().isPresent() && dose.cap().equals(Optional.of(Cap.SHARE_OF_PILE));
    }

    private static boolean isWater(DoseAmount dose) {
        return dose.material().isEmpty() && dose.dose() != Dose.ENLARGE;
    }

    /** How little of what was passed over for another material is at hand. */
    private Optional<String> atHand(DoseAmount dose) {
        return dose.working().stream()
                .filter(term -> term.key() == Term.Key.SHARE_AT_HAND)
                .map(term -> words.text("dose.little-at-hand", terms.value(term)))
                .findFirst();
    }

    /** In how many portions like this one the whole need would go in, where a limit holds one down. */
    private static Optional<Integer> portions(DoseAmount dose) {
        boolean held = dose.isNeeded()
                && dose.cap()
                        .filter(c -> c == Cap.PER_CUBIC_METRE || c == Cap.SHARE_OF_PILE)
                        .isPresent();
        return dose.working().stream()
                .filter(term -> held && (term.key() == Term.Key.FULL_NEED || term.key() == Term.Key.MISSING_WATER))
                .filter(term -> dose.parts() == 1)
                .map(term -> (int) Math.ceil(term.value().likely() / dose.kg().likely() - PORTION_EDGE))
                .filter(n -> n > 1)
                .findFirst();
    }

    private Optional<String> line(DoseAmount dose, Pile pile) {
        if (!dose.isNeeded()) {
            return Optional.empty();
        }
        Optional<HeapPart> part = HeapPart.of(dose, pile);
        if (part.isPresent()) {
            return Optional.of(inParts(dose, part.get(), pile));
        }
        String what = what(dose);
        String amount = dose.parts() == 1
                ? words.text(
                        "dose.once", amount(dose, dose.kg(), dose.litres()), what, measured(dose, dose.litres(), pile))
                : words.text(
                        "dose.split",
                        amount(dose, dose.kg(), dose.litres()),
                        what,
                        dose.parts(),
                        amount(dose, dose.kgEach(), dose.litresEach()),
                        measured(dose, dose.litresEach(), pile),
                        dose.intervalDays());
        if (dose.carrierLitres().likely() > 0) {
            amount += " " + words.text("dose.carrier", likely(dose.carrierLitres()));
        }
        return Optional.of(amount);
    }

    /** Water and fresh mix by volume, the rest by mass, each as likely with its span. */
    private String amount(DoseAmount dose, Band kg, Band litres) {
        return dose.material().isEmpty() ? amount(litres, words.figures()::volume) : amount(kg, words.figures()::mass);
    }

    private String amount(Band band, DoubleFunction<String> told) {
        String likely = told.apply(band.likely());
        String most = told.apply(band.high());
        if (band.low() > 0) {
            return words.figures().within(likely, told.apply(band.low()), most);
        }
        // Perhaps none is needed: a span from nothing tells only its end.
        String upTo = words.text("figure.up-to", most);
        return most.equals(likely) ? upTo : words.text("figure.within", likely, upTo);
    }

    private String likely(Band litres) {
        return words.figures().volume(litres.likely());
    }

    /** The same in buckets, barrows or spoons. */
    private String house(DoseAmount dose, Band litres, Pile pile) {
        return words.text("dose.house", measured(dose, litres, pile));
    }

    private String measured(DoseAmount dose, Band litres, Pile pile) {
        boolean spooned = SPOONED.contains(dose.dose());
        Measures.Kind kind = Measures.Kind.BULK;
        if (spooned) {
            kind = Measures.Kind.POWDER;
        } else if (isWater(dose)) {
            kind = Measures.Kind.WATER;
        }
        return new Measures(words, pile)
                .tell(litres.likely(), kind, spooned ? Household.Rounding.DOWN : Household.Rounding.NEAREST);
    }

    /** The figures behind an amount in one sentence. */
    private Optional<String> working(DoseAmount dose) {
        String told = terms.told(dose.working());
        return told.isEmpty() ? Optional.empty() : Optional.of(words.text("dose.working", told));
    }
}
