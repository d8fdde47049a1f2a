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
 * What somebody looks for among the records; what is left empty is not asked. Days are days of UTC,
 * as all times on record.
 *
 * @param jobOrder job order, exact
 * @param card id of a rule card that had something to say
 * @param severity how grave that was
 * @param verdict words of the verdict
 * @param from first day
 * @param until last day
 */
public record SearchForm(
    String jobOrder, String card, String severity, String verdict, String from, String until) {

  /** Reads what was sent. */
  static SearchForm of(Map<String, String> sent) {
    return new SearchForm(
        said(sent, "jobOrder"),
        said(sent, "card"),
        said(sent, "severity"),
        said(sent, "verdict"),
        said(sent, "from"),
        said(sent, "until"));
  }

  private static String said(Map<String, String> sent, String name) {
    return sent.getOrDefault(name, "").strip();
  }

  /** What is wrong, by the name of the field; empty if nothing is. */
  public Map<String, String> faults() {
    Map<String, String> faults = new LinkedHashMap<>();
    for (Map.Entry<String, String> day : Map.of("from", from, "until", until).entrySet()) {
      if (!day.getValue().isEmpty() && day(day.getValue()).isEmpty()) {
        faults.put(day.getKey(), "is no day; a day is written such as 2026-11-25");
      }
    }
    return faults;
  }

  /** The query that says the same; days that are none are not asked. */
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

  /** An address that asks the same, the query encoded. */
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
