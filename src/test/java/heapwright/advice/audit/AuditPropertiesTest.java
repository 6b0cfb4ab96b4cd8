package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import heapwright.Seed;
import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.pile.Pile;
import heapwright.pile.PileArbitraries;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Contribution;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Mixture;
import heapwright.report.AuditJson;
import heapwright.report.AuditReport;
import heapwright.report.AuditTable;
import heapwright.report.Units;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** What holds for the audit of any pile that a document can describe. */
@Tag("thorough")
class AuditPropertiesTest {

    private static final int WIDTH = 80;

    private final Schema schema = schema();

    @Property(tries = 150, seed = Seed.FIXED)
    void massWaterCarbonAndNitrogenAreConserved(@ForAll("piles") Pile pile) {
        Mixture mix = Audits.of(pile).mixture();
        boolean dried = mix.moistureBasis() == Basis.MEASURED;
        conserved(mix, Contribution::kgDry, mix.masses().dry().likely());
        conserved(mix, Contribution::kgCarbon, mix.masses().carbon().likely());
        conserved(mix, Contribution::kgNitrogen, mix.masses().nitrogen().likely());
        if (!dried) {
            conserved(mix, Contribution::kgWater, mix.masses().water().likely());
            conserved(mix, Contribution::kgWet, mix.masses().wet().likely());
        }
        mix.contributions().forEach(c -> assertEquals(c.kgWet(), c.kgDry() + c.kgWater(), 1e-9 * (1 + c.kgWet())));
    }

    @Property(tries = 150, seed = Seed.FIXED)
    void theLayersAddUpToWhatIsKeptAndTheMend(@ForAll("piles") Pile pile) {
        Audits.of(pile).proposal().filter(p -> p.build().isPresent()).ifPresent(p -> {
            Proposal.Build build = p.build().orElseThrow();
            Plan mend = !build.countsOn().isEmpty()
                    ? p.mend().unlock().orElseThrow().plan()
                    : p.mend().chosen();
            Map<String, Double> wanted = new TreeMap<>();
            p.kept().contributions().stream()
                    .filter(c -> !Density.fillsGaps(c.material()))
                    .forEach(c -> wanted.merge(c.material().id(), c.kgWet(), Double::sum));
            double poured = p.kept().contributions().stream()
                    .filter(c -> Density.fillsGaps(c.material()))
                    .mapToDouble(Contribution::kgWet)
                    .sum();
            mend.additions().stream()
                    .filter(a -> !a.material().equals(Offer.WATER))
                    .forEach(a -> wanted.merge(a.material(), a.kg(), Double::sum));
            Map<String, Double> laid = new TreeMap<>();
            build.plan().base().forEach(l -> laid.merge(l.material(), l.kg(), Double::sum));
            build.plan().layers().forEach(l -> laid.merge(l.material(), l.kg() * l.times(), Double::sum));
            build.plan().feeds().forEach(f -> laid.merge(f.material(), f.kgEach() * f.parts(), Double::sum));
            wanted.values().removeIf(kg -> kg < 1e-9);
            laid.values().removeIf(kg -> kg < 1e-9);
            assertEquals(wanted.keySet(), laid.keySet());
            wanted.forEach((id, kg) -> assertEquals(kg, laid.get(id), 1e-9 * (1 + kg), id));
            double water = poured
                    + mend.additions().stream()
                            .filter(a -> a.material().equals(Offer.WATER))
                            .mapToDouble(Addition::litres)
                            .sum();
            assertEquals(water, build.plan().waterPerRound() * build.plan().rounds(), 1e-9 * (1 + water));
        });
    }

    @Property(tries = 150, seed = Seed.FIXED)
    void nothingIsNegativeAndNoMoreIsAddedThanThereIs(@ForAll("piles") Pile pile) {
        Audits.of(pile).proposal().ifPresent(p -> {
            Mend mend = p.mend();
            Stream.concat(Stream.of(mend.chosen()), mend.unlock().stream().map(u -> u.plan()))
                    .flatMap(plan -> plan.additions().stream())
                    .forEach(a -> assertTrue(a.kg() > 0 && a.litres() > 0 && Double.isFinite(a.kg()), a.toString()));
            for (Addition a : mend.chosen().additions()) {
                double most = mend.offers().stream()
                        .filter(o -> o.id().equals(a.material()))
                        .mapToDouble(Offer::mostKg)
                        .sum();
                assertTrue(a.kg() <= most * (1 + 1e-9) + 1e-9, a + " of " + most);
            }
            assertTrue(p.times() >= 1);
            if (p.build().isEmpty()) {
                assertTrue(mend.unlock().isEmpty(), "something more would mend it, yet it is not planned with");
                return;
            }
            BuildPlan plan = p.build().orElseThrow().plan();
            for (Layer l :
                    Stream.concat(plan.base().stream(), plan.layers().stream()).toList()) {
                assertTrue(l.litres() > 0 && l.kg() > 0 && l.thicknessCm() > 0, l.toString());
                assertTrue(l.times() >= 1 && l.times() <= plan.rounds(), l.toString());
            }
            assertTrue(plan.heightM() > 0 && plan.settledM() > 0 && plan.settledM() <= plan.heightM() * (1 + 1e-9));
        });
    }

    @Property(tries = 150, seed = Seed.FIXED)
    void everyFormCanBeWrittenAndTheTextFitsThePage(@ForAll("piles") Pile pile) {
        Audit audit = Audits.advisor().audit(pile, OptionalDouble.of(33)).orElseThrow();
        for (Units units : Units.values()) {
            narrow(new AuditReport(Audits.words(units), false).write(audit));
            narrow(new AuditTable(Audits.words(units)).write(audit));
        }
        String json = new AuditJson(Audits.words(Units.METRIC), "test").write(audit);
        assertEquals(List.of(), schema.validate(json, InputFormat.JSON).stream().toList(), json);
        assertEquals(
                json,
                new AuditJson(Audits.words(Units.METRIC), "test")
                        .write(Audits.advisor()
                                .audit(pile, OptionalDouble.of(33))
                                .orElseThrow()));
    }

    private static void conserved(Mixture mix, ToDoubleFunction<Contribution> part, double whole) {
        double sum = mix.contributions().stream().mapToDouble(part).sum();
        assertEquals(whole, sum, 1e-9 * (1 + whole));
    }

    private static void narrow(String text) {
        text.lines().forEach(l -> assertTrue(l.codePointCount(0, l.length()) <= WIDTH, l));
    }

    private static Schema schema() {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(Files.readString(Path.of("docs", "schema", "audit.schema.json")), InputFormat.JSON);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Provide
    Arbitrary<Pile> piles() {
        return PileArbitraries.piles(Audits.advisor().knowledge().vocabulary())
                .filter(p -> Audits.advisor().audit(p, OptionalDouble.empty()).isPresent());
    }
}
