package heapwright.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** A person who writes notes by the forms of the page, and a look at what is kept. */
final class Writers {

    private final FormClient client;
    private final ObjectMapper mapper = new ObjectMapper();
    private FormClient.Form blank;

    Writers(String address) {
        client = new FormClient(address);
    }

    FormClient client() {
        return client;
    }

    /** Opens the page that has the seal; again after each start of the server. */
    void open(String address) throws IOException, InterruptedException {
        client.moveTo(address);
        blank = client.form("/piles", "/piles");
    }

    /** A form for a new pile. */
    FormClient.Form pile(String name) {
        return marked("/piles").with("name", name).with("built", "2026-01-01");
    }

    /** A form with a note on a pile as it stands now. */
    FormClient.Form note(String pile, String words) throws IOException, InterruptedException {
        return marked("/piles/" + pile + "/note").with("date", "2026-01-02").with("note", words);
    }

    private FormClient.Form marked(String action) {
        return new FormClient.Form(
                action,
                Map.of("_seal", blank.value("_seal"), "_once", UUID.randomUUID().toString()));
    }

    /** Sends a form again that the server could not take: through the page that it sends back where the seal is old. */
    HttpResponse<String> again(FormClient.Form form) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(form);
        return answer.statusCode() == 403 ? client.send(client.form(answer, form.action())) : answer;
    }

    /** How often each note stands in the files of the folder, kept copies among them. */
    Map<String, Integer> notes() throws IOException, InterruptedException {
        Map<String, Integer> notes = new TreeMap<>();
        for (JsonNode row : mapper.readTree(client.get("/api/piles").body()).get("piles")) {
            if (row.has("problems")) {
                throw new IOException("a file broke: " + row);
            }
            JsonNode pile = mapper.readTree(
                    client.get("/api/piles/" + row.get("id").textValue()).body());
            for (JsonNode entry : pile.path("log")) {
                notes.merge(entry.path("note").asText(), 1, Integer::sum);
            }
        }
        return notes;
    }

    int piles() throws IOException, InterruptedException {
        return mapper.readTree(client.get("/api/piles").body()).get("piles").size();
    }
}
