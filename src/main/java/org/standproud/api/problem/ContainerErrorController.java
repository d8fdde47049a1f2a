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

/** Answers with a problem when the server refuses a request before any controller runs. */
@Hidden
@RestController
class ContainerErrorController implements ErrorController {

  private final ProblemRenderer problems;

  ContainerErrorController(ProblemRenderer problems) {
    this.problems = problems;
  }

  @RequestMapping("${server.error.path:/error}")
  ResponseEntity<ProblemDetail> error(HttpServletRequest request) {
    // Authentication runs before any controller, and may fail without a database.
    if (request.getAttribute(RequestDispatcher.ERROR_EXCEPTION) instanceof Exception fault) {
      return problems.answer(fault);
    }
    Object attribute = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
    int status =
        attribute instanceof Integer code ? code : Problems.status(RefusalKind.NOT_FOUND).value();
    RefusalKind kind = Problems.kind(status);
    ProblemDetail problem = Problems.of(kind);
    problem.setStatus(status);
    return ResponseEntity.status(status)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }
}
