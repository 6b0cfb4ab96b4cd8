package heapwright.pile;

import java.util.List;

/** Units that have no others beside them. */
public enum PlainUnit implements Unit {
    /** Percent; of what, the field says. */
    PERCENT("%", "percent", "pct"),
    PH("pH");

    private final List<String> spellings;

    PlainUnit(String... spellings) {
        this.spellings = List.of(spellings);
    }

    @Override
    public String symbol() {
        return spellings.get(0);
    }

    @Override
    public List<String> spellings() {
        return spellings;
    }

    @Override
    public double size() {
        return 1;
    }
}
