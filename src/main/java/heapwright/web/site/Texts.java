package heapwright.web.site;

import heapwright.report.Catalogue;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;

/** The page's own texts: those of the catalogue under {@code web.}. */
public final class Texts {

    private static final String PREFIX = "web.";

    private final Catalogue catalogue;

    public Texts(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** A text with its places filled. */
    public String of(String key, Object... places) {
        return catalogue.text(PREFIX + key, places);
    }

    /** A text that other doors use too, by its whole key. */
    public String shared(String key, Object... places) {
        return catalogue.text(key, places);
    }

    /** An ISO date as a short day in words. */
    public String day(String isoDate) {
        return LocalDate.parse(isoDate).format(DateTimeFormatter.ofPattern("d MMM", catalogue.locale()));
    }

    /** The language of the texts, as HTML names it. */
    public String language() {
        return catalogue.locale().toLanguageTag();
    }
}
