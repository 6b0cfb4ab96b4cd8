package heapwright.web.guard;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.pile.Problem;
import heapwright.report.JsonText;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;

/** A request that cannot be answered, as problem details (RFC 9457). */
public final class ProblemResponse extends RuntimeException {

    private final int status;
    private final List<Problem> problems;

    private ProblemResponse(int status, String detail, List<Problem> problems) {
        super(detail, null, false, false);
        this.status = status;
        this.problems = List.copyOf(problems);
    }

    /** A trouble with a sentence that says what and what to do. */
    public static ProblemResponse of(int status, String detail) {
        return new ProblemResponse(status, detail, List.of());
    }

    /** A document that cannot be used, with all that is wrong with it. */
    public static ProblemResponse document(String detail, List<Problem> problems) {
        return new ProblemResponse(422, detail, problems);
    }

    /** A file that stands there but cannot be read as a pile. */
    public static ProblemResponse broken(String detail, List<Problem> problems) {
        return new ProblemResponse(409, detail, problems);
    }

    /** Sends it. */
    public void send(Context ctx) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("type", "about:blank");
        root.put("title", HttpStatus.forStatus(status).getMessage());
        root.put("status", status);
        root.put("detail", getMessage());
        if (!problems.isEmpty()) {
            ArrayNode errors = root.putArray("errors");
            problems.forEach(p -> error(errors.addObject(), p));
        }
        ctx.status(status).contentType("application/problem+json").result(JsonText.write(root));
    }

    private static void error(ObjectNode row, Problem problem) {
        row.put("pointer", problem.pointer());
        row.put("line", problem.line());
        row.put("detail", problem.message());
        row.put("found", problem.found());
        row.put("allowed", problem.allowed());
        if (!problem.example().isEmpty()) {
            row.put("example", problem.example());
        }
        problem.closest().ifPresent(near -> row.put("closest", near));
    }
}
