package heapwright.report;

import java.util.ArrayList;
import java.util.List;

/** Takes a report apart into sections, for a page that sets them in its own way. */
public final class Sections implements ReportWriter {

    /**
     * A section.
     *
     * @param heading its heading
     * @param lines what it says
     */
    public record Section(String heading, List<Line> lines) {
        public Section {
            lines = List.copyOf(lines);
        }

        /** Its lines with the items that follow one another together. */
        public List<Block> blocks() {
            List<Block> blocks = new ArrayList<>();
            List<Line> together = new ArrayList<>();
            for (Line line : lines) {
                if (!together.isEmpty() && !(line.item() && together.get(0).item())) {
                    blocks.add(new Block(together));
                    together.clear();
                }
                together.add(line);
            }
            if (!together.isEmpty()) {
                blocks.add(new Block(together));
            }
            return blocks;
        }
    }

    /**
     * A paragraph, or the items of one list.
     *
     * @param lines one line, or items that follow one another
     */
    public record Block(List<Line> lines) {
        public Block {
            lines = List.copyOf(lines);
        }

        /** Whether it is a list. */
        public boolean list() {
            return lines.get(0).item();
        }

        /** Whether its items have numbers. */
        public boolean numbered() {
            return lines.get(0).numbered();
        }
    }

    /**
     * A line.
     *
     * @param text its text, without the mark of an item
     * @param item whether it is an item of a list
     * @param numbered whether that item has a number
     */
    public record Line(String text, boolean item, boolean numbered) {}

    private final List<String> headings = new ArrayList<>();
    private final List<List<Line>> lines = new ArrayList<>();

    @Override
    public void heading(String text) {
        headings.add(text);
        lines.add(new ArrayList<>());
    }

    @Override
    public void paragraph(int indent, int hang, String text) {
        if (headings.isEmpty()) {
            heading("");
        }
        boolean numbered = hang > 0 && text.matches("(?s)[0-9]+\\. .*");
        boolean item = numbered || hang > 0 && text.startsWith("- ");
        String plain = item ? text.substring(text.indexOf(' ') + 1) : text;
        lines.get(lines.size() - 1).add(new Line(plain, item, numbered));
    }

    /** What was written, in order. */
    public List<Section> all() {
        List<Section> all = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            all.add(new Section(headings.get(i), lines.get(i)));
        }
        return all;
    }
}
