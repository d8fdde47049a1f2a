package org.standproud.refusal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Every kind of refusal; its type is the address of its description. */
public enum RefusalKind {
  /** Not JSON. */
  MALFORMED_REQUEST(
      "The request is not well-formed JSON",
      "Reading stopped at the line and column told. Also told of text that is not UTF-8, that"
          + " repeats a key, or that is nested too deep."),
  /** A parameter or header that cannot be used. */
  BAD_PARAMETER(
      "A parameter cannot be used",
      "The detail names the parameter and what it may be. A parameter that is not known is refused"
          + " too, so that a misspelt filter never returns everything."),
  /** JSON that says no set-up. */
  SETUP_REFUSED(
      "The request does not say a set-up",
      "Everything that is wrong is listed in errors: where it stands as a JSON Pointer, what stands"
          + " there, what may stand there in which unit, and what was probably meant."),
  /** Cards that the gate refuses. */
  CARDS_REFUSED(
      "The rule cards are refused",
      "Everything that is wrong is listed in errors by file, line and column. The rule base that"
          + " was in service before still serves."),
  /** JSON that says no item of the catalogue. */
  ITEM_REFUSED(
      "The request does not say an item of this shelf",
      "Everything that is wrong is listed in errors, as for a set-up. Nothing was changed."),
  /** A table with rows that cannot be taken in. */
  IMPORT_REFUSED(
      "The import is refused",
      "The member rows tells of each row what is wrong with it, if anything. Nothing was changed."),
  /** Something else is there than the caller believes. */
  PRECONDITION_FAILED(
      "This is not what is there",
      "Somebody changed it meanwhile, or it is there already, or not at all. Fetch it again, look at"
          + " what changed, and send its ETag as If-Match."),
  /** A change that does not say what it changes. */
  PRECONDITION_REQUIRED(
      "Say what you change",
      "Send the ETag of what you fetched as If-Match, or If-None-Match: * to make something new, so"
          + " that nobody's change is lost."),
  /** Nobody says who asks. */
  KEY_WANTED(
      "The service wants to know who asks",
      "Send a key as Authorization: Bearer <key>; an operator makes keys. A key that is unknown, has"
          + " expired or was revoked opens nothing."),
  /** Who asks may not. */
  NOT_ALLOWED(
      "This caller may not do this",
      "The detail says which role may. An operator can make a key with it."),
  /** Too many calls. */
  TOO_MANY_CALLS(
      "This caller calls too often",
      "Nothing was done. Try again after the time that Retry-After tells; the limit is"
          + " standproud.limits.calls-per-minute."),
  /** Nothing there. */
  NOT_FOUND("There is nothing here", "No resource has this address."),
  /** Something that was there and was taken away. */
  GONE(
      "This was taken away",
      "The text was withheld under the shop's rule on how long records are kept; the chain of"
          + " records says who did it and why."),
  /** Something that does not fit what is there. */
  CONFLICT("This does not fit what is there", "The detail says what stands in the way."),
  /** A key that stands for another request. */
  KEY_REUSED(
      "This Idempotency-Key stands for another request",
      "Nothing was judged. A key stands for one request, told apart by what it says and not by its"
          + " white space; take a new key for a new request."),
  /** A key whose first request is still being answered. */
  KEY_IN_USE(
      "The first request with this Idempotency-Key is still being answered",
      "Nothing was judged. Send the same request with the same key again after the time that"
          + " Retry-After tells: it gets the answer of the first."),
  /** A method the address does not know. */
  METHOD_NOT_ALLOWED(
      "This address does not take this method", "The header Allow lists what it takes."),
  /** An answer in a form that is not made. */
  NOT_ACCEPTABLE(
      "No answer in the form asked for",
      "Answers are application/json, problems application/problem+json."),
  /** A body in a form that is not read. */
  UNSUPPORTED_MEDIA_TYPE("The body is not in a form that is read", "Send application/json."),
  /** Too long a body. */
  TOO_LARGE("The body is too large", "The limit is standproud.api.largest-body."),
  /** The line before the disk is full. */
  BUSY(
      "Too many answers wait to be stored",
      "Nothing was answered. Try again after the time that Retry-After tells."),
  /** The record could not be stored. */
  NOT_STORED(
      "The answer could not be stored",
      "An answer that is not on disk is not given. Try again; if it stays so, look at the database."),
  /** The database does not answer. */
  STORE_AWAY(
      "The records cannot be reached",
      "The database does not answer just now. Try again after the time that Retry-After tells."),
  /** The service has been told to stop. */
  STOPPING(
      "The service is stopping",
      "Nothing was done with the request. Send it again after the time that Retry-After tells, or"
          + " to another replica."),
  /** More batches than are judged at a time. */
  TOO_MANY_BATCHES(
      "Too many batches are being judged",
      "Nothing was judged. Try again after the time that Retry-After tells; the limit is"
          + " standproud.api.most-batches."),
  /** No room for another export. */
  TOO_MANY_EXPORTS(
      "Too many exports are being read",
      "Nothing was read. Try again after the time that Retry-After tells; the limit is"
          + " standproud.audit.most-exports."),
  /** A body that does not arrive. */
  TOO_SLOW(
      "The request did not arrive in time",
      "The body came too slowly or not at all, so nothing was done with it. The limit is"
          + " standproud.api.slowest-body."),
  /** No rule base or no catalogue. */
  NOT_READY(
      "Nothing can be judged yet",
      "No rule base or no catalogue is in service. The detail and the readiness health say why."),
  /** A fault of the service. */
  INTERNAL("The service has a fault", "The log tells more under the reference given as instance."),
  /** Anything else the server refuses. */
  REFUSED(
      "The request is refused",
      "The server could make no sense of the address, the method or the headers.");

  private final String title;
  private final String meaning;

  RefusalKind(String title, String meaning) {
    this.title = title;
    this.meaning = meaning;
  }

  /** Name in the address of its description. */
  public String slug() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Its type: the address of its description, below the service. */
  public String type() {
    return "/problems/" + slug();
  }

  /** Whether the same request may succeed a little later. */
  public boolean passes() {
    return switch (this) {
      case KEY_IN_USE, BUSY, NOT_STORED, STORE_AWAY, STOPPING, TOO_MANY_BATCHES, TOO_MANY_EXPORTS ->
          true;
      default -> false;
    };
  }

  /** It in one phrase. */
  public String title() {
    return title;
  }

  /** What it means and what to do. */
  public String meaning() {
    return meaning;
  }

  /**
   * The kind of a description's address.
   *
   * @param slug the name in the address
   */
  public static Optional<RefusalKind> of(String slug) {
    return Arrays.stream(values()).filter(k -> k.slug().equals(slug)).findFirst();
  }
}
