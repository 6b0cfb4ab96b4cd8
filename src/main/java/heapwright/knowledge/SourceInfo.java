package heapwright.knowledge;

import java.util.Optional;

/**
 * A source of figures and rules.
 *
 * @param key its key
 * @param what what it is
 * @param known how it is known
 * @param address where the institution keeps it, if it does
 */
public record SourceInfo(String key, String what, Known known, Optional<String> address) {}
