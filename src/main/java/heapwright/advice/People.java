package heapwright.advice;

import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.Sign;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import java.util.List;
import java.util.stream.Stream;

/**
 * Who does the work, as the record tells it: what was said last of somebody holds until it is denied.
 *
 * @param cannotLift whether whoever does the work cannot turn or lift
 * @param atRisk whether spores and germs are grave for somebody at work
 */
public record People(boolean cannotLift, boolean atRisk) {

    /** The people of a pile on the day of advice. */
    public static People of(Pile pile) {
        return new People(
                told(pile, Sign.CANNOT_LIFT), told(pile, Sign.LUNGS_OR_IMMUNITY) || told(pile, Sign.PREGNANT));
    }

    /** What is told of whoever does the work, in the words of the record. */
    public static List<Sign> signs(Pile pile) {
        return Stream.of(Sign.CANNOT_LIFT, Sign.LUNGS_OR_IMMUNITY, Sign.PREGNANT)
                .filter(sign -> told(pile, sign))
                .toList();
    }

    private static boolean told(Pile pile, Sign sign) {
        boolean told = false;
        for (Entry entry : pile.log()) {
            if (entry.date().isAfter(pile.asOf())) {
                continue;
            }
            // On one day what was seen outweighs what was not, as everywhere in a record.
            told = entry.seen().contains(sign.id()) || told && !entry.notSeen().contains(sign.id());
        }
        return told;
    }

    /** A remedy as the people of a pile do it with a pile of its kind. */
    public static RemedyInfo way(RemedyInfo remedy, Pile pile) {
        RemedyInfo fitted = remedy.fittedTo(pile.container().kind());
        return of(pile).cannotLift() ? fitted.withoutLifting() : fitted;
    }

    /** Whether they should leave a remedy to somebody else. */
    public boolean leave(RemedyInfo remedy) {
        return atRisk && remedy.does().digsIn();
    }
}
