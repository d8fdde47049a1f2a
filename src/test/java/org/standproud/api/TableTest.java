package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A table from a spreadsheet is judged row by row. */
@IntegrationTest
class TableTest {

  private static final String COLUMNS =
      "\"Job\":\"/job/jobOrder\",\"Length\":{\"field\":\"/stock/length\",\"unit\":\"in\"},"
          + "\"Grip\":{\"field\":\"/hold/gripDepth\",\"unit\":\"mm\"},"
          + "\"Speed\":\"/cut/spindleSpeed\",\"Locked\":\"/cut/slideLocked\"";

  private final RunningService service = RunningService.shared();

  @Test
  void inchAndMetricColumnsSayTheSameSetUpAsARequestOfItsOwn() {
    List<JsonNode> answers =
        rows(map(""), "Job,Length,Grip,Speed,Locked\nT-1,5.5,40,820,no\nT-2,5.5,20,,false\n");

    assertThat(answers).extracting(a -> a.get("status").intValue()).containsExactly(201, 201);
    JsonNode first = answers.get(0);
    JsonNode setup =
        RunningService.json(service.get(first.get("self").stringValue() + "/evidence"));
    ObjectNode same = RunningService.seed("01");
    ((ObjectNode) same.get("stock")).put("length", 139.7); // 5.5 in, by the inch of 25.4 mm
    JsonNode alone =
        RunningService.json(
            service.get(
                RunningService.json(service.assess(same)).at("/links/evidence").stringValue()));
    assertThat(likely(setup, "stick-out")).isEqualTo(likely(alone, "stick-out"));
    assertThat(likely(setup, "stock length"))
        .isCloseTo(likely(alone, "stock length"), Offset.offset(1e-12));
    assertThat(answers.get(1).get("verdict").stringValue()).isNotEqualTo("run");
  }

  @Test
  void aWrongCellIsReportedByItsColumnAndAffectsNoOtherRow() {
    List<JsonNode> answers =
        rows(
            map(""),
            "Job,Length,Grip,Speed,Locked\nT-3,long,40,820,no\nT-4,5.5,40,820,maybe\n"
                + "T-5,5.5,40\nT-6,5.5,40,820,no\n");

    assertThat(answers)
        .extracting(a -> a.get("status").intValue())
        .containsExactly(422, 422, 400, 201);
    assertThat(answers.get(0).at("/columns/~1stock~1length~1value").stringValue())
        .isEqualTo("Length");
    assertThat(answers.get(1).at("/columns/~1cut~1slideLocked").stringValue()).isEqualTo("Locked");
  }

  @Test
  void unmatchedQuotesEndTheTableAndAreReported() {
    List<JsonNode> answers =
        rows(map(""), "Job,Length,Grip,Speed,Locked\nT-7,5.5,40,820,no\n\"T-8\"x,5.5,40,820,no\n");
    assertThat(answers).extracting(a -> a.get("status").intValue()).containsExactly(201, 400);
    assertThat(answers.get(1).at("/problem/detail").stringValue()).contains("from here on");
  }

  @Test
  void aTableAnsweredAsATableHoldsNoCellThatASpreadsheetWouldRun() throws Exception {
    HttpResponse<String> answer =
        post(
            map(",\"separator\":\";\""),
            "Job;Length;Grip;Speed;Locked\n=1+2;5.5;40;820;no\n@x;5.5;x;820;no\n",
            "text/csv");

    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    List<CSVRecord> rows =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(answer.body()))
            .getRecords();
    assertThat(rows).extracting(r -> r.get("status")).containsExactly("201", "422");
    assertThat(rows.get(0).get("jobOrder")).isEqualTo("'=1+2");
    assertThat(rows.get(1).get("problem")).startsWith("Grip: ");
    assertThat(answer.body().lines().flatMap(l -> Arrays.stream(l.split(","))))
        .noneMatch(cell -> cell.matches("\"?[=+@-].*"));
  }

  @Test
  void aTableSentAgainWithAColumnOfKeysLeavesNoSecondRecord() {
    String map = map(",\"key\":\"Row\"");
    String table = "Row,Job,Length,Grip,Speed,Locked\nr-1,T-KEY,5.5,40,820,no\n";
    assertThat(rows(map, table)).isEqualTo(rows(map, table));
    JsonNode recorded = RunningService.json(service.get("/v1/assessments?jobOrder=T-KEY"));
    assertThat(recorded.get("assessments").size()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"columns\":{\"Job\":\"/job/jobOrdre\"}}",
        "{\"columns\":{\"Job\":{\"field\":\"/job/jobOrder\",\"unit\":\"mm\"}}}",
        "{\"columns\":{\"Job\":\"/job\"}}",
        "{\"columns\":{\"Job\":\"/job/jobOrder\"},\"common\":\"x\"}",
        "{\"columns\":{\"Work\":\"/job/jobOrder\"}}",
        "{\"columns\":{\"Job\":\"/job/jobOrder\"},\"colour\":\"red\"}",
        "{\"columns\":{\"Length\":\"/stock/length\"}}",
        "{\"columns\":{\"Job\":\"/job/jobOrder\"},\"separator\":\"a\"}",
        "{"
      })
  void aMapThatWouldLeaveSomethingUnheardIsRefusedBeforeAnyRowIsJudged(String map) {
    HttpResponse<String> refused = post(map, "Job\nT-9\n", "application/x-ndjson");
    assertThat(refused.statusCode()).as(refused.body()).isEqualTo(400);
  }

  private List<JsonNode> rows(String map, String table) {
    HttpResponse<String> answer = post(map, table, "application/x-ndjson");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return answer.body().lines().map(l -> JsonMapper.shared().readTree(l)).toList();
  }

  private HttpResponse<String> post(String map, String table, String accept) {
    String query = "?map=" + URLEncoder.encode(map, StandardCharsets.UTF_8);
    return service
        .caller()
        .send(
            service
                .caller()
                .to("/v1/assessments/batch" + query)
                .header("Content-Type", "text/csv")
                .header("Accept", accept)
                .POST(HttpRequest.BodyPublishers.ofString(table)));
  }

  private static String map(String more) {
    return "{\"columns\":{%s},\"common\":%s%s}".formatted(COLUMNS, RunningService.seed("01"), more);
  }

  private static double likely(JsonNode evidence, String fact) {
    return evidence
        .get("facts")
        .valueStream()
        .filter(line -> line.at("/value/fact").stringValue().equals(fact))
        .findFirst()
        .orElseThrow()
        .at("/value/band/likely")
        .doubleValue();
  }
}
