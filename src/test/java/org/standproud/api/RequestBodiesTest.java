package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.util.unit.DataSize;
import org.standproud.refusal.BodyTooSlowException;

/** Bodies are read up to a length, and up to a time. */
class RequestBodiesTest {

  private static final DataSize LIMIT = DataSize.ofKilobytes(64);

  @Test
  void aBodyThatTakesLongerThanItMayIsNotReadOn() throws Exception {
    MockHttpServletRequest request = new MockHttpServletRequest();
    request.setContent(new byte[20_000]);
    assertThatThrownBy(() -> new RequestBodies(LIMIT, Duration.ZERO).text(request))
        .isInstanceOf(BodyTooSlowException.class);
    request.setContent(new byte[20_000]);
    assertThat(new RequestBodies(LIMIT, Duration.ofHours(1)).text(request)).hasSize(20_000);
  }
}
