package heapwright.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without a picture: keeps its cookie, reads the hidden fields of a form and sends them with what is typed. */
final class FormClient {

    private static final Pattern HIDDEN =
            Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\">");

    private final HttpClient client;
    private volatile String address;

    /** @param address of the server, without a slash at the end */
    FormClient(String address) {
        this.address = address;
        this.client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .cookieHandler(new CookieManager())
                .connectTimeout(Duration.ofSeconds(30))
                .build();
    }

    /** Goes on at another address of the same host, with the cookies of before. */
    void moveTo(String other) {
        address = other;
    }

    /** A form: where it is sent, and its fields. */
    record Form(String action, Map<String, String> fields) {
        Form with(String field, String value) {
            Map<String, String> more = new LinkedHashMap<>(fields);
            more.put(field, value);
            return new Form(action, more);
        }

        String value(String field) {
            return fields.getOrDefault(field, "");
        }
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(URI.create(address + path)).build());
    }

    HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, BodyHandlers.ofString());
    }

    HttpResponse<String> send(Form form) throws IOException, InterruptedException {
        String body = form.fields().entrySet().stream()
                .map(e -> encoded(e.getKey()) + "=" + encoded(e.getValue()))
                .collect(Collectors.joining("&"));
        return send(HttpRequest.newBuilder(URI.create(address + form.action()))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .timeout(Duration.ofSeconds(60))
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    /** The form of a page that is sent to some address, with its hidden fields and today as its day. */
    Form form(String page, String action) throws IOException, InterruptedException {
        return form(get(page), action);
    }

    Form form(HttpResponse<String> answer, String action) {
        String page = answer.body();
        int begin = page.indexOf("<form method=\"post\" action=\"" + action + "\"");
        if (begin < 0) {
            throw new AssertionError("no form for " + action + " (" + answer.statusCode() + ") in " + page);
        }
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher hidden = HIDDEN.matcher(page.substring(begin, page.indexOf("</form>", begin)));
        while (hidden.find()) {
            fields.put(hidden.group(1), plain(hidden.group(2)));
        }
        if (action.endsWith("/note")) {
            fields.putIfAbsent("date", "2026-11-25");
        }
        return new Form(action, fields);
    }

    private static String plain(String text) {
        return text.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#34;", "\"")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
