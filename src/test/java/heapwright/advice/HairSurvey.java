package heapwright.advice;

import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.knowledge.Cause;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Changes every amount and every measured figure of every case by a hair and prints what that does to the advice. Run
 * as a program; arguments: the hair as a share (0.001), and how many lines of the worst to print (40).
 */
final class HairSurvey {

    private HairSurvey() {}

    private record Change(String file, String figure, double moved, Cause most, String first, String second) {}

    public static void main(String[] args) {
        double hair = args.length > 0 ? Double.parseDouble(args[0]) : 0.001;
        int lines = args.length > 1 ? Integer.parseInt(args[1]) : 40;
        List<Change> changes = new ArrayList<>();
        int piles = 0;
        int variants = 0;
        for (Case one : new Casebook(TestPile.KNOWLEDGE).below(Path.of("cases"))) {
            Advice told = TestPile.ADVISOR.diagnose(one.pile());
            piles++;
            for (double factor : new double[] {1 - hair, 1 + hair}) {
                for (Hairs.Hair changed : Hairs.of(one.pile(), factor)) {
                    variants++;
                    changes.add(compare(one, changed, told, TestPile.ADVISOR.diagnose(changed.pile())));
                }
            }
        }
        double most = changes.stream().mapToDouble(Change::moved).max().orElse(0);
        System.out.printf(Locale.ROOT, "%d piles, %d changes of %.3f %%%n", piles, variants, hair * 100);
        System.out.printf(Locale.ROOT, "greatest change of a likelihood: %.4f%n", most);
        for (double edge : new double[] {0.02, 0.05, 0.1, 0.2}) {
            System.out.printf(
                    Locale.ROOT,
                    "  above %.2f: %d%n",
                    edge,
                    changes.stream().filter(c -> c.moved() > edge).count());
        }
        List<Change> steps = changes.stream().filter(c -> !c.first().isEmpty()).toList();
        List<Change> causes =
                changes.stream().filter(c -> !c.second().isEmpty()).toList();
        System.out.println("changed first steps: " + steps.size());
        steps.forEach(c -> System.out.println("  " + c.file() + " " + c.figure() + ": " + c.first()));
        System.out.println("changed first causes: " + causes.size());
        causes.forEach(c -> System.out.println("  " + c.file() + " " + c.figure() + ": " + c.second()));
        System.out.println("worst:");
        changes.stream()
                .filter(c -> c.moved() > 0.005)
                .sorted((a, b) -> Double.compare(b.moved(), a.moved()))
                .limit(lines)
                .forEach(c ->
                        System.out.printf(Locale.ROOT, "  %.4f %s %s %s%n", c.moved(), c.most(), c.file(), c.figure()));
    }

    private static Change compare(Case one, Hairs.Hair changed, Advice told, Advice other) {
        double moved = 0;
        Cause most = null;
        for (Cause cause : told.outcome().weighed().keySet()) {
            double here = Math.abs(told.outcome().weighed().get(cause).likelihood()
                    - other.outcome().weighed().get(cause).likelihood());
            if (here > moved) {
                moved = here;
                most = cause;
            }
        }
        return new Change(
                one.file(),
                changed.figure(),
                moved,
                most,
                differ(step(told), step(other)),
                differ(cause(told), cause(other)));
    }

    private static String differ(String one, String other) {
        return one.replaceAll(" .*", "").equals(other.replaceAll(" .*", "")) ? "" : one + " -> " + other;
    }

    private static String step(Advice advice) {
        StringBuilder text = new StringBuilder();
        advice.steps().stream()
                .limit(2)
                .forEach(s -> text.append(String.format(
                        Locale.ROOT,
                        "%s %.3f, ",
                        s.main().remedy().id(),
                        s.main().worth())));
        return text.isEmpty() ? "none" : text.toString();
    }

    private static String cause(Advice advice) {
        StringBuilder text = new StringBuilder();
        advice.findings().stream()
                .limit(2)
                .forEach(f -> text.append(
                        String.format(Locale.ROOT, "%s %.3f, ", f.cause().id(), f.likelihood())));
        return text.isEmpty() ? "none" : text.toString();
    }
}
