package heapwright.advice.winter;

import heapwright.process.heat.Bands;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The course ahead of a pile, left alone and treated. Day 0 is the day of advice.
 *
 * @param model the pile
 * @param fits whether the model is one of this pile; else nothing is tried
 * @param missK kelvin by which a reading of late missed it
 * @param without core of the pile left alone, °C, 10th to 90th percentile a day
 * @param outdoor outdoors, the same
 * @param with the pile treated; empty where nothing is to be done
 */
public record Trial(PileModel model, boolean fits, double missK, Bands without, Bands outdoor, Optional<With> with) {

    /**
     * The pile treated.
     *
     * @param core its core, °C, 10th to 90th percentile a day
     * @param gain what that wins over leaving it alone
     * @param openedOnce whether several of the steps open the pile and are reckoned as one opening
     */
    public record With(Bands core, Gain gain, boolean openedOnce) {}

    /** Days looked at. */
    public int days() {
        return without.likely().length;
    }

    /** The date of a day of the run. */
    public LocalDate date(int day) {
        return model.date(model.age() + day);
    }
}
