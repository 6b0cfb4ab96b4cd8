package heapwright.advice.winter;

import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.Range;
import heapwright.process.heat.Readiness;
import java.time.LocalDate;
import java.util.Optional;

/**
 * When a pile will be ready if it is left alone: outlook and audit speak of this one.
 *
 * @param firstDay the date of day 0
 * @param standing whether it stands already, so that eyes and nose may know better
 * @param lookedDays days looked ahead
 * @param day the day on which it is ready; a day past those looked at means not within them
 * @param chance chance that it is ready within them, 0–1
 * @param wish the answer to the day on which it is wanted, if there is one
 */
public record ReadyAhead(
        LocalDate firstDay, boolean standing, int lookedDays, Range day, double chance, Optional<WantedDate> wish) {

    /** When a pile will be ready; empty where the model is not one of it. */
    public static Optional<ReadyAhead> of(PileNow now) {
        int look = now.look();
        return now.fits()
                ? Optional.of(of(now, now.alone(look, PileOutlook.SAMPLES).alone(), look))
                : Optional.empty();
    }

    /** The same of the pile left alone for as long as is looked. */
    static ReadyAhead of(PileNow now, Ensemble alone, int look) {
        Outlook far = Outlook.of(alone, Readiness.standard());
        LocalDate first = now.date(0);
        Optional<WantedDate> wish = now.fits() ? WantedDate.of(now.model(), first, alone, look) : Optional.empty();
        return new ReadyAhead(first, !now.fresh(), look, far.readyDay(), far.readyChance(), wish);
    }

    /** Whether it is likely within the days looked at. */
    public boolean likely() {
        return day.likely() < lookedDays;
    }

    /** The last date looked at. */
    public LocalDate lookedUntil() {
        return firstDay.plusDays(lookedDays);
    }

    /** The date of a day; empty where it lies past the days looked at and so is not known. */
    public Optional<LocalDate> date(double of) {
        return of < lookedDays ? Optional.of(firstDay.plusDays(Math.round(of))) : Optional.empty();
    }
}
