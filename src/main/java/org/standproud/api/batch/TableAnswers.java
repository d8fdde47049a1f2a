package org.standproud.api.batch;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ProblemDetail;
import org.standproud.assessment.batch.LineResult;
import org.standproud.assessment.batch.OrderedParallelism;
import org.standproud.audit.records.InertCell;
import org.standproud.setup.request.Problem;

/** Writes answers as a CSV table (RFC 4180), one row each. */
final class TableAnswers implements OrderedParallelism.Sink<LineResult>, AutoCloseable {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader("line", "status", "jobOrder", "id", "verdict", "score", "ruleBase", "problem")
          .get();

  private final CSVPrinter table;

  TableAnswers(Writer out) throws IOException {
    this.table = new CSVPrinter(out, FORMAT);
  }

  @Override
  public void take(LineResult answer, boolean last) throws IOException {
    table.printRecord(
        answer.line(),
        answer.status(),
        InertCell.of(answer.jobOrder()),
        answer.id(),
        answer.verdict(),
        answer.score(),
        answer.ruleBase(),
        answer.problem() instanceof ProblemDetail problem
            ? InertCell.of(errors(problem, answer.columns()))
            : null);
    if (last) {
      table.flush();
    }
  }

  /** All errors, by column where one is known. */
  private static String errors(ProblemDetail problem, @Nullable Map<String, String> columns) {
    Map<String, Object> more = problem.getProperties();
    if (more == null || !(more.get("errors") instanceof List<?> errors)) {
      return String.valueOf(problem.getDetail());
    }
    return errors.stream()
        .map(Problem.class::cast)
        .map(
            e ->
                (columns == null ? e.pointer() : columns.getOrDefault(e.pointer(), e.pointer()))
                    + ": "
                    + e.message())
        .collect(Collectors.joining("; "));
  }

  @Override
  public void close() throws IOException {
    table.close();
  }
}
