package org.standproud.web.pages;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.security.Principal;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Adds the signed-in user to every page. */
@ControllerAdvice(basePackages = "org.standproud.web")
class CurrentUserAdvice {

  /** Name of the signed-in user; null if there is none. */
  @ModelAttribute("signedIn")
  @Nullable String signedIn(HttpServletRequest request) {
    HttpSession session = request.getSession(false);
    Principal caller = request.getUserPrincipal();
    return session == null || caller == null ? null : caller.getName();
  }

  /** The form token sets a cookie, which must happen before the page is written. */
  @ModelAttribute
  void formToken(@Nullable CsrfToken token) {
    if (token != null) {
      token.getToken();
    }
  }
}
