package heapwright.load;

import heapwright.knowledge.Sign;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;

/** People who answer questions of their own; nothing is asked twice, so nothing is answered from memory. */
final class Checkups implements Visitor {

    private static final int WARM_UP = 400;

    private final String address;

    Checkups(String address) {
        this.address = address;
    }

    @Override
    public int warmUp() {
        return WARM_UP;
    }

    @Override
    public HttpRequest next(Person person) {
        Random random = person.random();
        return HttpRequest.newBuilder(URI.create(address + "checkup?y=" + some(random, 3) + "&n=" + some(random, 5)
                        + "&out=" + (random.nextInt(20) - 10)))
                .build();
    }

    private static String some(Random random, int count) {
        Sign[] all = Sign.values();
        return Arrays.stream(random.ints(count, 0, all.length).toArray())
                .mapToObj(i -> all[i].id())
                .distinct()
                .collect(Collectors.joining("."));
    }

    /** A checkup asks a next question, or tells of a danger, which then stands alone. */
    @Override
    public Optional<String> fault(Person person, HttpResponse<String> answer) {
        boolean whole = answer.statusCode() == 200 && answer.body().contains("</html>");
        boolean danger = answer.body().contains("class=\"card sofar danger\"");
        return whole && (danger || answer.body().contains("id=\"next-ask\""))
                ? Optional.empty()
                : Optional.of("status " + answer.statusCode());
    }
}
