package heapwright.casebook;

import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Proposal;
import heapwright.advice.audit.Trimming;
import heapwright.advice.fact.Mark;
import heapwright.knowledge.Material;
import heapwright.process.mend.Addition;
import heapwright.process.mixture.Averaging;
import heapwright.process.mixture.Mixture;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Compares the audit of a recipe with what its case demands. */
final class AuditVerdict {

    private final AuditExpectation expect;
    private final List<String> misses = new ArrayList<>();

    private AuditVerdict(AuditExpectation expect) {
        this.expect = expect;
    }

    /** Every demand that is not met, in words. */
    static List<String> misses(AuditExpectation expect, Optional<Audit> audit) {
        AuditVerdict verdict = new AuditVerdict(expect);
        audit.ifPresentOrElse(verdict::compare, () -> verdict.misses.add("there is no recipe to audit"));
        return verdict.misses;
    }

    private void compare(Audit audit) {
        expect.mark()
                .filter(m -> m != audit.mark())
                .ifPresent(m -> misses.add("the audit is " + audit.mark().id() + ", not " + m.id()));
        expect.topics().forEach((topic, mark) -> {
            Optional<Mark> found = audit.judgements().stream()
                    .filter(j -> j.topic() == topic)
                    .map(j -> j.mark())
                    .max(Mark::compareTo);
            if (!found.equals(Optional.of(mark))) {
                misses.add(topic.id() + " is " + found.map(Mark::id).orElse("not judged") + ", not " + mark.id());
            }
        });
        List<String> rules =
                audit.judgements().stream().map(j -> j.firing().rule().id()).toList();
        lacking("does not speak", expect.rules(), rules);
        present("must be silent", expect.notRules(), rules);
        lacking("is not barred", expect.keepOut(), ids(audit.barred()));
        audit.proposal().ifPresent(this::compare);
        if (audit.proposal().isEmpty() && expect.mendMeets().isPresent()) {
            misses.add("nothing is left to mend");
        }
        expect.figures().forEach((name, within) -> {
            double value = figure(audit.mixture(), name);
            if (!(Math.abs(value - within.value()) <= within.within())) {
                misses.add(name + " is " + value + ", not within " + within.within() + " of " + within.value());
            }
        });
        Optional<Averaging.Shortcut> shortcut = audit.ownFigure().map(Averaging::shortcut);
        if (expect.ownRatio().isPresent() && !shortcut.equals(expect.shortcut())) {
            misses.add("the shortcut is " + shortcut + ", not " + expect.shortcut());
        }
    }

    private void compare(Proposal proposal) {
        lacking("is not left out of the plan", expect.leftOut(), ids(proposal.leftOut()));
        lacking(
                "is not cut back in the plan",
                expect.cutBack(),
                ids(Stream.concat(proposal.trimmed().stream(), proposal.less().stream())
                        .map(Trimming.Trimmed::material)
                        .toList()));
        expect.mendMeets()
                .filter(m -> m != proposal.mend().chosen().meetsAll())
                .ifPresent(m -> misses.add(
                        "the mend " + (m ? "misses " + proposal.mend().chosen().misses() : "meets all")));
        List<String> added = proposal.mend().chosen().additions().stream()
                .map(Addition::material)
                .toList();
        lacking("is not added by the mend " + added, expect.mendAdds(), added);
        present("must not be added by the mend", expect.notMendAdds(), added);
        Set<String> unlock =
                proposal.mend().unlock().map(u -> Set.copyOf(u.materials())).orElse(Set.of());
        expect.unlock()
                .filter(wanted -> !unlock.equals(Set.copyOf(wanted)))
                .ifPresent(wanted -> misses.add("it is unlocked by " + unlock + ", not " + wanted));
    }

    /** A likely value by its name in the JSON document; NaN, which is within nothing, for a name that there is not. */
    private static double figure(Mixture mix, String name) {
        return switch (name) {
            case "wetKg" -> mix.masses().wet().likely();
            case "dryKg" -> mix.masses().dry().likely();
            case "waterKg" -> mix.masses().water().likely();
            case "carbonKg" -> mix.masses().carbon().likely();
            case "nitrogenKg" -> mix.masses().nitrogen().likely();
            case "moisturePct" -> mix.moisturePct().likely();
            case "carbonToNitrogen" -> mix.allCarbonToNitrogen().likely();
            case "densityKgM3" -> mix.densityKgM3().likely();
            case "freeAirSpacePct" -> mix.freeAirSpacePct().likely();
            case "looseM3" -> mix.looseM3().likely();
            case "settledM3" -> mix.settledM3().likely();
            case "coarseSharePct" -> mix.coarseSharePct();
            default -> Double.NaN;
        };
    }

    private void lacking(String what, Collection<String> wanted, Collection<String> found) {
        wanted.stream().filter(w -> !found.contains(w)).forEach(w -> misses.add(w + " " + what));
    }

    private void present(String what, Collection<String> unwanted, Collection<String> found) {
        unwanted.stream().filter(found::contains).forEach(w -> misses.add(w + " " + what));
    }

    private static List<String> ids(List<Material> materials) {
        return materials.stream().map(Material::id).toList();
    }
}
