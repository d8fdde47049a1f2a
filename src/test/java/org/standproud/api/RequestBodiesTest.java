package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.util.unit.DataSize;
import org.standproud.refusal.BodyTooLargeException;

/** The limits of bodies. */
class RequestBodiesTest {

  private static final RequestBodies BODIES =
      new RequestBodies(DataSize.ofBytes(10), Duration.ofSeconds(10));

  private static MockHttpServletRequest request(int bytes) {
    MockHttpServletRequest request = new MockHttpServletRequest();
    request.setContent("x".repeat(bytes).getBytes());
    return request;
  }

  @Test
  void aCallWithALimitOfItsOwnMaySendMoreThanTheUsualBody() throws IOException {
    assertThat(BODIES.text(request(1000), 1000)).hasSize(1000);
    assertThatThrownBy(() -> BODIES.text(request(1001), 1000))
        .isInstanceOf(BodyTooLargeException.class);
  }

  @Test
  void anyOtherCallIsHeldToTheUsualLimit() {
    assertThatThrownBy(() -> BODIES.text(request(11))).isInstanceOf(BodyTooLargeException.class);
  }
}
