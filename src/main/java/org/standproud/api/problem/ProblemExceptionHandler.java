package org.standproud.api.problem;

import java.io.EOFException;
import java.io.IOException;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.catalina.connector.ClientAbortException;
import org.apache.coyote.BadRequestException;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.RecoverableDataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.firewall.RequestRejectedException;
import org.springframework.transaction.TransactionException;
import org.springframework.util.ClassUtils;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import org.standproud.audit.records.RecordNotStored;
import org.standproud.audit.records.StoreBusy;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.LoggedFault;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.setup.Worded;

/** Answers every exception with an RFC 9457 problem. */
@RestControllerAdvice
class ProblemExceptionHandler extends ResponseEntityExceptionHandler {

  /** The Retry-After header. */
  static final String RETRY_SECONDS = "5";

  private static final int MOST_CAUSES = 20;

  private static final Logger LOG = LoggerFactory.getLogger(ProblemExceptionHandler.class);

  @ExceptionHandler
  ResponseEntity<ProblemDetail> refused(Refusal e) {
    ProblemDetail problem = Problems.of(e.kind(), e);
    e.members().forEach(problem::setProperty);
    return e.kind().passes() ? later(problem) : response(problem);
  }

  /**
   * The client disconnected or stalled in the middle of a request; not a fault of the service. When
   * a body cannot be read, the server discards the answer from here and asks again, with only the
   * socket's exception.
   */
  @ExceptionHandler({
    ClientAbortException.class,
    BadRequestException.class,
    EOFException.class,
    SocketException.class,
    SocketTimeoutException.class
  })
  ResponseEntity<ProblemDetail> brokenOff(IOException e) {
    boolean stalled =
        e instanceof SocketTimeoutException || e.getCause() instanceof SocketTimeoutException;
    RefusalKind kind = stalled ? RefusalKind.TOO_SLOW : RefusalKind.REFUSED;
    return response(Problems.of(kind, stalled ? kind.meaning() : "The body was cut short."));
  }

  /** Parameters that cannot be parsed, or have invalid names. */
  @ExceptionHandler({InvalidParameterException.class, RequestRejectedException.class})
  ResponseEntity<ProblemDetail> noParameters(RuntimeException e) {
    return response(Problems.of(RefusalKind.REFUSED));
  }

  /** The query is right; the database is not available. */
  @ExceptionHandler({
    DataAccessResourceFailureException.class,
    TransientDataAccessException.class,
    RecoverableDataAccessException.class,
    TransactionException.class
  })
  ResponseEntity<ProblemDetail> storeAway(Exception e) {
    return later(logged(Problems.of(RefusalKind.STORE_AWAY), e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> busy(StoreBusy e) {
    return later(Problems.of(RefusalKind.BUSY, e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> notStored(RecordNotStored e) {
    ProblemDetail problem = Problems.of(RefusalKind.NOT_STORED, "The record was not stored.");
    return later(logged(problem, e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> interrupted(InterruptedException e) {
    Thread.currentThread().interrupt();
    return later(Problems.of(RefusalKind.NOT_STORED, "The service is stopping."));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> fault(Exception e) {
    if (isGone(e)) {
      return response(Problems.of(RefusalKind.REFUSED, "The client disconnected."));
    }
    return response(logged(Problems.of(RefusalKind.INTERNAL, "The fault is in the log."), e));
  }

  @Override
  protected @Nullable ResponseEntity<Object> handleTypeMismatch(
      TypeMismatchException e, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
    String name = e instanceof MethodArgumentTypeMismatchException m ? m.getName() : "given";
    Class<?> type = e.getRequiredType();
    String wanted = type == null ? "must be another value" : wanted(type);
    return new ResponseEntity<>(
        Problems.of(RefusalKind.BAD_PARAMETER, new BadParameterException(name, wanted)),
        problemHeaders(headers),
        status);
  }

  @Override
  protected @Nullable ResponseEntity<Object> handleExceptionInternal(
      Exception e,
      @Nullable Object body,
      HttpHeaders headers,
      HttpStatusCode status,
      WebRequest request) {
    RefusalKind kind = Problems.kind(status.value());
    String detail =
        kind == RefusalKind.INTERNAL
            ? "The fault is in the log."
            : Objects.requireNonNullElse(reason(e, body), kind.meaning());
    ProblemDetail problem = Problems.of(kind, detail);
    problem.setStatus(status.value());
    if (kind == RefusalKind.INTERNAL) {
      logged(problem, e);
    }
    return new ResponseEntity<>(problem, problemHeaders(headers), status);
  }

  @Override
  protected @Nullable ResponseEntity<Object> handleMissingServletRequestParameter(
      MissingServletRequestParameterException e,
      HttpHeaders headers,
      HttpStatusCode status,
      WebRequest request) {
    return new ResponseEntity<>(
        Problems.of(
            RefusalKind.BAD_PARAMETER,
            new BadParameterException(e.getParameterName(), "is missing")),
        problemHeaders(headers),
        status);
  }

  /** A refusal of one of our controllers, or of a handler of the framework. */
  private static @Nullable String reason(Exception e, @Nullable Object body) {
    if (e.getClass() == ErrorResponseException.class) {
      return ((ErrorResponseException) e).getBody().getDetail();
    }
    return body instanceof ProblemDetail problem ? problem.getDetail() : null;
  }

  private static String wanted(Class<?> type) {
    if (Number.class.isAssignableFrom(ClassUtils.resolvePrimitiveIfNecessary(type))) {
      return "must be a number in its range";
    }
    if (!type.isEnum()) {
      return "must be an id such as 0197f3c2-7b1e-7c44-9d0a-3f6b2a1c5e77";
    }
    return Stream.of(type.getEnumConstants())
        .map(choice -> choice instanceof Worded worded ? worded.words() : choice.toString())
        .collect(Collectors.joining(", ", "must be one of: ", ""));
  }

  /** Whether the client disconnected while the answer was written; not a fault of the service. */
  private static boolean isGone(Throwable e) {
    Throwable cause = e;
    for (int depth = 0; cause != null && depth < MOST_CAUSES; depth++) {
      if (cause instanceof ClientAbortException) {
        return true;
      }
      cause = cause.getCause();
    }
    return false;
  }

  private static ProblemDetail logged(ProblemDetail problem, Exception e) {
    UUID reference = UUID.randomUUID();
    LOG.error("Fault {}", reference, LoggedFault.of(e));
    problem.setInstance(URI.create("urn:uuid:" + reference));
    return problem;
  }

  private static ResponseEntity<ProblemDetail> response(ProblemDetail problem) {
    return ResponseEntity.status(problem.getStatus())
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }

  private static ResponseEntity<ProblemDetail> later(ProblemDetail problem) {
    return ResponseEntity.status(problem.getStatus())
        .header(HttpHeaders.RETRY_AFTER, RETRY_SECONDS)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }

  private static HttpHeaders problemHeaders(HttpHeaders headers) {
    HttpHeaders with = new HttpHeaders(headers);
    with.setContentType(MediaType.APPLICATION_PROBLEM_JSON);
    return with;
  }
}
