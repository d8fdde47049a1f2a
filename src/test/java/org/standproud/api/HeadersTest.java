package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpHeaders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.IntegrationTest;

/** The headers of each kind of answer: a page, JSON, a file or a refusal. */
@IntegrationTest
class HeadersTest {

  private final RunningService service = RunningService.shared();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/records",
        "/rules",
        "/nothing-is-here",
        "/look/bench.js",
        "/actuator/health",
        "/v1/assessments",
        "/v1/catalogue/machines",
        "/v1/rules",
        "/v1/nothing-is-here"
      })
  void everyAnswerSaysWhatABrowserMayDoWithIt(String address) {
    HttpHeaders headers = service.get(address).headers();
    assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
        .contains("default-src 'none'", "frame-ancestors 'none'")
        .doesNotContain("unsafe");
    assertThat(headers.firstValue("Referrer-Policy").orElseThrow())
        .isIn("same-origin", "no-referrer");
    assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/records", "/rules", "/v1/assessments", "/v1/rules", "/v1/x"})
  void whatContainsJobDataIsCachedNowhere(String address) {
    assertThat(service.get(address).headers().allValues("Cache-Control"))
        .containsExactly("no-store");
  }

  @Test
  void plainHttpDoesNotClaimToBeTls() {
    assertThat(service.get("/").headers().firstValue("Strict-Transport-Security")).isEmpty();
  }
}
