package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.heat.Range;
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

    @Test
    @DisplayName("come with their span, and where they are told like one end of it, with the other alone")
    void within() {
        assertEquals("12 kg (9–15 kg)", figures.within("12 kg", "9 kg", "15 kg"));
        assertEquals("1.1 kg (490 g–1.6 kg)", figures.within("1.1 kg", "490 g", "1.6 kg"));
        assertEquals("26 kg (at least 15 kg)", figures.within("26 kg", "15 kg", "26 kg"));
        assertEquals("11 kg (up to 16 kg)", figures.within("11 kg", "11 kg", "16 kg"));
        assertEquals("11 kg", figures.within("11 kg", "11 kg", "11 kg"));
        assertEquals("5 (3 to 9)", figures.count(new Range(3, 5, 9)));
        assertEquals("0 (up to 3)", figures.count(new Range(0.2, 0.4, 3)));
        assertEquals("9 (at least 3)", figures.count(new Range(3, 8.9, 9.1)));
        assertEquals("5 °C (-3 to 9)", figures.temperature(-3, 5, 9));
        assertEquals("0 °C (from -7)", figures.temperature(-7, 0, 0.4));
        assertEquals("-3 °C (up to 1)", figures.temperature(-3, -3, 1));
        assertEquals("21 °C", figures.temperature(21, 21, 21.2));
    }
}
