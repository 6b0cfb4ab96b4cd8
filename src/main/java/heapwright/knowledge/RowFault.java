package heapwright.knowledge;

/** A row of a table cannot be taken; the message says where and why on one line. */
final class RowFault extends RuntimeException {

    RowFault(String message) {
        super(message);
    }
}
