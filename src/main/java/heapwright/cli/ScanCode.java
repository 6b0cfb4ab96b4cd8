package heapwright.cli;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A text as a code for the camera of a phone, drawn in half blocks: two rows of the code to a line. */
final class ScanCode {

    /** The margin that cameras need on each side, in modules (ISO/IEC 18004). */
    static final int QUIET = 4;

    private static final String DARK_ON_LIGHT = "\u001b[30;107m";
    private static final String PLAIN = "\u001b[0m";

    private final ByteMatrix modules;

    private ScanCode(ByteMatrix modules) {
        this.modules = modules;
    }

    /** @throws IllegalArgumentException when the text is longer than a code can hold */
    static ScanCode of(String text) {
        try {
            return new ScanCode(Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException e) {
            throw new IllegalArgumentException("No code holds \"" + text + "\"", e);
        }
    }

    /** The lines, black on white by terminal codes whatever the colours of the terminal. */
    List<String> lines() {
        return rows().map(line -> DARK_ON_LIGHT + line + PLAIN).toList();
    }

    private Stream<String> rows() {
        return IntStream.iterate(-QUIET, y -> y < modules.getHeight() + QUIET, y -> y + 2)
                .mapToObj(this::row);
    }

    private String row(int y) {
        return IntStream.range(-QUIET, modules.getWidth() + QUIET)
                .mapToObj(x -> block(dark(x, y), dark(x, y + 1)))
                .collect(Collectors.joining());
    }

    private static String block(boolean upper, boolean lower) {
        return upper ? lower ? "█" : "▀" : lower ? "▄" : " ";
    }

    private boolean dark(int x, int y) {
        return x >= 0 && y >= 0 && x < modules.getWidth() && y < modules.getHeight() && modules.get(x, y) == 1;
    }
}
