package heapwright.pile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Gathers what is wrong with one document; the nearest allowed words are sought only for what is shown in the end. */
final class Findings {

    private record Finding(
            ValuePath at,
            TextPosition spot,
            String found,
            String allowed,
            String example,
            Supplier<Optional<String>> closest) {}

    private static final Supplier<Optional<String>> NOTHING_NEAR = Optional::empty;

    private final List<Finding> findings = new ArrayList<>();

    /** A value that cannot stand where it stands. */
    void wrong(Node node, String allowed, String example) {
        wrong(node, node.shown(), allowed, example, NOTHING_NEAR);
    }

    void wrong(Node node, String found, String allowed, String example) {
        wrong(node, found, allowed, example, NOTHING_NEAR);
    }

    void wrong(Node node, String found, String allowed, String example, Supplier<Optional<String>> closest) {
        at(node.at(), node.spot(), found, allowed, example, closest);
    }

    /** A field that is needed and not there; it is reported where it should stand. */
    void missing(Node.Obj owner, String field, String allowed, String example) {
        at(owner.at().then(field), owner.spot(), "nothing", allowed, example, NOTHING_NEAR);
    }

    void at(
            ValuePath at,
            TextPosition spot,
            String found,
            String allowed,
            String example,
            Supplier<Optional<String>> closest) {
        findings.add(new Finding(at, spot, found, allowed, example, closest));
    }

    void document(TextPosition spot, String found, String allowed, String example) {
        at(ValuePath.ROOT, spot, found, allowed, example, NOTHING_NEAR);
    }

    boolean any() {
        return !findings.isEmpty();
    }

    /** The refusal, in the order of the document; only for a document with findings. */
    ReadResult.Refused refusal(String file, int most) {
        List<Problem> shown = findings.stream()
                .sorted(Comparator.comparingLong(finding -> finding.spot().offset()))
                .limit(most)
                .map(finding -> new Problem(
                        file,
                        finding.spot().line(),
                        finding.at().pointer(),
                        finding.found(),
                        finding.allowed(),
                        finding.example(),
                        finding.closest().get()))
                .toList();
        return new ReadResult.Refused(shown, findings.size() - shown.size());
    }
}
