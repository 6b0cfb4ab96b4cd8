package heapwright.web.site;

/**
 * What every page has round its own matter.
 *
 * @param title the title of the page
 * @param here which door it belongs to, for the navigation
 * @param t the texts
 * @param look how the person wants it
 * @param seal what forms that change something carry
 * @param once tells a form of this page from every other, so that one that is sent twice is known again
 * @param assets stamps of style and script
 * @param version the program's version
 * @param rules how many rules there are
 */
public record Page(
        String title,
        Door here,
        Texts t,
        DisplaySettings look,
        String seal,
        String once,
        Assets assets,
        String version,
        int rules) {

    /** The doors of the navigation, in its order. */
    public enum Door {
        START,
        CHECKUP,
        WHY,
        BUILD,
        PILES,
        KNOWLEDGE,
        SETTINGS
    }

    public boolean at(Door door) {
        return here == door;
    }
}
