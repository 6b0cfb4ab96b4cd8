package heapwright.docs;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** A page of Markdown under construction. */
final class Page {

    private final StringBuilder text = new StringBuilder();

    Page(String title) {
        text.append("# ").append(title).append('\n');
    }

    Page section(String title) {
        return block("## " + title);
    }

    /** A part that other pages point to by its id. */
    Page entry(String id, String title) {
        return block("<a id=\"" + id + "\"></a>\n\n### " + title);
    }

    Page paragraph(String words) {
        return block(words);
    }

    /** A paragraph that opens with a word in bold; nothing where there are no words. */
    Page named(String name, String words) {
        return words.isBlank() ? this : block("**" + name + ".** " + words);
    }

    Page head(String... columns) {
        text.append('\n');
        row(columns);
        return row(Arrays.stream(columns).map(c -> "---").toArray(String[]::new));
    }

    Page row(String... cells) {
        text.append(Arrays.stream(cells).map(c -> c.replace("|", "\\|")).collect(Collectors.joining(" | ", "| ", " |")))
                .append('\n');
        return this;
    }

    Page bullets(List<String> lines) {
        text.append('\n');
        lines.forEach(l -> text.append("- ").append(l).append('\n'));
        return this;
    }

    private Page block(String words) {
        text.append('\n').append(words).append('\n');
        return this;
    }

    String write() {
        return text.toString();
    }
}
