package heapwright.logger;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/**
 * What a person tells of a file that the file does not.
 *
 * @param zone where the pile stands
 * @param dayFirst whether 03/04 is a third of April
 * @param fahrenheit whether figures without a unit are in °F
 * @param from the day the pile was built
 * @param to today
 */
public record LoggerSettings(
        Optional<ZoneId> zone, Optional<Boolean> dayFirst, boolean fahrenheit, LocalDate from, LocalDate to) {}
