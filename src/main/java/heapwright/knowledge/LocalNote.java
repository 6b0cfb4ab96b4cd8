package heapwright.knowledge;

import java.util.List;

/**
 * What a person wrote of the rules of their own place.
 *
 * @param id its id
 * @param cautions the cautions beside which it is told
 * @param text what the rules are, in a sentence or two
 * @param sources keys of sources
 * @param known how it is known
 */
record LocalNote(String id, List<Caution> cautions, String text, List<String> sources, Known known) {

    static final String LIST = "local-notes";
    static final String TABLE = LIST + ".json";

    /** Judgement: two lines beside a caution. */
    private static final int LONGEST = 160;

    static LocalNote of(Row row) {
        String text = row.text("text");
        if (text.length() > LONGEST) {
            throw row.fault("text", text.length() + " letters", LONGEST + " or fewer", "");
        }
        return new LocalNote(
                row.text("id"),
                row.severalIfAny("cautions", Row.Ids.of(Caution.values()))
                        .orElseThrow(() ->
                                row.fault("cautions", "nothing", "one caution or more", "[\"kitchen-waste-rules\"]")),
                text,
                row.texts("sources"),
                row.one("known", Row.Ids.of(Known.values())));
    }
}
