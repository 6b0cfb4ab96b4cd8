package heapwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * Ends the program when memory has run out. After that any thread may be gone, the ones that listen too, and a server
 * would live on deaf; ended, it can be started again. Saves are whole or not done at all, so nothing is lost. All that is
 * needed here is made beforehand, since nothing can be made then.
 */
final class OutOfMemoryExit implements Consumer<Throwable> {

    private static final int MOST_CAUSES = 20;

    private final FileOutputStream err = new FileOutputStream(FileDescriptor.err);
    private final AtomicBoolean ending = new AtomicBoolean();
    private final byte[] message = ("heapwright: memory has run out, so the program ends here. What was saved is whole."
                    + " Start it again; with larger piles give Java more memory."
                    + " Example: java -Xmx512m -jar heapwright.jar serve\n")
            .getBytes(StandardCharsets.UTF_8);

    /** Ends the program if a fault, or what caused it, is that memory ran out. */
    @Override
    public void accept(Throwable fault) {
        Throwable one = fault;
        for (int i = 0; one != null && i < MOST_CAUSES; i++) {
            if (one instanceof OutOfMemoryError) {
                end();
            }
            one = one.getCause();
        }
    }

    private void end() {
        try {
            if (ending.compareAndSet(false, true)) {
                err.write(message);
            }
        } catch (IOException e) {
            // Nobody is there to be told.
        } finally {
            Runtime.getRuntime().halt(Program.OUR_FAILURE);
        }
    }
}
