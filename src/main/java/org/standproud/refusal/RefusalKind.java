package org.standproud.refusal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Every kind of refusal; its type is the address of its description. */
public enum RefusalKind {
  /** Not JSON. */
  MALFORMED_REQUEST(
      "The request is not well-formed JSON",
      "Reading stopped at the line and column given. Text that is not UTF-8, that repeats a key, or"
          + " that is nested too deep is refused in the same way."),
  /** A parameter or header that cannot be used. */
  BAD_PARAMETER(
      "A parameter cannot be used",
      "The detail names the parameter and what it may be. An unknown parameter is refused too, so"
          + " that a misspelt filter never returns everything."),
  /** JSON that does not describe a set-up. */
  SETUP_REFUSED(
      "The request does not describe a set-up",
      "errors lists every problem: the field as a JSON Pointer, its value, the allowed values"
          + " with their unit, and what was probably meant."),
  /** JSON that does not describe a job that can be planned. */
  JOB_REFUSED(
      "The request does not describe a job",
      "errors lists every problem, as for a set-up; also what is missing on the shelf if nothing"
          + " there reaches a face. Nothing was planned."),
  /** Cards that the gate refuses. */
  CARDS_REFUSED(
      "The rule cards are refused",
      "errors lists every problem by file, line and column. The rule base in service is"
          + " unchanged."),
  /** JSON that does not describe an item of the catalogue. */
  ITEM_REFUSED(
      "The request does not describe an item of this kind",
      "errors lists every problem, as for a set-up. Nothing was changed."),
  /** A table with rows that cannot be imported. */
  IMPORT_REFUSED(
      "The import is refused",
      "The member rows lists what is wrong with each row, if anything. Nothing was changed."),
  /** A recording that cannot be read, or in which nothing is to be measured. */
  RECORDING_REFUSED(
      "The recording holds no measurement",
      "The detail says what is wrong with it and how to record again. Nothing was changed."),
  /** The resource changed since the caller fetched it. */
  PRECONDITION_FAILED(
      "The resource has changed",
      "It was changed meanwhile, exists already, or does not exist. Fetch it again, look at"
          + " what changed, and send its ETag as If-Match."),
  /** A change without If-Match or If-None-Match. */
  PRECONDITION_REQUIRED(
      "An If-Match header is required",
      "Send the ETag of what you fetched as If-Match, or If-None-Match: * to create something, so"
          + " that no change is lost."),
  /** No valid key or token. */
  KEY_WANTED(
      "A key is required",
      "Send a key as Authorization: Bearer <key>; an operator issues keys. An unknown, expired or"
          + " revoked key is refused."),
  /** The caller lacks the role. */
  NOT_ALLOWED(
      "This caller may not do this",
      "The detail names the role required. An operator can issue a key with it."),
  /** Too many calls. */
  TOO_MANY_CALLS(
      "Too many calls",
      "Nothing was done. Try again after Retry-After; the limit is"
          + " standproud.limits.calls-per-minute."),
  /** Not found. */
  NOT_FOUND("There is nothing here", "No resource has this address."),
  /** Removed under the retention rule. */
  GONE(
      "This was removed",
      "The text was removed under the retention rule of the shop; the record chain says who did it"
          + " and why."),
  /** A conflict with the current state. */
  CONFLICT("This conflicts with the current state", "The detail says why."),
  /** An idempotency key used for another request. */
  KEY_REUSED(
      "This Idempotency-Key was used for another request",
      "Nothing was assessed. A key belongs to one request, whatever its white space; use a new key"
          + " for a new request."),
  /** A key whose first request is still being answered. */
  KEY_IN_USE(
      "The first request with this Idempotency-Key is still being answered",
      "Nothing was assessed. Send the same request with the same key again after Retry-After: it"
          + " gets the answer of the first."),
  /** A method not allowed at this address. */
  METHOD_NOT_ALLOWED("Method not allowed", "The header Allow lists the methods."),
  /** No answer in the media type asked for. */
  NOT_ACCEPTABLE(
      "No answer in the media type asked for",
      "Answers are application/json, problems application/problem+json."),
  /** A body in an unsupported media type. */
  UNSUPPORTED_MEDIA_TYPE("Unsupported media type", "Send application/json."),
  /** A body over the limit. */
  TOO_LARGE("The body is too large", "The limit is standproud.api.largest-body."),
  /** The queue of records to be stored is full. */
  BUSY(
      "Too many answers are waiting to be stored",
      "Nothing was assessed. Try again after Retry-After."),
  /** The record could not be stored. */
  NOT_STORED(
      "The answer could not be stored",
      "An answer that is not on disk is not sent. Try again; if it persists, check the database."),
  /** The database does not answer. */
  STORE_AWAY(
      "The records cannot be reached",
      "The database is not answering. Try again after Retry-After."),
  /** The service is shutting down. */
  STOPPING(
      "The service is stopping",
      "The request was not processed. Send it again after Retry-After, or to another replica."),
  /** More batches than run at a time. */
  TOO_MANY_BATCHES(
      "Too many batches are running",
      "Nothing was assessed. Try again after Retry-After; the limit is"
          + " standproud.api.most-batches."),
  /** More exports than run at a time. */
  TOO_MANY_EXPORTS(
      "Too many exports are running",
      "Nothing was read. Try again after Retry-After; the limit is"
          + " standproud.audit.most-exports."),
  /** Too much long work at once. */
  TOO_MUCH_WORK(
      "Too many long computations are running",
      "Nothing was done. Remedies, other holds, envelopes, plans, jobs and checks of cards take"
          + " turns, so that set-ups are still checked. Try again after Retry-After."),
  /** A body that does not arrive. */
  TOO_SLOW(
      "The request did not arrive in time",
      "The body came too slowly or not at all, so it was not processed. The limit is"
          + " standproud.api.slowest-body."),
  /** No rule base or no catalogue. */
  NOT_READY(
      "The service is not ready",
      "No rule base or no catalogue is in service. The detail and the readiness health say why."),
  /** A fault of the service. */
  INTERNAL("Internal error", "The log has the details under the reference given as instance."),
  /** Anything else the server refuses. */
  REFUSED(
      "The request is refused", "The address, the method or the headers could not be understood.");

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
      case KEY_IN_USE,
          BUSY,
          NOT_STORED,
          STORE_AWAY,
          STOPPING,
          TOO_MANY_BATCHES,
          TOO_MANY_EXPORTS,
          TOO_MUCH_WORK ->
          true;
      default -> false;
    };
  }

  /** The kind in one phrase. */
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
