package heapwright.load;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Optional;
import java.util.Random;

/** One kind of person at the page: what they ask, and what a good answer is. Several threads use it at once. */
interface Visitor {

    /** The next request of a person. */
    HttpRequest next(Person person);

    /** What is wrong with the answer; empty if it is as it should be. */
    Optional<String> fault(Person person, HttpResponse<String> answer);

    /** How many requests to begin with do not count, as the server is still warming up. */
    int warmUp();

    /** One person of the crowd. */
    final class Person {
        private final Random random;
        private String last = "";

        Person(long seed) {
            random = new Random(seed);
        }

        Random random() {
            return random;
        }

        /** What the person saw last. */
        String last() {
            return last;
        }

        void saw(String page) {
            last = page;
        }
    }
}
