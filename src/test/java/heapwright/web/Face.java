package heapwright.web;

import com.microsoft.playwright.Page;
import java.util.Optional;

/** A way that text may look on the machine of a reader, put upon a page that is open. */
enum Face {
    /** Wide letters; all that a bare Debian with Chromium has. */
    DEJAVU("fonts-dejavu-core", "DejaVu Sans"),

    /** The widths of Arial, which most machines have. */
    LIBERATION("fonts-liberation", "Liberation Sans"),

    /** A face that some read more easily, with letters as wide as DejaVu's and wider gaps. */
    OPENDYSLEXIC("fonts-opendyslexic", "OpenDyslexic"),

    /** Wider than any of these: a quarter upon DejaVu, or where that is missing upon what stands in for it. */
    VERY_WIDE(null, null) {
        @Override
        String style() {
            return broad("normal", "DejaVu Sans", "Liberation Sans")
                    + broad("bold", "DejaVu Sans Bold", "Liberation Sans Bold")
                    + "* { font-family: Broad !important }";
        }

        private String broad(String weight, String first, String second) {
            return "@font-face { font-family: Broad; font-weight: " + weight + "; size-adjust: 125%; src: local('"
                    + first + "'), local('" + second + "') }";
        }
    },

    /** What a reader may set by WCAG 2.2, 1.4.12 (text spacing): nothing may be lost for it. */
    SPACED(null, null) {
        @Override
        String style() {
            return "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }"
                    + " p { margin-bottom: 2em !important }";
        }
    };

    private final String debianPackage;
    private final String family;

    Face(String debianPackage, String family) {
        this.debianPackage = debianPackage;
        this.family = family;
    }

    String style() {
        return "* { font-family: '" + family + "' !important }";
    }

    /** Puts the face on; a sheet made by script is no matter of the Content-Security-Policy, a style element would be. */
    void putOn(Page page) {
        page.evaluate(
                "style => { const sheet = new CSSStyleSheet(); sheet.replaceSync(style);"
                        + " document.adoptedStyleSheets = [sheet]; return document.fonts.ready.then(() => true); }",
                style());
    }

    /** What to install where the face is missing; a text in it is then exactly as wide as one in the fallback. */
    Optional<String> missing(Page page) {
        if (family == null) {
            return Optional.empty();
        }
        boolean here = (Boolean) page.evaluate(
                "family => { const pen = document.createElement('canvas').getContext('2d');"
                        + " const wide = font => { pen.font = '40px ' + font; return pen.measureText('Heap, mild').width; };"
                        + " return wide('\"' + family + '\", monospace') !== wide('monospace'); }",
                family);
        return here ? Optional.empty() : Optional.of(family + " (Debian: apt-get install " + debianPackage + ")");
    }
}
