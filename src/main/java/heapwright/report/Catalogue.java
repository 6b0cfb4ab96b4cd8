package heapwright.report;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** Every text of the screens that is not in a knowledge table. */
public final class Catalogue {

    private static final String BUNDLE = "heapwright.messages";

    private final ResourceBundle bundle;
    private final Locale locale;

    public Catalogue(ResourceBundle bundle, Locale locale) {
        this.bundle = bundle;
        this.locale = locale;
    }

    /** The texts in English. */
    public static Catalogue english() {
        return new Catalogue(ResourceBundle.getBundle(BUNDLE, Locale.ROOT), Locale.ENGLISH);
    }

    public Locale locale() {
        return locale;
    }

    /**
     * The text of a key with its places filled.
     *
     * @throws MissingResourceException when no such key exists: our own failure
     */
    public String text(String key, Object... places) {
        String pattern = bundle.getString(key);
        return places.length == 0 ? pattern : new MessageFormat(pattern, locale).format(places);
    }

    /** Whether a key exists. */
    public boolean has(String key) {
        return bundle.containsKey(key);
    }
}
