package heapwright.web.guard;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers requests that are refused before a page sees them, such as broken headers: the status, and nothing of ours. */
public final class PlainErrors extends ErrorHandler {

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        String text = "The request cannot be served (status " + response.getStatus() + ").\n";
        response.write(true, ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), callback);
        return true;
    }
}
