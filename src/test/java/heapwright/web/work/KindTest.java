package heapwright.web.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A request")
class KindTest {

    @ParameterizedTest(name = "{0} {1} is {2}")
    @CsvSource({
        "GET, /, LIGHT",
        "GET, /assets/{stamp}/{name}, LIGHT",
        "GET, /knowledge/causes/{id}, LIGHT",
        "POST, /settings, LIGHT",
        "GET, /api/materials, LIGHT",
        "GET, /piles, WORK",
        "GET, /piles/{id}, WORK",
        "GET, /api/piles/{id}, WORK",
        "POST, /checkup, WORK",
        "POST, /piles/{id}/why/live, WORK",
        "POST, /api/checkup, WORK",
        "GET, /an/address/that/is/new, WORK",
        "POST, /piles, CHANGE",
        "POST, /piles/{id}/note, CHANGE",
        "POST, /piles/{id}/edit, CHANGE",
        "POST, /piles/{id}/notes/{mark}/take-back, CHANGE",
        "POST, /build/keep, CHANGE",
        "PUT, /api/piles/{id}, CHANGE",
        "DELETE, /api/piles/{id}, CHANGE",
        "POST, /api/removed/{id}/fetch-back, CHANGE"
    })
    void kind(String method, String path, Kind kind) {
        assertEquals(kind, Kind.of(new Endpoint(HandlerType.findOrCreate(method), path, ctx -> {})));
    }
}
