package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.process.heat.Constants;
import heapwright.process.heat.Day;
import heapwright.process.heat.Event;
import heapwright.process.heat.HeatModel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented: a bucket of scraps on 1 May, then a bucket of scraps and one of leaves a week up to 16 October. */
@DisplayName("A bin fed bit by bit")
class FedBinTest {

    private static final double M2 = 0.36;

    private static PileModel fed(String container) {
        List<String> log = new ArrayList<>();
        for (LocalDate day = LocalDate.of(2026, 5, 8);
                day.isBefore(LocalDate.of(2026, 10, 20));
                day = day.plusDays(7)) {
            log.add("{'date': '" + day + "', 'added': [{'material': 'kitchen-scraps', 'amount': 1, 'unit': 'bucket'},"
                    + "{'material': 'leaves-shredded', 'amount': 1, 'unit': 'bucket'}]}");
        }
        return WinterPiles.model(TestPile.of("'built': '2026-05-01', 'asOf': '2026-10-20', 'place': {'latitude': 52},"
                + "'container': {" + container + "}, 'recipe': [{'material': 'kitchen-scraps', 'amount': 1,"
                + "'unit': 'bucket'}], 'log': [" + String.join(",", log) + "]"));
    }

    private static double put(PileModel model, int day) {
        return model.start().matter().volumeM3()
                + model.events().stream()
                        .filter(e -> e.day() <= day)
                        .filter(Event.Add.class::isInstance)
                        .mapToDouble(e -> ((Event.Add) e).matter().volumeM3())
                        .sum();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'kind': 'fed-bin', 'length': {'value': 0.6, 'unit': 'm'}, 'width': {'value': 0.6, 'unit': 'm'}",
                "'kind': 'fed-bin', 'width': {'value': 60, 'unit': 'cm'}",
                "'kind': 'closed-bin', 'volume': {'value': 216, 'unit': 'L'}",
                "'kind': 'closed-bin'"
            })
    @DisplayName("stands on its own ground, and never higher than what was put in makes on that")
    void noTower(String container) {
        PileModel model = fed(container);
        assertEquals(M2, model.start().lengthM() * model.start().widthM(), 1e-9);
        for (Day day : HeatModel.run(
                        model.start(), model.climate().weather(), model.events(), model.age() + 1, Constants.standard())
                .days()) {
            assertTrue(day.heightM() <= put(model, day.day()) / M2 + 1e-9, "day " + day.day() + ": " + day.heightM());
        }
        assertTrue(put(model, model.age()) > 0.2, "it holds what was fed");
    }

    @Test
    @DisplayName("is a heap as wide as it came to be high, where nothing is told of what holds it")
    void heap() {
        PileModel model = fed("'kind': 'open-heap'");
        double height = put(model, model.age())
                / (model.start().lengthM() * model.start().widthM());
        assertEquals(model.start().widthM(), height, 0.15 * height);
    }
}
