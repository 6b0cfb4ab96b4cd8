package heapwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.LengthUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type; the phrases are invented. */
@DisplayName("A person's own words")
class PhrasesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 28);

    private final SignPhrases phrases =
            new SignPhrases(TestPile.KNOWLEDGE.signs().values());

    @ParameterizedTest
    @ValueSource(
            strings = {"y", "n", "yes", "no", "s", "w", "e", "?", "-", "1", "ok", "it", "the pile", "is", "not", "xyzzy"
            })
    @DisplayName("are never a sign when they are a letter, a yes or nothing")
    void nothing(String said) {
        assertEquals(List.of(), phrases.hear(said).meant(), said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "not wet|SOGGY,SQUEEZE_STREAMS",
                "isn't wet anymore|SOGGY,SQUEEZE_STREAMS",
                "it isn't too wet|SOGGY,SQUEEZE_STREAMS",
                "not dry|DUST_DRY,SQUEEZE_CRUMBLES",
                "it is not hot|CORE_HOT",
                "no longer warm|CORE_WARM,CORE_HOT",
                "not cold|CORE_COLD"
            })
    @DisplayName("deny plainly what is not wet, dry, hot, warm or cold today, and nobody is asked again")
    void plainlyNot(String said, String signs) {
        PhraseMeaning heard = phrases.hear(said);
        assertTrue(heard.certain() && heard.denied(), said);
        assertEquals(
                List.of(signs.split(",")),
                heard.meant().stream().map(Sign::name).toList());
    }

    @Test
    @DisplayName("of a wet heap are asked about, and of one that was never hot tell of all its time")
    void plainly() {
        assertFalse(phrases.hear("wet").certain());
        assertEquals(
                List.of(Sign.NEVER_HEATED), phrases.hear("it was never hot").meant());
        assertEquals(
                List.of(Sign.NEVER_HEATED), phrases.hear("has not been hot").meant());
        assertFalse(phrases.hear("it was never hot").denied());
    }

    @ParameterizedTest
    @CsvSource({
        "sour smell, SMELLS_SOUR",
        "it smells sour, SMELLS_SOUR",
        "smells sour, SMELLS_SOUR",
        "Soggy!, SOGGY",
        "the pile is soggy, SOGGY",
        "ammonia, SMELLS_AMMONIA",
        "never heated, NEVER_HEATED",
        "not turned, NEVER_TURNED",
        "never turned it, NEVER_TURNED",
        "I have not turned it, NEVER_TURNED",
        "cold inside, CORE_COLD",
        "it's soggy, SOGGY",
        "no cover, RAIN_GETS_IN",
        "not shrinking, NOT_SHRINKING",
        "it has gone all slimy, SLIMY",
        "gone soggy, SOGGY",
        "nothing but slime, SLIMY",
        "no end of rats, RODENTS",
        "pongs of cat wee, SMELLS_AMMONIA",
        "stinks of bad eggs, SMELLS_ROTTEN_EGG",
        "whiffs of beer, SMELLS_ALCOHOL",
        "it hasn't shrunk at all, NOT_SHRINKING",
        "sopping wet, SOGGY"
    })
    @DisplayName("are noted as the one sign that they name")
    void one(String said, Sign sign) {
        PhraseMeaning heard = phrases.hear(said);
        assertEquals(List.of(sign), heard.meant());
        assertFalse(heard.denied());
    }

    @ParameterizedTest
    @CsvSource({
        "smell of ammonia gone, SMELLS_AMMONIA",
        "the slime has gone away, SLIMY",
        "rats gone now, RODENTS",
        "not soggy any more, SOGGY",
        "no longer soggy, SOGGY",
        "no rats, RODENTS",
        "not soggy, SOGGY",
        "it isn't soggy, SOGGY",
        "no sour smell, SMELLS_SOUR",
        "no ammonia, SMELLS_AMMONIA"
    })
    @DisplayName("are noted as not so when they say so")
    void denied(String said, Sign sign) {
        PhraseMeaning heard = phrases.hear(said);
        assertEquals(List.of(sign), heard.meant());
        assertTrue(heard.denied());
    }

    @ParameterizedTest
    @ValueSource(strings = {"no smell", "no bad smell", "it doesn't smell", "does not smell", "doesn't smell at all"})
    @DisplayName("deny every bad smell when there is none")
    void noSmell(String said) {
        PhraseMeaning heard = phrases.hear(said);
        assertTrue(heard.certain() && heard.denied(), said);
        assertTrue(heard.meant().containsAll(List.of(Sign.SMELLS_SOUR, Sign.SMELLS_ROTTEN_EGG, Sign.SMELLS_BURNT)));
        assertFalse(heard.meant().contains(Sign.SMELLS_EARTHY));
        assertFalse(heard.meant().contains(Sign.BAG_TEST_SMELLS), "nobody sealed a sample");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "smell",
                "cold",
                "warm",
                "ash",
                "wet",
                "flies and mould",
                "it stinks",
                "it pongs",
                "crawling with little flies",
                "smells bad",
                "it's dry"
            })
    @DisplayName("are given back as a choice, or as not understood, where they could mean several signs")
    void several(String said) {
        assertFalse(phrases.hear(said).certain(), said + " " + phrases.hear(said));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nothing",
                "none",
                "no",
                "nobody hurt",
                "no one is hurt",
                "nobody is ill",
                "not sure",
                "don't know"
            })
    @DisplayName("say that there is nothing to note")
    void nothingToNote(String said) {
        PhraseMeaning heard = phrases.hear(said);
        assertTrue(heard.certain() && heard.meant().isEmpty(), said + " " + heard);
    }

    @ParameterizedTest
    @CsvSource({"it was hot, NEVER_HEATED", "turned, NEVER_TURNED", "I turned it, NEVER_TURNED"})
    @DisplayName("are no yes to a sign that says the opposite")
    void notTheOpposite(String said, Sign sign) {
        PhraseMeaning heard = phrases.hear(said);
        assertFalse(heard.meant().contains(sign) && !heard.denied(), heard.toString());
    }

    @Test
    @DisplayName("name a sign by every id, short name and alias, and no other sign than one of that name")
    void everyName() {
        for (SignInfo sign : TestPile.KNOWLEDGE.signs().values()) {
            for (String name : sign.aliases()) {
                assertTrue(phrases.hear(name).meant().contains(sign.id()), name);
            }
            assertEquals(List.of(sign.id()), phrases.hear(sign.id().id()).meant());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "10 weeks, 2026-09-19",
        "10, 2026-09-19",
        "ten weeks ago, 2026-09-19",
        "about 3 months, 2026-08-29",
        "a month, 2026-10-29",
        "20 days old, 2026-11-08",
        "since October, 2026-10-15",
        "3 October, 2026-10-03",
        "Oct 3, 2026-10-03",
        "since december, 2025-12-15",
        "October 2025, 2025-10-15",
        "2026-10-03, 2026-10-03",
        "November, 2026-11-01",
        "6 wks, 2026-10-17",
        "6w, 2026-10-17",
        "10 weeks or so, 2026-09-19",
        "a fortnight, 2026-11-14",
        "3rd of October, 2026-10-03",
        "mid-October, 2026-10-15",
        "since last October, 2026-10-15",
        "yesterday, 2026-11-27",
        "today, 2026-11-28",
        "two and a half years, 2024-05-29",
        "2½ years, 2024-05-29",
        "a year and a half, 2025-05-29",
        "18 months, 2025-05-29",
        "3 years, 2023-11-28",
        "since 2023, 2023-07-01",
        "2026, 2026-01-01"
    })
    @DisplayName("tell an age")
    void ages(String said, LocalDate day) {
        assertEquals(Optional.of(day), AgePhrase.day(said, TODAY), said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"y", "soon", "2027-01-01", "2026-02-30", "31 june", "-3", "week", "99999999999999 weeks", ""})
    @DisplayName("tell no age where they are none, or one that is still to come")
    void noAge(String said) {
        assertEquals(Optional.empty(), AgePhrase.day(said, TODAY), said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"three weeks old", "it is 21 days old", "the heap is 3 wks old", "made 3 weeks ago", "3 weeks"})
    void theAgeOfAPileAmongOtherThings(String said) {
        assertEquals(Optional.of(TODAY.minusWeeks(3)), AgePhrase.ofPile(said, TODAY), said);
        assertEquals(!said.equals("3 weeks"), AgePhrase.saysAge(said), said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"3", "old roofing", "since October", "cold for three weeks", "heated for two weeks", "old", "May"
            })
    void whatIsNoAgeOfAPile(String said) {
        assertEquals(Optional.empty(), AgePhrase.ofPile(said, TODAY), said);
    }

    /** A foot is 0.3048 m and an inch 2.54 cm by definition (1959 agreement). */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "3 ft, 0.9144",
                "3', 0.9144",
                "4 feet 6 inches, 1.3716",
                "90 cm, 0.9",
                "1.2, 1.2",
                "|1,5 m|, 1.5",
                "36 in, 0.9144",
                "about 1 m, 1.0",
                "a metre, 1.0",
                "roughly 3 ft, 0.9144"
            })
    @DisplayName("tell a length")
    void lengths(String said, double metres) {
        assertEquals(metres, LengthPhrase.metres(said, LengthUnit.METRE).orElseThrow(), 1e-9, said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"y", "3 weeks", "big", "", "3 ft big", "3 ft 6", "1 m x 1 m"})
    @DisplayName("tell no length where they are none")
    void noLength(String said) {
        assertTrue(LengthPhrase.metres(said, LengthUnit.METRE).isEmpty(), said);
        assertEquals(List.of(), LengthPhrase.sides(said, LengthUnit.METRE), said);
    }

    @ParameterizedTest
    @CsvSource({
        "4 ft x 4 ft x 3 ft, 1.2192, 1.2192, 0.9144",
        "4 x 4 x 3 ft, 1.2192, 1.2192, 0.9144",
        "about 1 m by 1 m by 80 cm, 1, 1, 0.8",
        "1.2×1.2×1, 1.2, 1.2, 1",
        "about a metre each way, 1, 1, 1",
        "3 ft a side, 0.9144, 0.9144, 0.9144",
        "90 cm, 0.9, 0.9, 0.9"
    })
    @DisplayName("tell the sides of a pile, one for all or each by itself")
    void sides(String said, double length, double width, double height) {
        List<Double> sides = LengthPhrase.sides(said, LengthUnit.METRE);
        assertEquals(3, sides.size(), said);
        assertEquals(length, sides.get(0), 1e-9, said);
        assertEquals(width, sides.get(1), 1e-9, said);
        assertEquals(height, sides.get(2), 1e-9, said);
    }
}
