package heapwright.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Collectors;

/** Writes days in full, so that nobody takes the month for the day. */
public final class Days {

    private final DateTimeFormatter day;

    public Days(Words words) {
        this.day = DateTimeFormatter.ofPattern("d MMMM yyyy", words.catalogue().locale());
    }

    public String of(LocalDate date) {
        return date.format(day);
    }

    String of(List<LocalDate> dates) {
        return dates.stream().map(this::of).collect(Collectors.joining(", "));
    }
}
