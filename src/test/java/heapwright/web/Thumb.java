package heapwright.web;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

/** A person with a phone of 390 by 844 pixels: counts what they tap and how many screens they see on the way. */
final class Thumb {

    static final int WIDTH = 390;
    static final int HEIGHT = 844;

    private static final String BOTTOM = "e => e.getBoundingClientRect().bottom + window.scrollY";

    private final Page page;
    private int taps;
    private int fields;
    private int screens;
    private double lowest;

    Thumb(Page page) {
        this.page = page;
        page.setViewportSize(WIDTH, HEIGHT);
    }

    /** Goes to an address that is open already, as a bookmark is. */
    void open(String address) {
        page.navigate(address);
    }

    /** Taps what stays on the page. */
    void tap(Locator target) {
        look(target);
        target.click();
        taps++;
    }

    /** Taps what leads to another page. */
    void tapTo(Locator target, String address) {
        tap(target);
        page.waitForURL(address);
        turned();
    }

    /** Taps into a field and types with the keyboard of the screen: a tap for each letter. */
    void type(Locator field, String text) {
        look(field);
        field.fill(text);
        taps += 1 + text.length();
        fields++;
    }

    /** Scrolls as far as something that is to be read. */
    void look(Locator what) {
        lowest = Math.max(lowest, ((Number) what.evaluate(BOTTOM)).doubleValue());
    }

    private void turned() {
        screens += here();
        lowest = 0;
    }

    private int here() {
        return (int) Math.ceil(lowest / HEIGHT);
    }

    int taps() {
        return taps;
    }

    /** Fields that were typed into. */
    int fields() {
        return fields;
    }

    /** Screens seen so far, on this page as far as one looked. */
    int screens() {
        return screens + here();
    }
}
