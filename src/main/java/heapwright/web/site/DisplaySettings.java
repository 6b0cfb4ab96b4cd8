package heapwright.web.site;

import heapwright.report.Units;
import io.javalin.http.Context;
import java.time.Duration;

/**
 * How a person wants the pages: kept in a cookie of this machine and nowhere else.
 *
 * @param units the units amounts are told in
 * @param largeText whether text is set larger
 */
public record DisplaySettings(Units units, boolean largeText) {

    private static final String COOKIE = "heapwright-look";
    private static final String US = "us";
    private static final String LARGE = "large";

    /** The look of a request; metric and usual text if it says nothing. */
    static DisplaySettings of(Context ctx) {
        String cookie = ctx.cookie(COOKIE);
        String said = cookie == null ? "" : cookie;
        return new DisplaySettings(said.contains(US) ? Units.US : Units.METRIC, said.contains(LARGE));
    }

    /** Has the browser keep it for a year. */
    void keep(Context ctx) {
        String value = (units == Units.US ? US : "metric") + "." + (largeText ? LARGE : "usual");
        ctx.res()
                .addHeader(
                        "Set-Cookie",
                        COOKIE + "=" + value + "; Path=/; HttpOnly; SameSite=Strict; Max-Age="
                                + Duration.ofDays(365).toSeconds());
    }

    public boolean us() {
        return units == Units.US;
    }
}
