package heapwright.load;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Optional;

/** People who look at the list of piles. */
final class PileList implements Visitor {

    private static final int WARM_UP = 3;

    private final String address;

    PileList(String address) {
        this.address = address;
    }

    @Override
    public int warmUp() {
        return WARM_UP;
    }

    @Override
    public HttpRequest next(Person person) {
        String path = person.random().nextInt(4) == 0 ? "api/piles" : "piles";
        return HttpRequest.newBuilder(URI.create(address + path)).build();
    }

    @Override
    public Optional<String> fault(Person person, HttpResponse<String> answer) {
        boolean listed = answer.body().contains("Heap 1");
        return answer.statusCode() == 200 && listed
                ? Optional.empty()
                : Optional.of("status " + answer.statusCode() + (listed ? "" : ", nothing listed"));
    }
}
