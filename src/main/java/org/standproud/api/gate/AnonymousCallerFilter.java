package org.standproud.api.gate;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;
import org.standproud.access.Caller;

/** Authenticates every request as the anonymous caller while access control is off. */
final class AnonymousCallerFilter extends OncePerRequestFilter {

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    SecurityContextHolder.setContext(
        new SecurityContextImpl(new CallerAuthentication(Caller.ANONYMOUS)));
    chain.doFilter(request, response);
  }
}
