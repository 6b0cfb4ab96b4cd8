package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A code to scan")
class ScanCodeTest {

    private static final String ADDRESS = "http://192.168.1.20:7310/";
    private static final int SCALE = 8;

    /** What a camera sees of the lines: each sign is two squares, one above the other. */
    private static BinaryBitmap photograph(List<String> lines) {
        List<String> bare = lines.stream()
                .map(line -> line.replaceAll("\u001b\\[[0-9;]*m", ""))
                .toList();
        int width = bare.get(0).length() * SCALE;
        int height = bare.size() * 2 * SCALE;
        int[] pixels = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                char sign = bare.get(y / (2 * SCALE)).charAt(x / SCALE);
                boolean upper = y / SCALE % 2 == 0;
                boolean dark = sign == '█' || sign == (upper ? '▀' : '▄');
                pixels[y * width + x] = dark ? 0x000000 : 0xffffff;
            }
        }
        return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
    }

    @Test
    @DisplayName("is read back as the address that was drawn")
    void readBack() throws ReaderException {
        var read = new QRCodeReader().decode(photograph(ScanCode.of(ADDRESS).lines()));
        assertEquals(ADDRESS, read.getText());
        assertEquals(BarcodeFormat.QR_CODE, read.getBarcodeFormat());
    }

    @Test
    @DisplayName("sets its own black and white, with a margin, and fits a terminal of 80 by 24")
    void fits() {
        List<String> lines = ScanCode.of(ADDRESS).lines();
        assertTrue(lines.stream()
                .allMatch(line -> line.startsWith("\u001b[30;107m    ") && line.endsWith("    \u001b[0m")));
        assertTrue(lines.size() <= 20
                && lines.get(0).replaceAll("\u001b\\[[0-9;]*m", "").length() <= 80);
        assertTrue(lines.get(0).replaceAll("\u001b\\[[0-9;]*m", "").isBlank());
    }

    @Test
    @DisplayName("refuses what no code can hold")
    void tooLong() {
        assertThrows(IllegalArgumentException.class, () -> ScanCode.of("x".repeat(5_000)));
    }
}
