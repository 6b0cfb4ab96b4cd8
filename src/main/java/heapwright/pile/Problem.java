package heapwright.pile;

import java.util.Optional;

/**
 * One reason why a document was refused.
 *
 * @param file the name of the document as the reader was given it
 * @param line the line on which it stands, from 1
 * @param pointer where it stands in the document, an RFC 6901 JSON Pointer; empty for the document as a whole
 * @param found what stands there, in words or quoted
 * @param allowed what may stand there
 * @param example a piece of JSON that would do; empty when there is no short one
 * @param closest the nearest thing that is allowed, when one is near enough to be meant
 */
public record Problem(
        String file, int line, String pointer, String found, String allowed, String example, Optional<String> closest) {

    /** The problem in English on one line: where, what was found, what is allowed, an example, what may be meant. */
    public String message() {
        StringBuilder message = new StringBuilder(file).append(", line ").append(line);
        if (!pointer.isEmpty()) {
            message.append(", ").append(Shown.plain(pointer));
        }
        message.append(": found ")
                .append(found)
                .append(". Allowed: ")
                .append(allowed)
                .append('.');
        Optional<String> meant = closest.map(near -> Numbers.plain(near) ? near : Shown.quoted(near));
        if (!example.isEmpty() && !meant.equals(Optional.of(example))) {
            message.append(" Example: ").append(example).append('.');
        }
        meant.ifPresent(near -> message.append(" Did you mean ").append(near).append('?'));
        return message.toString();
    }
}
