package org.standproud.web.pages;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.security.Principal;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What every page knows beside its own subject: who is signed in. */
@ControllerAdvice(basePackages = "org.standproud.web")
class CurrentUserAdvice {

  /** The name of who is signed in; null where nobody is, or need be. */
  @ModelAttribute("signedIn")
  @Nullable String signedIn(HttpServletRequest request) {
    HttpSession session = request.getSession(false);
    Principal caller = request.getUserPrincipal();
    return session == null || caller == null ? null : caller.getName();
  }

  /** The token of forms goes with a cookie, which has to be set before the page begins. */
  @ModelAttribute
  void formToken(@Nullable CsrfToken token) {
    if (token != null) {
      token.getToken();
    }
  }
}
