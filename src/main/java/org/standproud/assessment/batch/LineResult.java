package org.standproud.assessment.batch;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.RefusalRenderer;
import org.standproud.audit.AuditRecord;

/**
 * The result for one line or row of a batch.
 *
 * @param line number of its line or row, from 1; blank lines count, a heading does not
 * @param status the HTTP status that a single request would get; 201 if it was judged, otherwise
 *     that of the problem
 * @param id id of the assessment; print it on the traveler
 * @param jobOrder job order of the set-up, if it names one
 * @param verdict the verdict in words
 * @param score 0 to 100
 * @param ruleBase revision of the rule base that judged it
 * @param self link to the whole answer
 * @param problem why it was not judged
 * @param columns for a row of a table, the heading of the column behind each pointer in the problem
 */
public record LineResult(
    long line,
    int status,
    @Nullable UUID id,
    @Nullable String jobOrder,
    @Nullable String verdict,
    @Nullable Double score,
    @Nullable String ruleBase,
    @Nullable String self,
    @Schema(ref = "#/components/schemas/Problem") @Nullable Object problem,
    @Nullable Map<String, String> columns) {

  /** The status of a judged line, like that of a single request: 201. */
  static final int JUDGED = 201;

  static LineResult judged(long line, AuditRecord record) {
    return new LineResult(
        line,
        JUDGED,
        record.id(),
        record.asked().jobOrder(),
        record.judged().verdict(),
        record.judged().score(),
        record.versions().ruleBase(),
        "/v1/assessments/" + record.id(),
        null,
        null);
  }

  static LineResult refused(
      long line, RefusalRenderer.Document problem, @Nullable Map<String, String> columns) {
    return new LineResult(
        line, problem.status(), null, null, null, null, null, null, problem.body(), columns);
  }
}
