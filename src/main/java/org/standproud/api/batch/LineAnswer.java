package org.standproud.api.batch;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.standproud.audit.AuditRecord;

/**
 * What came of a line.
 *
 * @param line number of the line or row that it answers, from 1
 * @param status what a request of its own would have been answered with: 201, or that of the
 *     problem
 * @param id id of the assessment, to be printed on the traveler
 * @param jobOrder job order of the set-up, if it names one
 * @param verdict words of the verdict
 * @param score 0 to 100
 * @param ruleBase revision of the rule base that judged it
 * @param self where the whole answer is
 * @param problem why it was not judged
 * @param columns for a row of a table, the column that stands for each field the problem names
 */
record LineAnswer(
    long line,
    int status,
    @Nullable UUID id,
    @Nullable String jobOrder,
    @Nullable String verdict,
    @Nullable Double score,
    @Nullable String ruleBase,
    @Nullable String self,
    @Schema(ref = "#/components/schemas/Problem") @Nullable ProblemDetail problem,
    @Nullable Map<String, String> columns) {

  static LineAnswer judged(long line, AuditRecord record) {
    return new LineAnswer(
        line,
        HttpStatus.CREATED.value(),
        record.id(),
        record.asked().jobOrder(),
        record.judged().verdict(),
        record.judged().score(),
        record.versions().ruleBase(),
        "/v1/assessments/" + record.id(),
        null,
        null);
  }

  static LineAnswer refused(
      long line, ProblemDetail problem, @Nullable Map<String, String> columns) {
    return new LineAnswer(
        line, problem.getStatus(), null, null, null, null, null, null, problem, columns);
  }
}
