package org.standproud.api.assessments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.util.unit.DataSize;
import org.standproud.api.problem.BodyTooSlow;

/** Bodies are read up to a length, and up to a time. */
class BodiesTest {

  private static final DataSize LIMIT = DataSize.ofKilobytes(64);

  @Test
  void aBodyThatTakesLongerThanItMayIsNotReadOn() throws Exception {
    MockHttpServletRequest request = new MockHttpServletRequest();
    request.setContent(new byte[20_000]);
    assertThatThrownBy(() -> new Bodies(LIMIT, Duration.ZERO).text(request))
        .isInstanceOf(BodyTooSlow.class);
    request.setContent(new byte[20_000]);
    assertThat(new Bodies(LIMIT, Duration.ofHours(1)).text(request)).hasSize(20_000);
  }
}
