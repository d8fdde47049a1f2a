package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;
import tools.jackson.databind.node.ObjectNode;

/** A shop system that heard nothing sends its set-up again, and is not answered twice. */
@IntegrationTest
class IdempotencyTest {

  private final RunningService service = RunningService.shared();

  @Test
  void theSameSetUpUnderTheSameKeyGetsTheSameAnswerByteForByteAndLeavesOneRecord() {
    ObjectNode setup = job("IK-ONCE");
    String key = "\"" + UUID.randomUUID() + "\"";

    HttpResponse<String> first = post(setup.toString(), key);
    HttpResponse<String> again = post(setup.toString(), key);

    assertThat(first.statusCode()).as(first.body()).isEqualTo(201);
    assertThat(again.statusCode()).isEqualTo(201);
    assertThat(again.body()).isEqualTo(first.body());
    assertThat(again.headers().firstValue("Location"))
        .isEqualTo(first.headers().firstValue("Location"));
    assertThat(recorded("IK-ONCE")).isEqualTo(1);
  }

  @Test
  void whiteSpaceAndOrderOfMembersAreNotPartOfARequestNorAreTheQuotesOfAKey() {
    ObjectNode setup = job("IK-SPACE");
    String key = UUID.randomUUID().toString();
    ObjectNode turned = setup.objectNode();
    List<String> names = new ArrayList<>(setup.propertyNames());
    for (int i = names.size() - 1; i >= 0; i--) {
      turned.set(names.get(i), setup.get(names.get(i)));
    }

    HttpResponse<String> first = post(setup.toString(), "\"" + key + "\"");
    HttpResponse<String> again = post(turned.toPrettyString(), key);

    assertThat(again.body()).isEqualTo(first.body());
  }

  @Test
  void anotherSetUpUnderTheSameKeyIsRefusedAndLeavesNoRecord() {
    String key = UUID.randomUUID().toString();
    post(job("IK-FIRST").toString(), key);
    HttpResponse<String> other = post(job("IK-OTHER").toString(), key);

    assertThat(other.statusCode()).isEqualTo(422);
    assertThat(RunningService.json(other).get("type").stringValue())
        .isEqualTo("/problems/key-reused");
    assertThat(recorded("IK-OTHER")).isZero();
  }

  @Test
  void aRefusedSetUpDoesNotUseItsKeyUp() {
    String key = UUID.randomUUID().toString();
    assertThat(post("{}", key).statusCode()).isEqualTo(422);
    assertThat(post(job("IK-MENDED").toString(), key).statusCode()).isEqualTo(201);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"", "\"open", " "})
  void aKeyThatIsNoneIsRefusedBeforeAnythingIsJudged(String key) {
    HttpResponse<String> refused = post(job("IK-BAD").toString(), key);
    assertThat(refused.statusCode()).as(refused.body()).isEqualTo(400);
    assertThat(recorded("IK-BAD")).isZero();
  }

  @Test
  void ofEightThatSendTheSameAtOnceAllGetTheSameAnswer() throws Exception {
    String setup = job("IK-EIGHT").toString();
    String key = UUID.randomUUID().toString();
    CyclicBarrier together = new CyclicBarrier(8);
    Callable<HttpResponse<String>> send =
        () -> {
          together.await();
          return post(setup, key);
        };
    ExecutorService callers = Executors.newFixedThreadPool(8);
    List<HttpResponse<String>> answers = new ArrayList<>();
    try {
      for (Future<HttpResponse<String>> answer :
          callers.invokeAll(java.util.Collections.nCopies(8, send))) {
        answers.add(answer.get());
      }
    } finally {
      callers.shutdown();
    }

    answers.forEach(a -> assertThat(a.statusCode()).as(a.body()).isIn(201, 409));
    answers.stream()
        .filter(a -> a.statusCode() == 409)
        .forEach(a -> assertThat(a.headers().firstValue("Retry-After")).isPresent());
    Set<String> said =
        answers.stream()
            .filter(a -> a.statusCode() == 201)
            .map(HttpResponse::body)
            .collect(Collectors.toSet());
    assertThat(said).hasSize(1).contains(post(setup, key).body());
    assertThat(recorded("IK-EIGHT")).isEqualTo(1);
  }

  private int recorded(String jobOrder) {
    return RunningService.json(service.get("/v1/assessments?jobOrder=" + jobOrder))
        .get("assessments")
        .size();
  }

  private static ObjectNode job(String order) {
    ObjectNode setup = RunningService.seed("03");
    ((ObjectNode) setup.get("job")).put("jobOrder", order);
    return setup;
  }

  private HttpResponse<String> post(String setup, String key) {
    return service
        .caller()
        .send(
            service
                .caller()
                .to("/v1/assessments")
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", key)
                .POST(HttpRequest.BodyPublishers.ofString(setup)));
  }
}
