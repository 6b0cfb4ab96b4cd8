package heapwright.report;

import heapwright.advice.audit.Audit;
import heapwright.advice.fact.Reads;
import heapwright.process.mixture.Contribution;
import java.util.ArrayList;
import java.util.List;

/** Writes the numbers of an audit as a plain table: a row an ingredient, then the mix. */
public final class AuditTable {

    private static final int WIDTH = 80;
    private static final int NAME = 34;
    private static final int COLUMN = 9;
    private static final int INDENT = 3;

    /** Less than a tenth of a gram is nothing to a table of buckets. */
    private static final double LEAST_KG = 1e-4;

    private final Words words;

    public AuditTable(Words words) {
        this.words = words;
    }

    /** The table as text. */
    public String write(Audit audit) {
        List<List<String>> rows = new ArrayList<>();
        List<String> names = new ArrayList<>(List.of(words.text("table.material")));
        rows.add(List.of(
                words.text("table.wet"),
                words.text("table.dry"),
                words.text("table.water"),
                words.text("table.carbon"),
                words.text("table.nitrogen")));
        double[] sums = new double[5];
        for (Contribution c : audit.contributions()) {
            double[] values = {c.kgWet(), c.kgDry(), c.kgWater(), c.kgCarbon(), c.kgNitrogen()};
            for (int i = 0; i < values.length; i++) {
                sums[i] += values[i];
            }
            names.add(c.material().name());
            rows.add(cells(values));
        }
        names.add(words.text("table.sum"));
        rows.add(cells(sums));
        StringBuilder out = new StringBuilder();
        int column = Math.max(
                COLUMN,
                1
                        + rows.stream()
                                .flatMap(List::stream)
                                .mapToInt(String::length)
                                .max()
                                .orElse(0));
        for (int i = 0; i < rows.size(); i++) {
            out.append(row(names.get(i), rows.get(i), column));
        }
        Layout below = new Layout(false);
        below.blank();
        for (Reads reading : audit.readings()) {
            words.fact(reading).ifPresent(t -> below.paragraph(0, INDENT, t));
        }
        return out.append(below).toString();
    }

    private List<String> cells(double[] kilograms) {
        List<String> cells = new ArrayList<>();
        for (double kg : kilograms) {
            cells.add(words.figures().mass(kg < LEAST_KG ? 0 : kg));
        }
        return cells;
    }

    private static String row(String name, List<String> cells, int column) {
        int room = Math.min(NAME, WIDTH - cells.size() * column);
        String shortName = name.length() > room - 1 ? name.substring(0, room - 2) + "…" : name;
        StringBuilder row = new StringBuilder(shortName).append(" ".repeat(room - shortName.length()));
        cells.forEach(c -> row.append(" ".repeat(column - c.length())).append(c));
        return row.append('\n').toString();
    }
}
