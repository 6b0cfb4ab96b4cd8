package heapwright.author;

import java.util.List;

/**
 * What a check of knowledge found.
 *
 * @param faults what must be mended, a line each
 * @param looks what may be as it is and is worth a look, a line each; not told while there are faults
 * @param tables how many tables were looked through
 * @param rows how many rows they have
 * @param rules how many rules were looked through
 */
public record CheckReport(List<String> faults, List<String> looks, int tables, int rows, int rules) {

    public CheckReport {
        faults = List.copyOf(faults);
        looks = List.copyOf(looks);
    }
}
