package heapwright.casebook;

/** A case file cannot be used; the message names the file and what is wrong. */
public final class CaseFault extends RuntimeException {

    public CaseFault(String message) {
        super(message);
    }
}
