package heapwright.web.guard;

import java.util.List;
import java.util.Set;

/** A request that is not served; the key names a text under {@code web.refused.} that says why and what to do. */
public final class Refusal extends RuntimeException {

    /** Requests that are no form of ours, or would be refused again for what they are. */
    private static final Set<String> FOR_GOOD = Set.of("request", "large", "parts", "slow", "method", "host", "origin");

    private final int status;
    private final String key;
    private final List<String> places;

    /** @param places what stands in the places of the text */
    public Refusal(int status, String key, String... places) {
        super(key, null, false, false);
        this.status = status;
        this.key = key;
        this.places = List.of(places);
    }

    /** The page or thing that was asked for is not there. */
    public static Refusal missing() {
        return new Refusal(404, "missing");
    }

    /** Whether a form that was refused so may well be taken when it is sent again. */
    public boolean canBeSentAgain() {
        return !FOR_GOOD.contains(key);
    }

    /** What stands in the places of the text. */
    public List<String> places() {
        return places;
    }

    public int status() {
        return status;
    }

    public String key() {
        return key;
    }
}
