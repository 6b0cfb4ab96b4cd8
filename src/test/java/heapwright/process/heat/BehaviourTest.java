package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

@DisplayName("The model beside what was published")
class BehaviourTest {
    private static final List<Behaviour> ALL = Behaviours.all();

    @TestFactory
    @DisplayName("stands where the table says it is held")
    Stream<DynamicTest> held() {
        return ALL.stream()
                .map(b -> DynamicTest.dynamicTest(b.row() + " " + b.what() + " (" + b.source() + ")", () -> {
                    double figure = b.model().getAsDouble();
                    assertTrue(b.held().holds(figure), figure + " is not in " + b.held());
                }));
    }

    @Test
    @DisplayName("is held to less than was published in few places, and never to something else")
    void honest() {
        for (Behaviour b : ALL) {
            assertTrue(
                    b.held().low() <= b.published().low()
                            && b.held().high() >= b.published().high(),
                    b.what() + ": the held range must hold the published one");
        }
        long missed = ALL.stream()
                .filter(b -> !b.published().holds(b.model().getAsDouble()))
                .count();
        assertTrue(missed <= ALL.size() / 5, missed + " figures of " + ALL.size() + " are not as published");
    }
}
