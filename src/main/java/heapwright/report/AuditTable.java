package heapwright.report;

import heapwright.advice.audit.Audit;
import heapwright.advice.fact.Reads;
import heapwright.process.mixture.Contribution;
import java.util.ArrayList;
import java.util.List;

/** Writes the numbers of an audit as a plain table: a row an ingredient, then the mix. */
public final class AuditTable {

    private static final int NAME = 34;
    private static final int COLUMN = 9;

    private final Words words;

    public AuditTable(Words words) {
        this.words = words;
    }

    /** The table as text. */
    public String write(Audit audit) {
        StringBuilder out = new StringBuilder();
        out.append(row(
                words.text("table.material"),
                List.of(
                        words.text("table.wet"),
                        words.text("table.dry"),
                        words.text("table.water"),
                        words.text("table.carbon"),
                        words.text("table.nitrogen"))));
        double[] sums = new double[5];
        for (Contribution c : audit.mixture().contributions()) {
            double[] values = {c.kgWet(), c.kgDry(), c.kgWater(), c.kgCarbon(), c.kgNitrogen()};
            for (int i = 0; i < values.length; i++) {
                sums[i] += values[i];
            }
            out.append(row(c.material().name(), cells(values)));
        }
        out.append(row(words.text("table.sum"), cells(sums)));
        out.append('\n');
        for (Reads reading : audit.readings()) {
            words.fact(reading).ifPresent(t -> out.append(t).append('\n'));
        }
        return out.toString();
    }

    private List<String> cells(double[] kilograms) {
        List<String> cells = new ArrayList<>();
        for (double kg : kilograms) {
            cells.add(words.figures().mass(kg));
        }
        return cells;
    }

    private static String row(String name, List<String> cells) {
        StringBuilder row = new StringBuilder();
        String shortName = name.length() > NAME - 1 ? name.substring(0, NAME - 2) + "…" : name;
        row.append(shortName).append(" ".repeat(NAME - shortName.length()));
        cells.forEach(c ->
                row.append(" ".repeat(Math.max(1, COLUMN - c.length()))).append(c));
        return row.append('\n').toString();
    }
}
