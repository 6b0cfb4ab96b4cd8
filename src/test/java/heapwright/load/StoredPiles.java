package heapwright.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * People who look at the piles of a folder: mostly a pile's page, now and then its result, why it has stopped, the list,
 * or a note of the day. A note may meet another's: then the answer is 409, and both are kept, which is as it should be.
 */
final class StoredPiles implements Visitor {

    private static final Pattern SEAL = Pattern.compile("name=\"_seal\" value=\"([0-9a-f]+)\"");
    private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"([0-9a-f]{64})\"");
    private static final Pattern PILE = Pattern.compile("action=\"(/piles/[^\"]+)/note\"");

    /** A visit that the server did not choose is as good as one that it did: the seal is made for what the cookie says. */
    private static final String COOKIE = "heapwright-visit=" + "0123456789abcdef".repeat(2);

    private final String address;
    private final List<String> ids;
    private final AtomicInteger asked = new AtomicInteger();

    private StoredPiles(String address, List<String> ids) {
        this.address = address;
        this.ids = List.copyOf(ids);
    }

    /** Asks the server which piles there are. */
    static StoredPiles of(String address) throws IOException, InterruptedException {
        String list = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(address + "api/piles")).build(), BodyHandlers.ofString())
                .body();
        List<String> ids = new ArrayList<>();
        for (JsonNode row : new ObjectMapper().readTree(list).path("piles")) {
            ids.add(row.path("id").asText());
        }
        return new StoredPiles(address, ids);
    }

    @Override
    public int warmUp() {
        return ids.size();
    }

    /** Each pile once to begin with, as on a server that has run since the morning; then what people choose. */
    @Override
    public HttpRequest next(Person person) {
        int number = asked.getAndIncrement();
        if (number < ids.size()) {
            return request("piles/" + ids.get(number)).build();
        }
        Matcher form = PILE.matcher(person.last());
        int kind = person.random().nextInt(100);
        if (kind < 5 && form.find()) {
            return note(person, form.group(1));
        }
        String pile = "piles/" + ids.get(person.random().nextInt(ids.size()));
        String path = kind < 75 ? pile : kind < 85 ? pile + "/result" : kind < 95 ? pile + "/why" : "piles";
        return request(path).build();
    }

    private HttpRequest note(Person person, String pile) {
        String form = Map.of(
                        "_seal", first(SEAL, person.last()),
                        "version", first(VERSION, person.last()),
                        "date", "2026-11-21",
                        "core", Integer.toString(5 + person.random().nextInt(40)))
                .entrySet()
                .stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return request(pile.substring(1) + "/note")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form))
                .build();
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path)).header("Cookie", COOKIE);
    }

    private static String first(Pattern pattern, String page) {
        Matcher matcher = pattern.matcher(page);
        return matcher.find() ? matcher.group(1) : "";
    }

    @Override
    public Optional<String> fault(Person person, HttpResponse<String> answer) {
        int status = answer.statusCode();
        boolean noted = answer.request().method().equals("POST") && (status == 303 || status == 409);
        boolean seen = status == 200 && answer.body().contains("</html>");
        return noted || seen ? Optional.empty() : Optional.of("status " + status);
    }
}
