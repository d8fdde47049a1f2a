package org.standproud.api.gate;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.standproud.access.keys.KeyRing;

/** Ends the session of a key that was revoked or has expired since sign-in. */
final class SessionKeyFilter extends OncePerRequestFilter {

  private final KeyRing keys;

  SessionKeyFilter(KeyRing keys) {
    this.keys = keys;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    String id =
        SecurityContextHolder.getContext().getAuthentication() instanceof CallerAuthentication known
            ? known.getPrincipal().keyId()
            : null;
    if (id != null && !keys.stillOpen(id)) {
      SecurityContextHolder.clearContext();
      HttpSession session = request.getSession(false);
      if (session != null) {
        session.invalidate();
      }
    }
    chain.doFilter(request, response);
  }
}
