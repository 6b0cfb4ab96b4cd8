package heapwright.pile;

/** Free words in a document: how long they may be, and whether they may run over several lines. */
enum Words {
    NAME(1, 120, false, "\"Heap by the shed\""),
    AMOUNT(1, 400, false, "\"About 3 wheelbarrows of leaves (11 kg).\""),
    NOTE(0, 4000, true, "\"Smelt of earth when opened\"");

    private final int shortest;
    private final int longest;
    private final boolean lines;
    private final String example;

    Words(int shortest, int longest, boolean lines, String example) {
        this.shortest = shortest;
        this.longest = longest;
        this.lines = lines;
        this.example = example;
    }

    int longest() {
        return longest;
    }

    String example() {
        return example;
    }

    String allowed() {
        return "text of " + shortest + " to " + longest + " characters"
                + (shortest > 0 ? ", not only spaces" : "")
                + ", without control characters" + (lines ? " other than line breaks and tabs" : "");
    }

    boolean fit(String text) {
        int length = text.codePointCount(0, text.length());
        return length >= shortest
                && length <= longest
                && (shortest == 0 || !text.isBlank())
                && text.codePoints().allMatch(this::fits);
    }

    private boolean fits(int point) {
        if (point == '\n' || point == '\r' || point == '\t') {
            return lines;
        }
        boolean halfACharacter = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        return !Character.isISOControl(point) && !halfACharacter;
    }
}
