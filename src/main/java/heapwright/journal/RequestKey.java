package heapwright.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Tells a request that is sent again from a new one: whoever lost the answer sends the same once more, and gets what was
 * done instead of having it done twice.
 *
 * @param value 32 hexadecimal digits
 */
public record RequestKey(String value) {

    private static final int BYTES = 16;

    public RequestKey {
        if (!value.matches("[0-9a-f]{" + 2 * BYTES + "}")) {
            throw new IllegalArgumentException("no request key: " + value);
        }
    }

    /** The key of a request of these parts, all that matters about it: another content is another request. */
    public static RequestKey of(String... parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String part : parts) {
                byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
                // The length goes in too, so that parts cannot run into each other.
                digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
                digest.update(bytes);
            }
            return new RequestKey(HexFormat.of().formatHex(digest.digest(), 0, BYTES));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
