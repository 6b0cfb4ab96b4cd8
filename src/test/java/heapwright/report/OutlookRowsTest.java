package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The rows of an outlook")
class OutlookRowsTest {

    private static double[] core(int days, int hotFrom, int hotTo) {
        double[] core = new double[days];
        Arrays.fill(core, 10);
        Arrays.fill(core, hotFrom, hotTo, 55);
        return core;
    }

    @Test
    @DisplayName("come weekly while the core is hot and to the week after, then at even distances to the last day")
    void hotWeeks() {
        List<Integer> rows = OutlookReport.rows(core(203, 3, 24));
        assertEquals(List.of(0, 7, 14, 21, 28), rows.subList(0, 5));
        assertEquals(202, rows.get(rows.size() - 1));
        assertTrue(rows.size() <= 13, rows.toString());
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i) > rows.get(i - 1), rows.toString());
        }
    }

    @Test
    @DisplayName("are eight over a time in which it is never hot")
    void cold() {
        List<Integer> rows = OutlookReport.rows(core(203, 0, 0));
        assertEquals(8, rows.size());
        assertEquals(0, rows.get(0));
        assertEquals(202, rows.get(7));
    }

    @Test
    @DisplayName("end with the last day, also where it is hot to the end or short")
    void ends() {
        assertEquals(29, last(OutlookReport.rows(core(30, 0, 30))));
        assertEquals(1, last(OutlookReport.rows(core(2, 0, 2))));
        assertEquals(29, last(OutlookReport.rows(core(30, 0, 0))));
    }

    private static int last(List<Integer> rows) {
        return rows.get(rows.size() - 1);
    }
}
