package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Afternoon;
import heapwright.advice.Option;
import heapwright.advice.Step;
import heapwright.advice.TestPile;
import heapwright.casebook.JudgedCases;
import heapwright.casebook.JudgedCases.Judged;
import heapwright.knowledge.Dose;
import heapwright.process.dose.Cap;
import heapwright.process.dose.DoseAmount;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Nobody mixes in "fresh greens" in November: what is asked for can be had, and how much of it is said. */
@DisplayName("What the first page asks to be mixed in")
@Tag("thorough")
class FirstPageAmountsTest {

    private static final Set<Dose> FOOD_OR_DRY = EnumSet.of(
            Dose.GREENS, Dose.MANURE, Dose.MEAL, Dose.UREA, Dose.AMMONIUM_SULPHATE, Dose.SOAK_UP, Dose.BIND_NITROGEN);

    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);

    private static boolean mixesIn(Option option) {
        return option.doses().stream().map(DoseAmount::dose).anyMatch(FOOD_OR_DRY::contains);
    }

    private static boolean gives(Option option) {
        return option.doses().stream().anyMatch(DoseAmount::isNeeded);
    }

    /** All but those that only measure and are never looked at one by one. */
    private static List<Judged> cases() {
        return JudgedCases.all().stream()
                .filter(j -> !j.tested().file().startsWith("unfitted/"))
                .toList();
    }

    @Test
    @DisplayName("never leads without an amount where another way for the same has one, in every case")
    void leads() {
        List<String> without = new ArrayList<>();
        int looked = 0;
        for (Judged judged : cases()) {
            for (Step step : judged.advice().steps()) {
                if (mixesIn(step.main())) {
                    looked++;
                    if (!gives(step.main()) && step.alternatives().stream().anyMatch(FirstPageAmountsTest::gives)) {
                        without.add(judged.tested().file() + ": " + step.main().remedy());
                    }
                }
            }
        }
        assertEquals("", String.join("\n", without));
        assertTrue(looked > 100, "only " + looked + " steps");
    }

    @Test
    @DisplayName("has its amount beside it unless its figures show no need, in every case")
    void told() {
        List<String> without = new ArrayList<>();
        JobText jobs = new JobText(WORDS);
        for (Judged judged : cases()) {
            for (Step job : Afternoon.of(judged.advice(), TestPile.KNOWLEDGE).jobs()) {
                boolean wanted =
                        job.main().doses().stream().noneMatch(d -> d.cap().equals(Optional.of(Cap.NO_NEED)));
                if (mixesIn(job.main())
                        && wanted
                        && jobs.amount(job.main(), judged.advice().pile()).isEmpty()) {
                    without.add(judged.tested().file() + ": " + job.main().remedy() + " "
                            + job.main().doses().get(0).cap());
                }
            }
        }
        assertEquals("", String.join("\n", without));
    }
}
