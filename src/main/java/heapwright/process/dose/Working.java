package heapwright.process.dose;

import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import java.util.List;
import java.util.stream.Stream;

/**
 * The figures behind a dose, in the order they are worked out.
 *
 * @param terms the figures
 */
record Working(List<Term> terms) {

    static Working of(List<Term> terms) {
        return new Working(List.copyOf(terms));
    }

    static Working start() {
        return new Working(List.of());
    }

    Working and(Key key, Band value, Basis basis) {
        return new Working(Stream.concat(terms.stream(), Stream.of(new Term(key, value, basis)))
                .toList());
    }

    Working and(Key key, double value, Basis basis) {
        return and(key, Band.exact(value), basis);
    }
}
