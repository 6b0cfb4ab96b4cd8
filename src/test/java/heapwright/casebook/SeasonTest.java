package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Afternoon;
import heapwright.advice.Option;
import heapwright.advice.Step;
import heapwright.advice.TestPile;
import heapwright.pile.Action;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Pile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten seasons, three of them with people who cannot do the usual; what each day asks is judged by CasesTest. */
@DisplayName("A season")
class SeasonTest {

    /** A pile that was turned is left alone as long, days; common practice, no source. */
    private static final int REST = 5;

    private static final Pile WHOLE = TestPile.of("'built': '2025-10-01', 'asOf': '2026-01-10',"
            + "'recipe': [{'material': 'leaves-mixed', 'amount': 9, 'unit': 'bucket', 'date': '2025-11-01'}],"
            + "'log': [{'date': '2025-10-20', 'seen': ['soggy']}, {'date': '2025-11-20', 'notSeen': ['soggy']}],"
            + "'advised': [{'date': '2025-10-20', 'step': 'turn-fully', 'look': '2025-10-28', 'outcome': 'helped'}]");

    private static Pile on(String day) {
        return new Season(WHOLE).on(LocalDate.parse(day));
    }

    @Test
    @DisplayName("is looked at as its file stood on the day")
    void cut() {
        assertEquals(0, on("2025-10-20").advised().size(), "the advice of the day itself is not taken on yet");
        assertEquals(Outcome.OPEN, on("2025-10-27").advised().get(0).outcome());
        assertEquals(Outcome.HELPED, on("2025-10-28").advised().get(0).outcome());
        assertEquals(1, on("2025-11-19").log().size());
        assertEquals(2, on("2025-11-20").log().size());
        assertEquals(0, on("2025-10-31").recipe().size());
        assertEquals(1, on("2025-11-01").recipe().size());
        assertEquals(LocalDate.parse("2025-11-01"), on("2025-11-01").asOf());
    }

    @Test
    @DisplayName("refuses a day that is none of its own")
    void otherDay(@TempDir Path folder) throws Exception {
        String text = Files.readString(Path.of("cases", "seasons", "rats.json"));
        Files.writeString(
                folder.resolve("rats.json"), text.replace("\"asOf\": \"2025-11-04\"", "\"asOf\": \"2024-11-04\""));
        CaseFault fault = assertThrows(CaseFault.class, () -> new Casebook(TestPile.KNOWLEDGE).below(folder));
        assertEquals("rats.json: \"2024-11-04\" is no day of the season, such as 2026-03-20", fault.getMessage());
    }

    @Tag("thorough")
    @Test
    @DisplayName("is never told to turn a pile again that was turned days before, nor twice the same without an amount")
    void repeatsNothing() {
        List<String> wrong = new ArrayList<>();
        List<Case> looks = new Casebook(TestPile.KNOWLEDGE).below(Path.of("cases", "seasons"));
        for (Case look : looks) {
            Pile pile = look.pile();
            boolean turned = pile.log().stream()
                    .anyMatch(e -> e.done().contains(Action.TURNED_FULLY)
                            && ChronoUnit.DAYS.between(e.date(), pile.asOf()) < REST);
            for (Step job : Afternoon.of(TestPile.ADVISOR.advise(pile), TestPile.KNOWLEDGE)
                    .jobs()) {
                Option main = job.main();
                if (turned
                        && TestPile.KNOWLEDGE
                                .remedies()
                                .get(main.remedy())
                                .does()
                                .turns()) {
                    wrong.add(look.file() + ": " + main.remedy() + " again");
                }
                boolean done = pile.advised().stream()
                        .anyMatch(a -> a.step().equals(main.remedy().id())
                                && (a.outcome() == Outcome.HELPED || a.outcome() == Outcome.DID_NOT_HELP)
                                && ChronoUnit.DAYS.between(a.date(), pile.asOf()) < 30);
                if (done && main.doses().isEmpty() && !job.again()) {
                    wrong.add(look.file() + ": " + main.remedy() + " in the same words");
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(looks.size() >= 40, "only " + looks.size() + " looks");
    }
}
