package org.standproud.web.pages;

import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.RecoverableDataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.http.HttpStatus;
import org.springframework.transaction.TransactionException;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.ServletRequestBindingException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.ModelAndView;
import org.standproud.audit.records.RecordNotStored;
import org.standproud.audit.records.StoreBusy;
import org.standproud.refusal.LoggedFault;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;

/** Shows exceptions of page requests as pages. */
@ControllerAdvice(basePackages = "org.standproud.web")
@Order(Ordered.HIGHEST_PRECEDENCE)
class PageExceptionHandler {

  private static final Logger LOG = LoggerFactory.getLogger(PageExceptionHandler.class);

  @ExceptionHandler
  ModelAndView refused(Refusal e) {
    return switch (e.kind()) {
      case NOT_FOUND -> page(HttpStatus.NOT_FOUND, "Not here", message(e));
      case GONE -> page(HttpStatus.GONE, "Removed", "The text of this record was removed.");
      case NOT_READY -> page(HttpStatus.SERVICE_UNAVAILABLE, "Not ready", message(e));
      default ->
          e.kind().passes()
              ? page(HttpStatus.SERVICE_UNAVAILABLE, e.kind().title(), message(e))
              : page(HttpStatus.BAD_REQUEST, e.kind().title(), message(e));
    };
  }

  private static String message(Exception e) {
    return String.valueOf(e.getMessage());
  }

  @ExceptionHandler
  ModelAndView noSuchAddress(MethodArgumentTypeMismatchException e) {
    return page(HttpStatus.NOT_FOUND, "Not here", "There is no page at this address.");
  }

  /** A form or address with missing or unreadable parameters. */
  @ExceptionHandler
  ModelAndView notUnderstood(ServletRequestBindingException e) {
    return page(
        HttpStatus.BAD_REQUEST,
        "Not understood",
        "Something in the form or the address is missing or cannot be read. Open the page again.");
  }

  @ExceptionHandler
  ModelAndView refused(ErrorResponseException e) {
    boolean gone = e.getStatusCode().value() == HttpStatus.GONE.value();
    return page(
        HttpStatus.valueOf(e.getStatusCode().value()),
        gone ? "Removed" : "Not here",
        gone ? "The text of this record was removed." : "There is no page at this address.");
  }

  @ExceptionHandler({StoreBusy.class, RecordNotStored.class, InterruptedException.class})
  ModelAndView notStored(Exception e) {
    if (e instanceof InterruptedException) {
      Thread.currentThread().interrupt();
    }
    LOG.warn("An answer was not stored", e);
    return page(
        HttpStatus.SERVICE_UNAVAILABLE,
        "Not stored",
        "The set-up was not checked, because the answer could not be recorded. Try again.");
  }

  @ExceptionHandler({
    DataAccessResourceFailureException.class,
    TransientDataAccessException.class,
    RecoverableDataAccessException.class,
    TransactionException.class
  })
  ModelAndView storeAway(Exception e) {
    LOG.warn("The records cannot be reached", e);
    return page(
        HttpStatus.SERVICE_UNAVAILABLE,
        RefusalKind.STORE_AWAY.title(),
        "The database does not answer. Try again in a minute.");
  }

  @ExceptionHandler
  ModelAndView fault(Exception e) {
    UUID reference = UUID.randomUUID();
    LOG.error("Fault {}", reference, LoggedFault.of(e));
    return page(
        HttpStatus.INTERNAL_SERVER_ERROR,
        "Something went wrong",
        "Nothing was checked. Look in the log for " + reference + ".");
  }

  static ModelAndView page(HttpStatus status, String title, String detail) {
    ModelAndView page = new ModelAndView("fault");
    page.setStatus(status);
    page.addObject("title", title);
    page.addObject("detail", detail);
    return page;
  }
}
