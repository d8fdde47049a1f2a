package org.standproud.assessment;

import java.util.Map;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.setup.request.RequestText;

/** A request that is not JSON. */
public final class MalformedRequestException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Reports the position and reason of a parse error.
   *
   * @param cause the parse error
   */
  public MalformedRequestException(RequestText.Malformed cause) {
    super(
        RefusalKind.MALFORMED_REQUEST,
        String.valueOf(cause.getMessage()),
        cause.line() > 0 ? Map.of("line", cause.line(), "column", cause.column()) : Map.of(),
        cause);
  }

  /**
   * Reports another reason.
   *
   * @param reason why the body is not JSON
   */
  public MalformedRequestException(String reason) {
    super(RefusalKind.MALFORMED_REQUEST, reason);
  }
}
