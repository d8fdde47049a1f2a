package org.standproud.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.audit.store.RecordNotStored;
import org.standproud.audit.store.StoreBusy;

/** What a caller is told when the service itself cannot go on. */
class FaultsTest {

  private final MockMvc service =
      MockMvcBuilders.standaloneSetup(new Failing())
          .setControllerAdvice(new ProblemAnswers())
          .build();

  @Test
  void aFullLineBeforeTheDiskIsToldWithWhenToComeAgain() throws Exception {
    MockHttpServletResponse answer = answer("/busy");
    assertThat(answer.getStatus()).isEqualTo(503);
    assertThat(answer.getHeader("Retry-After")).matches("[1-9][0-9]*");
    assertThat(answer.getContentAsString()).contains("/problems/busy");
  }

  @Test
  void anAnswerThatCouldNotBeStoredIsNotGiven() throws Exception {
    MockHttpServletResponse answer = answer("/unstored");
    assertThat(answer.getStatus()).isEqualTo(503);
    assertThat(answer.getContentAsString())
        .contains("/problems/not-stored", "urn:uuid:")
        .doesNotContain("disk of pump 7");
  }

  @Test
  void aFaultOfTheServiceTellsAReferenceAndNothingOfItsInside() throws Exception {
    MockHttpServletResponse answer = answer("/broken");
    assertThat(answer.getStatus()).isEqualTo(500);
    assertThat(answer.getContentType()).isEqualTo("application/problem+json");
    assertThat(answer.getContentAsString())
        .contains("/problems/internal", "urn:uuid:")
        .doesNotContain("secret", "Exception", "org.standproud", "trace");
  }

  private MockHttpServletResponse answer(String path) throws Exception {
    return service.perform(MockMvcRequestBuilders.get(path)).andReturn().getResponse();
  }

  @RestController
  static class Failing {

    @GetMapping("/busy")
    String busy() {
      throw new StoreBusy();
    }

    @GetMapping("/unstored")
    String unstored() {
      throw new RecordNotStored("disk of pump 7 is full");
    }

    @GetMapping("/broken")
    String broken() {
      throw new IllegalStateException("a secret of the inside");
    }
  }
}
