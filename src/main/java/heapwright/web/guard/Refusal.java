package heapwright.web.guard;

/** A request that is not served; the key names a text under {@code web.refused.} that says why and what to do. */
public final class Refusal extends RuntimeException {

    private final int status;
    private final String key;

    public Refusal(int status, String key) {
        super(key, null, false, false);
        this.status = status;
        this.key = key;
    }

    /** The page or thing that was asked for is not there. */
    public static Refusal missing() {
        return new Refusal(404, "missing");
    }

    public int status() {
        return status;
    }

    public String key() {
        return key;
    }
}
