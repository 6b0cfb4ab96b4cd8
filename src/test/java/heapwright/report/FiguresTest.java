package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Figures for people")
class FiguresTest {

    private final Figures figures = new Figures(Units.METRIC, Catalogue.english());

    @Test
    @DisplayName("come out alike at a half, in whichever order the parts of a sum were added up")
    void settled() {
        double one = 0.1 + 0.2 + 66.2;
        double other = 66.2 + 0.2 + 0.1;
        assertEquals(figures.mass(one), figures.mass(other));
        assertEquals("67 kg", figures.mass(Math.nextDown(66.5)));
        assertEquals("67 kg", figures.mass(Math.nextUp(66.5)));
        assertEquals("66 kg", figures.mass(66.499));
        assertEquals(figures.number(Math.nextDown(0.25), 1), figures.number(Math.nextUp(0.25), 1));
    }
}
