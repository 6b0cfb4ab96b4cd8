package heapwright.web.site;

import java.util.OptionalDouble;

/** Numbers as people type them: a comma for the point, a long minus, spaces round it. */
final class Typed {

    private static final int LONGEST = 20;

    private Typed() {}

    /** The number, if it is one. */
    static OptionalDouble number(String typed) {
        String plain = typed.strip().replace(',', '.').replace('\u2212', '-').replace('\u2013', '-');
        if (plain.length() > LONGEST || !plain.matches("-?[0-9]*\\.?[0-9]+")) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(plain));
    }
}
