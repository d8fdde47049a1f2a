package org.standproud.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.RequestDispatcher;
import java.io.EOFException;
import java.io.IOException;
import java.net.SocketTimeoutException;
import org.apache.catalina.connector.ClientAbortException;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.CannotGetJdbcConnectionException;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.validation.Validator;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.audit.records.RecordNotStored;
import org.standproud.audit.records.StoreBusy;

/** The answer to a caller when the service itself cannot continue. */
class FaultsTest {

  private static final Validator NOTHING_TO_VALIDATE =
      Validator.forInstanceOf(Object.class, (target, errors) -> {});

  private final MockMvc service =
      MockMvcBuilders.standaloneSetup(new Failing())
          .setValidator(NOTHING_TO_VALIDATE)
          .setControllerAdvice(new ProblemExceptionHandler())
          .build();

  @Test
  void aFullQueueOfRecordsIsReportedWithRetryAfter() throws Exception {
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
  void aDatabaseThatIsAwayIsReportedWithRetryAfter() throws Exception {
    MockHttpServletResponse answer = answer("/away");
    assertThat(answer.getStatus()).isEqualTo(503);
    assertThat(answer.getHeader("Retry-After")).matches("[1-9][0-9]*");
    assertThat(answer.getContentAsString())
        .contains("/problems/store-away")
        .doesNotContain("pump 7");
  }

  @Test
  void aDatabaseThatIsAwayDuringAuthenticationIsReportedInTheSameWay() throws Exception {
    MockHttpServletResponse answer =
        MockMvcBuilders.standaloneSetup(
                new ContainerErrorController(new ProblemRenderer(new ProblemExceptionHandler())))
            .setValidator(NOTHING_TO_VALIDATE)
            .addPlaceholderValue("server.error.path", "/error")
            .build()
            .perform(
                MockMvcRequestBuilders.get("/error")
                    .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 500)
                    .requestAttr(
                        RequestDispatcher.ERROR_EXCEPTION,
                        new CannotGetJdbcConnectionException("database of pump 7")))
            .andReturn()
            .getResponse();
    assertThat(answer.getStatus()).isEqualTo(503);
    assertThat(answer.getHeader("Retry-After")).matches("[1-9][0-9]*");
    assertThat(answer.getContentAsString())
        .contains("/problems/store-away")
        .doesNotContain("pump 7");
  }

  @Test
  void aCallerWhoGoesAwayInTheMiddleOfHisRequestIsNoFaultOfTheService() throws Exception {
    assertThat(answer("/broken-off").getStatus()).isEqualTo(400);
    assertThat(answer("/stalled").getStatus()).isEqualTo(408);
  }

  @Test
  void aFaultOfTheServiceShowsAReferenceAndNoInternals() throws Exception {
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

    @GetMapping("/away")
    String away() {
      throw new CannotGetJdbcConnectionException("database of pump 7");
    }

    @GetMapping("/broken-off")
    String brokenOff() throws IOException {
      throw new ClientAbortException(new EOFException());
    }

    @GetMapping("/stalled")
    String stalled() throws IOException {
      throw new ClientAbortException(new SocketTimeoutException());
    }

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
