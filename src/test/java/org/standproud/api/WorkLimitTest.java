package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.standproud.IntegrationTest;
import org.standproud.api.problem.WorkLimit;
import org.standproud.refusal.TooMuchWorkException;

@IntegrationTest
class WorkLimitTest {

  private static final Object HANDLER = new Object();

  private static MockHttpServletRequest begun(WorkLimit limit) throws InterruptedException {
    MockHttpServletRequest request = new MockHttpServletRequest();
    assertThat(limit.preHandle(request, new MockHttpServletResponse(), HANDLER)).isTrue();
    return request;
  }

  private static void ended(WorkLimit limit, MockHttpServletRequest request) {
    limit.afterCompletion(request, new MockHttpServletResponse(), HANDLER, null);
  }

  @Test
  void oneMoreThanMayBeIsRefusedUntilOneHasEnded() throws InterruptedException {
    WorkLimit limit = new WorkLimit(2, 0, Duration.ofSeconds(10));
    MockHttpServletRequest first = begun(limit);
    begun(limit);
    assertThatThrownBy(() -> begun(limit)).isInstanceOf(TooMuchWorkException.class);
    ended(limit, first);
    ended(limit, first);
    begun(limit);
    assertThatThrownBy(() -> begun(limit)).isInstanceOf(TooMuchWorkException.class);
  }

  /** All turns are taken and all who may wait do, and another's set-up is judged all the same. */
  @Test
  void setUpsAreJudgedWhileRecommendationsAreRefused(@TempDir Path records)
      throws InterruptedException {
    ExecutorService callers = Executors.newCachedThreadPool();
    try (RunningService service = RunningService.start(records, Path.of("rules"))) {
      String self =
          service.assess(RunningService.seed("03")).headers().firstValue("Location").orElseThrow();
      WorkLimit limit = service.part(WorkLimit.class);
      int most = Math.max(1, Runtime.getRuntime().availableProcessors() / 2);
      List<MockHttpServletRequest> held = new ArrayList<>();
      for (int i = 0; i < most; i++) {
        held.add(begun(limit));
      }
      List<CompletableFuture<HttpResponse<String>>> waiting = new ArrayList<>();
      for (int i = 0; i < 16 * most; i++) {
        waiting.add(
            CompletableFuture.supplyAsync(() -> service.get(self + "/plan?remove=1"), callers));
      }
      await().atMost(Duration.ofSeconds(9)).until(() -> limit.waiting() == 16 * most);
      HttpResponse<String> refused = service.get(self + "/remedies");
      assertThat(refused.statusCode()).isEqualTo(503);
      assertThat(refused.headers().firstValue("Retry-After")).isPresent();
      assertThat(refused.body()).contains("/problems/too-much-work");
      assertThat(service.assess(RunningService.seed("03")).statusCode()).isEqualTo(201);
      held.forEach(request -> ended(limit, request));
      waiting.forEach(answer -> assertThat(answer.join().statusCode()).isIn(200, 503));
    } finally {
      callers.shutdownNow();
    }
  }
}
