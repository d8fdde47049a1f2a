package org.standproud.web.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.web.util.UriComponentsBuilder;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.RecordQuery.By;

/**
 * A search among the records; empty fields are ignored. Days are UTC, like all recorded times.
 *
 * @param jobOrder job order, exact
 * @param card id of a card with a finding
 * @param severity severity of that finding
 * @param verdict the verdict in words
 * @param from first day
 * @param until last day
 */
public record SearchForm(
    String jobOrder, String card, String severity, String verdict, String from, String until) {

  /** Reads the submitted form. */
  static SearchForm of(Map<String, String> sent) {
    return new SearchForm(
        field(sent, "jobOrder"),
        field(sent, "card"),
        field(sent, "severity"),
        field(sent, "verdict"),
        field(sent, "from"),
        field(sent, "until"));
  }

  private static String field(Map<String, String> sent, String name) {
    return sent.getOrDefault(name, "").strip();
  }

  /** Errors by the name of the field; may be empty. */
  public Map<String, String> faults() {
    Map<String, String> faults = new LinkedHashMap<>();
    for (Map.Entry<String, String> day : Map.of("from", from, "until", until).entrySet()) {
      if (!day.getValue().isEmpty() && day(day.getValue()).isEmpty()) {
        faults.put(day.getKey(), "must be a day such as 2026-11-25");
      }
    }
    return faults;
  }

  /** Converts it to a query; invalid days are ignored. */
  RecordQuery query() {
    RecordQuery query =
        RecordQuery.all()
            .between(
                day(from).map(SearchForm::begin).orElse(null),
                day(until).map(last -> begin(last.plusDays(1))).orElse(null));
    query = narrowed(query, By.JOB_ORDER, jobOrder);
    query = narrowed(query, By.CARD, card);
    query = narrowed(query, By.SEVERITY, severity);
    return narrowed(query, By.VERDICT, verdict);
  }

  /** The address of the same search, with its query encoded. */
  public String address(String path) {
    UriComponentsBuilder address = UriComponentsBuilder.fromPath(path);
    fields().forEach((name, value) -> address.queryParam(name, "{" + name + "}"));
    return address.encode().buildAndExpand(fields()).toUriString();
  }

  private Map<String, String> fields() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("jobOrder", jobOrder);
    fields.put("card", card);
    fields.put("severity", severity);
    fields.put("verdict", verdict);
    fields.put("from", from);
    fields.put("until", until);
    fields.values().removeIf(String::isEmpty);
    return fields;
  }

  private static RecordQuery narrowed(RecordQuery query, By by, String word) {
    return word.isEmpty() ? query : query.with(by, word);
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Instant begin(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant();
  }
}
