package org.standproud.api.problem;

import java.net.URI;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.standproud.refusal.RefusalKind;

/** Refusals as RFC 9457 problems: the one place that gives a kind of refusal its HTTP status. */
public final class Problems {

  private Problems() {}

  /** The usual status of a kind of refusal. */
  public static HttpStatus status(RefusalKind kind) {
    return switch (kind) {
      case MALFORMED_REQUEST, BAD_PARAMETER, REFUSED -> HttpStatus.BAD_REQUEST;
      case SETUP_REFUSED,
          JOB_REFUSED,
          CARDS_REFUSED,
          ITEM_REFUSED,
          IMPORT_REFUSED,
          RECORDING_REFUSED,
          KEY_REUSED ->
          HttpStatus.UNPROCESSABLE_CONTENT;
      case PRECONDITION_FAILED -> HttpStatus.PRECONDITION_FAILED;
      case PRECONDITION_REQUIRED -> HttpStatus.PRECONDITION_REQUIRED;
      case KEY_WANTED -> HttpStatus.UNAUTHORIZED;
      case NOT_ALLOWED -> HttpStatus.FORBIDDEN;
      case TOO_MANY_CALLS -> HttpStatus.TOO_MANY_REQUESTS;
      case NOT_FOUND -> HttpStatus.NOT_FOUND;
      case GONE -> HttpStatus.GONE;
      case CONFLICT, KEY_IN_USE -> HttpStatus.CONFLICT;
      case METHOD_NOT_ALLOWED -> HttpStatus.METHOD_NOT_ALLOWED;
      case NOT_ACCEPTABLE -> HttpStatus.NOT_ACCEPTABLE;
      case UNSUPPORTED_MEDIA_TYPE -> HttpStatus.UNSUPPORTED_MEDIA_TYPE;
      case TOO_LARGE -> HttpStatus.CONTENT_TOO_LARGE;
      case BUSY,
          NOT_STORED,
          STORE_AWAY,
          STOPPING,
          TOO_MANY_BATCHES,
          TOO_MANY_EXPORTS,
          TOO_MUCH_WORK,
          NOT_READY ->
          HttpStatus.SERVICE_UNAVAILABLE;
      case TOO_SLOW -> HttpStatus.REQUEST_TIMEOUT;
      case INTERNAL -> HttpStatus.INTERNAL_SERVER_ERROR;
    };
  }

  /**
   * A problem of a kind.
   *
   * @param detail what happened this time
   */
  public static ProblemDetail of(RefusalKind kind, String detail) {
    ProblemDetail problem = ProblemDetail.forStatusAndDetail(status(kind), detail);
    problem.setType(URI.create(kind.type()));
    problem.setTitle(kind.title());
    return problem;
  }

  /** A problem whose detail is the meaning of its kind. */
  public static ProblemDetail of(RefusalKind kind) {
    return of(kind, kind.meaning());
  }

  /**
   * A problem of a kind.
   *
   * @param exception its message, written for the caller, becomes the detail
   */
  static ProblemDetail of(RefusalKind kind, Exception exception) {
    String message = exception.getMessage();
    return of(kind, message == null ? kind.meaning() : message);
  }

  /**
   * The kind for a bare status.
   *
   * @param status an HTTP status
   */
  public static RefusalKind kind(int status) {
    return switch (status) {
      case 401 -> RefusalKind.KEY_WANTED;
      case 403 -> RefusalKind.NOT_ALLOWED;
      case 404 -> RefusalKind.NOT_FOUND;
      case 405 -> RefusalKind.METHOD_NOT_ALLOWED;
      case 406 -> RefusalKind.NOT_ACCEPTABLE;
      case 408 -> RefusalKind.TOO_SLOW;
      case 409 -> RefusalKind.CONFLICT;
      case 410 -> RefusalKind.GONE;
      case 412 -> RefusalKind.PRECONDITION_FAILED;
      case 413 -> RefusalKind.TOO_LARGE;
      case 415 -> RefusalKind.UNSUPPORTED_MEDIA_TYPE;
      case 428 -> RefusalKind.PRECONDITION_REQUIRED;
      case 429 -> RefusalKind.TOO_MANY_CALLS;
      case 503 -> RefusalKind.NOT_READY;
      default -> status >= 500 ? RefusalKind.INTERNAL : RefusalKind.REFUSED;
    };
  }
}
