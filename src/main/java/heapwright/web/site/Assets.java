package heapwright.web.site;

import heapwright.web.guard.Refusal;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Style, script and drawings of the pages, read once. A request names one of them or nothing: no path is made from a
 * name. Their addresses carry a stamp of their content, so a browser may keep them for good.
 */
public final class Assets {

    private static final String FOLDER = "/heapwright/web/";

    private static final Map<String, String> TYPES = Map.of(
            "page.css", "text/css; charset=utf-8",
            "print.css", "text/css; charset=utf-8",
            "page.js", "text/javascript; charset=utf-8",
            "mark.svg", "image/svg+xml");

    private final Map<String, byte[]> contents = new LinkedHashMap<>();
    private final Map<String, String> stamps = new LinkedHashMap<>();

    Assets() {
        TYPES.keySet().forEach(name -> {
            byte[] content = read(name);
            contents.put(name, content);
            stamps.put(name, stamp(content));
        });
    }

    /** The address of one, for a page. */
    public String address(String name) {
        return "/assets/" + stamps.get(name) + "/" + name;
    }

    void serve(Context ctx) {
        byte[] content = contents.get(ctx.pathParam("name"));
        if (content == null) {
            throw Refusal.missing();
        }
        ctx.header("Cache-Control", "public, max-age=31536000, immutable");
        ctx.contentType(TYPES.get(ctx.pathParam("name"))).result(content);
    }

    private static byte[] read(String name) {
        try (InputStream in = Assets.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + FOLDER + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String stamp(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return HexFormat.of().formatHex(digest, 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
