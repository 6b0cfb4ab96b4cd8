package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Each pair of the table finds a page that says both, and none that says one of them. */
@DisplayName("What cannot both be told")
class ContradictionTest {

    @Test
    @DisplayName("is found where one page tells it, and where two do")
    void found() {
        for (Contradiction pair : Contradiction.ALL) {
            assertTrue(pair.in(List.of(pair.invented())).isPresent(), pair.toString());
        }
        assertTrue(Contradiction.ALL
                .get(0)
                .in(List.of("coarse material is in order", "coarse material: too little"))
                .isPresent());
    }

    @Test
    @DisplayName("is not found where only one of the two is told")
    void notFound() {
        for (Contradiction pair : Contradiction.ALL) {
            String without = pair.invented().replaceAll(pair.other(), "…");
            assertEquals(Optional.empty(), pair.in(List.of(without)), pair.toString());
        }
        assertEquals(
                List.of(),
                Contradiction.ALL.stream()
                        .flatMap(pair -> pair
                                .in(List.of("Ready for beds; not yet for pots. By the model ready about 2 Sep 2026"
                                        + " Cold and slow: 0 days with the core above 40 °C; 88 in 100 that it freezes through."
                                        + " It will work, but slowly."))
                                .stream())
                        .toList());
    }

    @Test
    @DisplayName("is a quantity with two figures, a part above the whole, and a likely figure at the end of its span")
    void figures() {
        Contradiction.OneOf weight = Contradiction.OneOf.ALL.get(0);
        assertEquals(Optional.empty(), weight.in(List.of("pile about 210 kg; aim 60 %", "pile about 210 kg")));
        assertTrue(weight.in(List.of("pile about 210 kg", "pile about 190 kg")).isPresent());
        assertEquals(
                List.of("140 %", "101 in 100"),
                Contradiction.partsAboveTheWhole("140 % or 101 in 100, 100 %, 0.140 %"));
        assertEquals(List.of(), Contradiction.partsAboveTheWhole("imply 200 % carbon"));
        assertEquals(
                List.of("26 kg (15–26 kg)", "0 (0 to 3)", "0 °C (-7 to 0)", "12 (13 to 15)"),
                Contradiction.endsOfTheirSpan(
                        "26 kg (15–26 kg), 0 (0 to 3) days, 0 °C (-7 to 0), 12 (13 to 15), 5 °C (3 to 9), 12 kg (9–15 kg)"));
    }
}
