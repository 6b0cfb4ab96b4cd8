package heapwright.web.guard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Addresses that stand for documentation (RFC 5737, RFC 3849) are those of no machine, so of this one neither. */
class AddressesTest {

    @Test
    void everyAddressOfEitherKindIsEverywhere() {
        for (String host : List.of("0.0.0.0", "::", "[::]", "0:0:0:0:0:0:0:0")) {
            assertTrue(Addresses.everywhere(host), host);
        }
        for (String host : List.of("127.0.0.1", "::1", "localhost", "192.0.2.1", "")) {
            assertFalse(Addresses.everywhere(host), host);
        }
    }

    @Test
    void onlyFiguresOfThisMachineAreItsOwn() {
        for (String host : List.of("127.0.0.1", "::1", "[::1]", "0:0:0:0:0:0:0:1")) {
            assertTrue(Addresses.own(host), host);
        }
        for (String host :
                List.of("192.0.2.1", "2001:db8::1", "[2001:db8::1]", "localhost", "heap.example", "1:x", "")) {
            assertFalse(Addresses.own(host), host);
        }
    }
}
