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
import org.standproud.api.assessing.MalformedRequest;
import org.standproud.api.assessing.NotReady;
import org.standproud.api.assessing.SetupRefused;
import org.standproud.audit.store.RecordNotStored;
import org.standproud.audit.store.StoreBusy;
import org.standproud.setup.Worded;

/** Tells everything that goes wrong as an RFC 9457 problem. */
@RestControllerAdvice
class ProblemAnswers extends ResponseEntityExceptionHandler {

  /** When to try again, as a header tells it. */
  static final String RETRY_SECONDS = "5";

  private static final Logger LOG = LoggerFactory.getLogger(ProblemAnswers.class);

  @ExceptionHandler
  ResponseEntity<ProblemDetail> malformed(MalformedRequest e) {
    ProblemDetail problem = ProblemKind.MALFORMED_REQUEST.because(e);
    if (e.line() > 0) {
      problem.setProperty("line", e.line());
      problem.setProperty("column", e.column());
    }
    return told(problem);
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> refused(SetupRefused e) {
    ProblemDetail problem = ProblemKind.SETUP_REFUSED.because(e);
    problem.setProperty("errors", e.problems());
    return told(problem);
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> refused(CardsRefused e) {
    ProblemDetail problem = ProblemKind.CARDS_REFUSED.because(e);
    problem.setProperty("errors", e.errors());
    return told(problem);
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> badParameter(BadParameter e) {
    return told(ProblemKind.BAD_PARAMETER.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> keyReused(KeyReused e) {
    return told(ProblemKind.KEY_REUSED.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> keyInUse(KeyInUse e) {
    return later(ProblemKind.KEY_IN_USE.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> notThere(NotThere e) {
    return told(ProblemKind.NOT_FOUND.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> refused(Refused e) {
    ProblemDetail problem = e.kind().because(e);
    e.members().forEach(problem::setProperty);
    return told(problem);
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> tooLarge(BodyTooLarge e) {
    return told(ProblemKind.TOO_LARGE.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> tooSlow(BodyTooSlow e) {
    return told(ProblemKind.TOO_SLOW.because(e));
  }

  /**
   * The caller went away or stalled with half a request sent; no fault of the service. Once a body
   * could not be read the server takes no answer from here: it clears it and asks anew what to say,
   * with no more than what the socket threw.
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
    ProblemKind kind = stalled ? ProblemKind.TOO_SLOW : ProblemKind.REFUSED;
    return told(kind.because(stalled ? kind.meaning() : "The body broke off."));
  }

  /** Parameters that cannot be taken apart, or have names that are none. */
  @ExceptionHandler({InvalidParameterException.class, RequestRejectedException.class})
  ResponseEntity<ProblemDetail> noParameters(RuntimeException e) {
    return told(ProblemKind.REFUSED.because(ProblemKind.REFUSED.meaning()));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> tooMany(TooManyBatches e) {
    return later(ProblemKind.TOO_MANY_BATCHES.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> tooMany(TooManyExports e) {
    return later(ProblemKind.TOO_MANY_EXPORTS.because(e));
  }

  /** What the database was asked for is right; it is not there to answer. */
  @ExceptionHandler({
    DataAccessResourceFailureException.class,
    TransientDataAccessException.class,
    RecoverableDataAccessException.class,
    TransactionException.class
  })
  ResponseEntity<ProblemDetail> storeAway(Exception e) {
    return later(logged(ProblemKind.STORE_AWAY.because(ProblemKind.STORE_AWAY.meaning()), e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> notReady(NotReady e) {
    return told(ProblemKind.NOT_READY.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> busy(StoreBusy e) {
    return later(ProblemKind.BUSY.because(e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> notStored(RecordNotStored e) {
    ProblemDetail problem = ProblemKind.NOT_STORED.because("The record was not stored.");
    return later(logged(problem, e));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> interrupted(InterruptedException e) {
    Thread.currentThread().interrupt();
    return later(ProblemKind.NOT_STORED.because("The service is stopping."));
  }

  @ExceptionHandler
  ResponseEntity<ProblemDetail> fault(Exception e) {
    return told(logged(ProblemKind.INTERNAL.because("The fault is in the log."), e));
  }

  @Override
  protected @Nullable ResponseEntity<Object> handleTypeMismatch(
      TypeMismatchException e, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
    String name = e instanceof MethodArgumentTypeMismatchException m ? m.getName() : "given";
    Class<?> type = e.getRequiredType();
    String wanted = type == null ? "another value is wanted" : wanted(type);
    return new ResponseEntity<>(
        ProblemKind.BAD_PARAMETER.because(new BadParameter(name, wanted)),
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
    ProblemKind kind = ProblemKind.of(status.value());
    String detail =
        kind == ProblemKind.INTERNAL
            ? "The fault is in the log."
            : Objects.requireNonNullElse(told(e, body), kind.meaning());
    ProblemDetail problem = kind.because(detail);
    problem.setStatus(status.value());
    if (kind == ProblemKind.INTERNAL) {
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
        ProblemKind.BAD_PARAMETER.because(new BadParameter(e.getParameterName(), "it is missing")),
        problemHeaders(headers),
        status);
  }

  /** What a controller of ours had to say, or a handler of the framework. */
  private static @Nullable String told(Exception e, @Nullable Object body) {
    if (e.getClass() == ErrorResponseException.class) {
      return ((ErrorResponseException) e).getBody().getDetail();
    }
    return body instanceof ProblemDetail problem ? problem.getDetail() : null;
  }

  private static String wanted(Class<?> type) {
    if (Number.class.isAssignableFrom(ClassUtils.resolvePrimitiveIfNecessary(type))) {
      return "a number in its range is wanted";
    }
    if (!type.isEnum()) {
      return "an id such as 0197f3c2-7b1e-7c44-9d0a-3f6b2a1c5e77 is wanted";
    }
    return Stream.of(type.getEnumConstants())
        .map(choice -> choice instanceof Worded worded ? worded.words() : choice.toString())
        .collect(Collectors.joining(", ", "it is one of: ", ""));
  }

  private static ProblemDetail logged(ProblemDetail problem, Exception e) {
    UUID reference = UUID.randomUUID();
    LOG.error("Fault {}", reference, e);
    problem.setInstance(URI.create("urn:uuid:" + reference));
    return problem;
  }

  private static ResponseEntity<ProblemDetail> told(ProblemDetail problem) {
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
