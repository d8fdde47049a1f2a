package org.standproud.api.problem;

import io.swagger.v3.oas.annotations.Hidden;
import java.util.Arrays;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.refusal.NotFoundException;
import org.standproud.refusal.RefusalKind;

/** The descriptions behind the types of problems. */
@Hidden
@RestController
class ProblemsController {

  /**
   * A kind of problem.
   *
   * @param type its address
   * @param status its usual status
   * @param title the kind in one phrase
   * @param meaning what it means and what to do
   */
  record Description(String type, int status, String title, String meaning) {

    static Description of(RefusalKind kind) {
      return new Description(
          kind.type(), Problems.status(kind).value(), kind.title(), kind.meaning());
    }
  }

  @GetMapping("/problems")
  List<Description> all() {
    return Arrays.stream(RefusalKind.values()).map(Description::of).toList();
  }

  @GetMapping("/problems/{kind}")
  Description one(@PathVariable String kind) {
    return RefusalKind.of(kind)
        .map(Description::of)
        .orElseThrow(() -> new NotFoundException("No kind of problem has this name."));
  }
}
