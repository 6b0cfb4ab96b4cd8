package heapwright.web.guard;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Ties a form to the browser it was sent to: the form carries a seal over a random cookie, made with a key that lives as
 * long as the server. A page elsewhere can make neither.
 */
public final class Tokens {

    /** The field of a form that carries the seal. */
    public static final String FIELD = "_seal";

    /** The field of a form that tells it from every other. */
    public static final String ONCE = "_once";

    private static final String COOKIE = "heapwright-visit";
    private static final String ALGORITHM = "HmacSHA256";
    private static final int VISIT_BYTES = 16;

    private final SecretKeySpec key;
    private final SecureRandom random = new SecureRandom();

    public Tokens() {
        byte[] secret = new byte[32];
        random.nextBytes(secret);
        key = new SecretKeySpec(secret, ALGORITHM);
    }

    /** The seal for forms of this answer; gives the browser its cookie if it has none. */
    public String seal(Context ctx) {
        String visit = ctx.cookie(COOKIE);
        if (visit == null || !visit.matches("[0-9a-f]{32}")) {
            visit = once();
            ctx.res().addHeader("Set-Cookie", COOKIE + "=" + visit + "; Path=/; HttpOnly; SameSite=Strict");
        }
        return sealOf(visit);
    }

    /** Text that was never sent before, for a form to be known by. */
    public String once() {
        byte[] fresh = new byte[VISIT_BYTES];
        random.nextBytes(fresh);
        return HexFormat.of().formatHex(fresh);
    }

    /**
     * Checks the form of a request that changes something.
     *
     * @throws Refusal when the seal is missing or not ours
     */
    public void check(Context ctx) {
        String visit = ctx.cookie(COOKIE);
        String given = ctx.formParam(FIELD);
        if (visit == null || given == null || !same(sealOf(visit), given)) {
            throw new Refusal(403, "seal");
        }
    }

    private String sealOf(String visit) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(key);
            return HexFormat.of().formatHex(mac.doFinal(visit.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has " + ALGORITHM, e);
        }
    }

    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
