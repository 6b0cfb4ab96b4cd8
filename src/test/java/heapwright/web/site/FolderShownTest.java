package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FolderShownTest {

    /** 192.0.2.0/24 and 2001:db8::/32 stand for documentation (RFC 5737, RFC 3849), so no machine has them. */
    @Test
    void theFolderIsShownToThePersonAtThisMachineOnly() {
        Path folder = Path.of("piles");
        assertEquals(Optional.of("piles"), PilesPage.folder(folder, "127.0.0.1"));
        assertEquals(Optional.of("piles"), PilesPage.folder(folder, "[0:0:0:0:0:0:0:1]"));
        assertEquals(Optional.empty(), PilesPage.folder(folder, "192.0.2.7"));
        assertEquals(Optional.empty(), PilesPage.folder(folder, "2001:db8::7"));
    }
}
