package heapwright.pile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The spellings of a group of units. */
final class UnitWords {

    private final List<Unit> units;
    private final Map<String, Unit> bySpelling = new LinkedHashMap<>();

    private UnitWords(List<Unit> units) {
        this.units = List.copyOf(units);
        for (Unit unit : units) {
            for (String spelling : unit.spellings()) {
                bySpelling.put(plain(spelling), unit);
            }
        }
    }

    static UnitWords of(Unit[]... groups) {
        List<Unit> units = new ArrayList<>();
        for (Unit[] group : groups) {
            units.addAll(List.of(group));
        }
        return new UnitWords(units);
    }

    Optional<Unit> find(String spelling) {
        return Optional.ofNullable(bySpelling.get(plain(spelling)));
    }

    List<Unit> units() {
        return units;
    }

    /** The symbols, for messages: "kg, g, t, lb, oz". */
    String listed() {
        return units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }

    /** The symbol whose spelling is nearest. */
    Optional<String> closest(String spelling) {
        return Closest.to(plain(spelling), bySpelling.keySet())
                .map(near -> bySpelling.get(near).symbol());
    }

    /** One spelling for all: {@code M³}, {@code m^3} and {@code m3} are the same. */
    static String plain(String spelling) {
        return spelling.strip()
                .toLowerCase(Locale.ROOT)
                .replace("°", "")
                .replace("º", "")
                .strip()
                .replace('³', '3')
                .replace("^", "")
                .replace(' ', '-');
    }
}
