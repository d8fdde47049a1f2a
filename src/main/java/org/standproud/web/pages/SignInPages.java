package org.standproud.web.pages;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The sign-in page, and the page for callers without the role. */
@Controller
class SignInPages {

  @GetMapping("/sign-in")
  ModelAndView signIn(@RequestParam(required = false) @Nullable String refused) {
    ModelAndView page = new ModelAndView("sign-in");
    page.addObject("refused", refused != null);
    return page;
  }

  /** Only internal forwards reach it; a direct request gets 404. */
  @RequestMapping("/refused")
  ModelAndView refused(HttpServletRequest request) {
    Object reason = request.getAttribute("/refused");
    if (reason instanceof ProblemDetail problem) {
      return PageExceptionHandler.page(
          HttpStatus.valueOf(problem.getStatus()),
          String.valueOf(problem.getTitle()),
          String.valueOf(problem.getDetail()));
    }
    return reason == null
        ? PageExceptionHandler.page(
            HttpStatus.NOT_FOUND, "Not here", "There is no page at this address.")
        : PageExceptionHandler.page(HttpStatus.FORBIDDEN, "You may not do this", reason.toString());
  }
}
