package heapwright.advice.audit;

import static heapwright.advice.audit.Audits.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Material;
import heapwright.pile.Pile;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Plan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a recipe gives and when, by what it is mostly made of and by the cold ahead. The places are invented. */
@DisplayName("A recipe")
class ProposalTest {

    private static final String COLD = "[-9,-9,-3,4,11,15,18,16,10,4,-2,-7]";
    private static final String MILD = "[9,9,11,13,15,18,20,20,18,15,12,10]";

    private static Proposal proposal(String built, String year, String recipe) {
        String place = year.isEmpty() ? "" : ",\"place\":{\"monthlyMeanC\":" + year + "}";
        Pile pile = Audits.pile(recipe, place).builtOn(LocalDate.parse(built));
        return Audits.of(pile).proposal().orElseThrow();
    }

    private static String recipe(double manure, double leaves, double kitchen) {
        String all = some("manure-horse-straw", manure, "kg") + "," + some("leaves-mixed", leaves, "kg");
        return kitchen > 0 ? all + "," + some("kitchen-scraps", kitchen, "kg") : all;
    }

    /** Of the loose volume manure leaves 60 %, a kitchen and garden mix 40 %, yard trimmings 38 %: see the sources of Yield. */
    @ParameterizedTest(name = "{0} kg of manure, {1} kg of leaves, {2} kg of scraps")
    @CsvSource({"300, 60, 0, 0.60", "300, 60, 30, 0.60", "60, 100, 0, 0.38", "60, 100, 1, 0.40"})
    @DisplayName("leaves as much compost as what it is mostly made of")
    void leaves(double manure, double leaves, double kitchen, double left) {
        Proposal proposal = proposal("2026-10-18", COLD, recipe(manure, leaves, kitchen));
        assertTrue(proposal.mend().chosen().additions().stream()
                .allMatch(a -> a.material().equals("water")));
        assertEquals(
                left * 1000 * proposal.kept().looseM3().likely(),
                proposal.build().orElseThrow().becomes().litres().likely(),
                1e-6);
    }

    /** Horse manure: 3 to 6 months over winter, 1 to 3 over summer, and three weeks to cure (WSUWHAT, published). */
    @ParameterizedTest(name = "built on {0} where the year is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-10-18 | [-9,-9,-3,4,11,15,18,16,10,4,-2,-7] | 112 | 203",
                "2026-05-01 | [-9,-9,-3,4,11,15,18,16,10,4,-2,-7] | 51 | 112",
                "2026-10-18 | [9,9,11,13,15,18,20,20,18,15,12,10] | 51 | 112",
                "2026-05-01 | '' | 112 | 203"
            })
    @DisplayName("of manure is ready sooner where no cold month is ahead, and not where that is not known")
    void manure(String built, String year, int from, int to) {
        ReadyDays ready = ready(built, year, recipe(300, 60, 0));
        assertEquals(new ReadyDays(from, to), ready);
    }

    /** A usual home pile: 6 to 12 months (ILLEXT, published). */
    @Test
    @DisplayName("of no more manure than other stuff takes as long as any home pile")
    void usual() {
        assertEquals(new ReadyDays(182, 365), ready("2026-10-18", COLD, recipe(60, 100, 20)));
    }

    private record ReadyDays(long from, long to) {}

    private static ReadyDays ready(String built, String year, String recipe) {
        LocalDate day = LocalDate.parse(built);
        Proposal proposal = proposal(built, year, recipe);
        return new ReadyDays(
                proposal.build().orElseThrow().ready().earliest().toEpochDay() - day.toEpochDay(),
                proposal.build().orElseThrow().ready().latest().toEpochDay() - day.toEpochDay());
    }

    @Test
    @DisplayName("is planned for the cold where a month below 5 °C is known to lie ahead")
    void cold() {
        String mix = recipe(60, 100, 20);
        assertTrue(
                proposal("2026-10-18", COLD, mix).build().orElseThrow().plan().cold());
        assertTrue(
                !proposal("2026-10-18", MILD, mix).build().orElseThrow().plan().cold());
        assertTrue(
                !proposal("2026-05-01", COLD, mix).build().orElseThrow().plan().cold());
        assertTrue(!proposal("2026-10-18", "", mix).build().orElseThrow().plan().cold());
    }

    private static Proposal of(
            Proposal p,
            List<Material> leftOut,
            List<Trimming.Trimmed> trimmed,
            Optional<Trimming.Trimmed> less,
            Mend mend,
            Optional<Proposal.Build> build) {
        return new Proposal(p.kept(), leftOut, trimmed, less, mend, p.times(), build);
    }

    @Test
    @DisplayName("is built as told only where nothing is left out, cut back, lessened, added or to be got first")
    void asTold() {
        Proposal told = proposal("2026-10-18", COLD, recipe(60, 100, 20));
        Mend mend = told.mend();
        Mend right = new Mend(
                mend.offers(),
                Optional.empty(),
                new Plan(List.of(), mend.exact().after(), 0, Set.of()),
                Optional.empty(),
                Optional.empty(),
                false,
                0,
                false);
        Mend more = new Mend(
                mend.offers(),
                Optional.empty(),
                new Plan(
                        List.of(new Addition("leaves-mixed", 5, 60, 1)),
                        mend.exact().after(),
                        5,
                        Set.of()),
                Optional.empty(),
                Optional.empty(),
                true,
                0,
                false);
        Proposal.Build build = told.build().orElseThrow();
        Proposal.Build counting =
                new Proposal.Build(build.plan(), List.of("leaves-mixed"), build.becomes(), build.ready());
        Material leaves = Audits.advisor().knowledge().materials().get("leaves-mixed");
        Trimming.Trimmed some = new Trimming.Trimmed(leaves, 30);
        assertTrue(of(told, List.of(), List.of(), Optional.empty(), right, Optional.of(build))
                .asTold());
        assertFalse(of(told, List.of(leaves), List.of(), Optional.empty(), right, Optional.of(build))
                .asTold());
        assertFalse(of(told, List.of(), List.of(some), Optional.empty(), right, Optional.of(build))
                .asTold());
        assertFalse(of(told, List.of(), List.of(), Optional.of(some), right, Optional.of(build))
                .asTold());
        assertFalse(of(told, List.of(), List.of(), Optional.empty(), more, Optional.of(build))
                .asTold());
        assertFalse(of(told, List.of(), List.of(), Optional.empty(), right, Optional.of(counting))
                .asTold());
        assertFalse(of(told, List.of(), List.of(), Optional.empty(), right, Optional.empty())
                .asTold());
    }
}
