package dev.offtake.desk.page;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.handler.ErrorHandler;

/**
 * What is no HTTP at all is refused as everything else is, not with a page of the server's maker.
 */
final class BadRequests extends ErrorHandler {
  @Override
  public ByteBuffer badMessageError(int status, String reason, HttpFields.Mutable fields) {
    Gate.HEADERS.forEach(fields::put);
    fields.put(HttpHeader.CONTENT_TYPE, Sender.JSON);
    Refusal refusal = new Refusal(status, "that is no request", "open the page by its address");
    return ByteBuffer.wrap(Sender.bytes(refusal.json()));
  }
}
