package org.standproud.api.assessment;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.RecordQuery.By;
import org.standproud.refusal.BadParameterException;

/**
 * Filter for assessments: those that match every parameter given.
 *
 * @param jobOrder ISA-95 job order
 * @param workMaster ISA-95 work master
 * @param operation operation of the job
 * @param machine name of the machine
 * @param caller the caller
 * @param verdict the verdict in words
 * @param ruleBase revision of the rule base
 * @param catalogue revision of the catalogue
 * @param card card of a finding
 * @param severity severity of that finding
 * @param kind kind of that finding
 * @param from earliest time
 * @param until end of the period, exclusive
 * @param limit most assessments in one page
 * @param cursor next of an earlier page
 */
public record Filter(
    @Nullable @Schema(description = "ISA-95 job order, exact", example = "TLW-0103")
        String jobOrder,
    @Nullable @Schema(description = "ISA-95 work master, exact") String workMaster,
    @Nullable @Schema(description = "operation of the job, exact") String operation,
    @Nullable @Schema(description = "name of the machine, exact") String machine,
    @Nullable @Schema(description = "caller, exact") String caller,
    @Nullable
        @Schema(
            description = "verdict",
            allowableValues = {"run", "run with care", "do not run", "not judged"})
        String verdict,
    @Nullable @Schema(description = "revision of the rule base") String ruleBase,
    @Nullable @Schema(description = "revision of the catalogue") String catalogue,
    @Nullable
        @Schema(
            description =
                "id of a rule card; card, severity and kind must hold for one and the same finding")
        String card,
    @Nullable
        @Schema(
            description = "severity of a finding",
            allowableValues = {"stop", "caution", "note"})
        String severity,
    @Nullable
        @Schema(
            description = "kind of a finding",
            allowableValues = {"fail", "open"})
        String kind,
    @Nullable
        @Schema(
            description = "earliest time, ISO 8601 with zone",
            type = "string",
            format = "date-time")
        String from,
    @Nullable
        @Schema(
            description = "end of the period, exclusive, ISO 8601 with zone",
            type = "string",
            format = "date-time")
        String until,
    @Nullable
        @Schema(
            description = "most assessments in one page; default 50",
            type = "integer",
            minimum = "1")
        String limit,
    @Nullable @Schema(description = "next of the previous page") String cursor) {

  private static final int USUAL_LIMIT = 50;

  private static final List<String> NAMES =
      Arrays.stream(Filter.class.getRecordComponents()).map(c -> c.getName()).toList();

  /**
   * Refuses parameters that would be ignored.
   *
   * @throws BadParameterException if a parameter is unknown or given twice
   */
  public static void refuseUnheard(Map<String, String[]> parameters) {
    Set<String> unknown = new TreeSet<>(parameters.keySet());
    unknown.removeAll(NAMES);
    if (!unknown.isEmpty()) {
      throw new BadParameterException(
          String.join(", ", unknown), "the parameters are " + String.join(", ", NAMES));
    }
    parameters.forEach(
        (name, values) -> {
          if (values.length > 1) {
            throw new BadParameterException(name, "it is given more than once");
          }
        });
  }

  /** Converts it to a query. */
  public RecordQuery query() {
    RecordQuery query = RecordQuery.all().between(time("from", from), time("until", until));
    query = narrowed(query, By.JOB_ORDER, jobOrder);
    query = narrowed(query, By.WORK_MASTER, workMaster);
    query = narrowed(query, By.OPERATION, operation);
    query = narrowed(query, By.MACHINE, machine);
    query = narrowed(query, By.CALLER, caller);
    query = narrowed(query, By.VERDICT, verdict);
    query = narrowed(query, By.RULE_BASE, ruleBase);
    query = narrowed(query, By.CATALOGUE, catalogue);
    query = narrowed(query, By.CARD, card);
    query = narrowed(query, By.SEVERITY, severity);
    return narrowed(query, By.KIND, kind);
  }

  int most() {
    try {
      return limit == null ? USUAL_LIMIT : Integer.parseInt(limit);
    } catch (NumberFormatException e) {
      throw new BadParameterException("limit", "must be a whole number");
    }
  }

  private static RecordQuery narrowed(RecordQuery query, By by, @Nullable String word) {
    return word == null ? query : query.with(by, word);
  }

  private static @Nullable Instant time(String name, @Nullable String text) {
    try {
      return text == null ? null : Instant.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadParameterException(name, "must be a time such as 2026-11-25T08:00:00Z");
    }
  }
}
