package org.standproud.api.problem;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.refusal.RefusalKind;

/** Tells as problems what the server itself refuses before any controller is asked. */
@Hidden
@RestController
class ContainerErrorController implements ErrorController {

  private final ProblemRenderer problems;

  ContainerErrorController(ProblemRenderer problems) {
    this.problems = problems;
  }

  @RequestMapping("${server.error.path:/error}")
  ResponseEntity<ProblemDetail> error(HttpServletRequest request) {
    // Whoever asks is looked up before any controller is asked, and that may find no database.
    if (request.getAttribute(RequestDispatcher.ERROR_EXCEPTION) instanceof Exception fault) {
      return problems.answer(fault);
    }
    Object told = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
    int status =
        told instanceof Integer code ? code : Problems.status(RefusalKind.NOT_FOUND).value();
    RefusalKind kind = Problems.kind(status);
    ProblemDetail problem = Problems.of(kind);
    problem.setStatus(status);
    return ResponseEntity.status(status)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }
}
