package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.standproud.api.RunningService;
import org.standproud.audit.records.StoredTexts;
import tools.jackson.databind.JsonNode;

/** One record is altered by hand and another is spoilt beyond reading, past the service. */
final class CorruptRowTrial implements Trial {

  private static final int RECORDS = 6;

  /** Which of the assessments, counted from 0. */
  private static final int ALTERED = 1;

  private static final int SPOILT = 3;

  @Override
  public void run(Path work, Figures figures) throws Exception {
    List<HttpResponse<String>> answers = new ArrayList<>();
    try (RunningService service = RunningService.start(work, Path.of("rules"))) {
      for (int i = 0; i < RECORDS; i++) {
        answers.add(service.caller().assess(RunningService.seed("01")));
      }
    }
    List<Integer> places = damage(work);
    try (RunningService service = RunningService.start(work, Path.of("rules"))) {
      look(service.caller(), answers, places.get(ALTERED), places.get(SPOILT), figures);
    }
  }

  /** Places of the assessments in the chain, which holds more than them. */
  private static List<Integer> damage(Path work) {
    JdbcClient client =
        JdbcClient.create(
            new DriverManagerDataSource("jdbc:h2:file:" + work.resolve("standproud")));
    List<Integer> places =
        client
            .sql("select sequence from audit_record where record_type = 'assessment' order by 1")
            .query(Integer.class)
            .list();
    StoredTexts.change(
        client, places.get(ALTERED), text -> text.replace("\"TLW-0101\"", "\"TLW-9999\""));
    StoredTexts.cut(client, places.get(SPOILT), 100);
    return places;
  }

  private static void look(
      RunningService.Caller shop,
      List<HttpResponse<String>> answers,
      int altered,
      int spoilt,
      Figures figures) {
    JsonNode chain = RunningService.json(shop.get("/v1/audit/verification"));
    List<Integer> named = new ArrayList<>();
    chain.get("faults").forEach(fault -> named.add(fault.get("first").intValue()));
    figures.put("records", RECORDS);
    figures.put("damaged", altered + " and " + spoilt);
    figures.put("named-by-proof", named.toString());
    assertThat(named).contains(altered, spoilt).isSubsetOf(altered, spoilt);
    int served = 0;
    for (int i = 0; i < RECORDS; i++) {
      HttpResponse<String> now =
          shop.get(answers.get(i).headers().firstValue("Location").orElseThrow());
      if (i == SPOILT) {
        figures.put("spoilt-answered", now.statusCode());
        assertThat(now.body()).contains("/problems/");
      } else if (i != ALTERED) {
        assertThat(now.body()).isEqualTo(answers.get(i).body());
        served++;
      }
    }
    figures.put("others-served", served);
    assertThat(shop.get("/v1/assessments").statusCode()).isEqualTo(200);
    assertThat(shop.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
  }
}
