package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import heapwright.Seed;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;

class ClosestTest {

    private static final List<String> IDS = List.of(
            "smells-sour", "smells-ammonia", "leaves-mixed", "leaves-oak", "soggy", "kg", "g", "kitchen-scraps");

    private static Optional<String> near(String word) {
        return Closest.to(word, IDS);
    }

    @Example
    void slipsOfThePenAreForgiven() {
        assertEquals(Optional.of("smells-sour"), near("smels-sour"));
        assertEquals(Optional.of("smells-sour"), near("Smells Sour"));
        assertEquals(Optional.of("smells-sour"), near("smells_suor"));
        assertEquals(Optional.of("soggy"), near("sogy"));
        assertEquals(Optional.of("kg"), near("kq"));
    }

    @Example
    void aPartOfAnIdFindsIt() {
        assertEquals(Optional.of("leaves-mixed"), near("leaves"));
        assertEquals(Optional.of("kitchen-scraps"), near("scraps"));
        assertEquals(Optional.of("leaves-oak"), near("oak"));
        assertEquals(Optional.empty(), near("eav"), "a part is a whole word of it");
        assertEquals(Optional.empty(), Closest.to("by", List.of("by-the-shed")), "two letters are too few");
    }

    @Example
    void whatIsFarOffFindsNothing() {
        assertEquals(Optional.empty(), near("banana"));
        assertEquals(Optional.empty(), near(""));
        assertEquals(Optional.empty(), near("x"));
        assertEquals(Optional.empty(), near("smells-sour".repeat(20)));
    }

    @Example
    void sixtyCharactersAreComparedAndMoreAreNot() {
        String sixty = "leaf-mould".repeat(6);
        assertEquals(Optional.of(sixty), Closest.to(sixty.replaceFirst("leaf", "laef"), List.of(sixty)));
        assertEquals(Optional.empty(), Closest.to(sixty + "s", List.of(sixty)));
    }

    /** Of equally near words the first by the alphabet, whatever the order of the candidates. */
    @Example
    void aTieGoesByTheAlphabet() {
        assertEquals(Optional.of("boot"), Closest.to("bolt", List.of("bout", "boot")));
        assertEquals(Optional.of("boot"), Closest.to("bolt", List.of("boot", "bout")));
    }

    @Example
    void distanceCountsASwapOfNeighboursOnce() {
        assertEquals(0, Closest.slips("heap", "heap"));
        assertEquals(1, Closest.slips("heap", "haep"));
        assertEquals(1, Closest.slips("heap", "hep"));
        assertEquals(1, Closest.slips("heap", "heaps"));
        assertEquals(1, Closest.slips("heap", "heal"));
        assertEquals(4, Closest.slips("", "heap"));
        assertEquals(3, Closest.slips("kitten", "sitting"));
    }

    @Property(tries = 300, seed = Seed.FIXED)
    void distanceIsTheSameBothWaysAndNoLongerThanTheLongerWord(
            @ForAll @StringLength(max = 12) String a, @ForAll @StringLength(max = 12) String b) {
        int slips = Closest.slips(a, b);
        assertEquals(slips, Closest.slips(b, a));
        assertEquals(a.equals(b), slips == 0);
        assertEquals(Math.max(a.length(), b.length()), Math.max(slips, Math.max(a.length(), b.length())));
    }

    @Example
    void aVeryLongWordCostsNothing() {
        List<String> many = Collections.nCopies(1000, "leaves-mixed");
        assertTimeout(Duration.ofSeconds(1), () -> Closest.to("x".repeat(1_000_000), many));
    }
}
