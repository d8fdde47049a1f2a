package org.standproud.api.gate;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses requests that another site's page makes a browser send: by Sec-Fetch-Site where the
 * browser sends it, otherwise by Origin. Forms also carry a token, but an open service has calls
 * that need neither key nor form. Clients that are not browsers send neither header and pass.
 */
final class CrossSiteRequestFilter extends OncePerRequestFilter {

  private final AccessDeniedHandler denied;

  CrossSiteRequestFilter(AccessDeniedHandler denied) {
    this.denied = denied;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (CsrfFilter.DEFAULT_CSRF_MATCHER.matches(request) && fromElsewhere(request)) {
      denied.handle(request, response, new AccessDeniedException("Another site's page sent this."));
      return;
    }
    chain.doFilter(request, response);
  }

  private static boolean fromElsewhere(HttpServletRequest request) {
    String site = request.getHeader("Sec-Fetch-Site");
    if (site != null) {
      return !site.equals("same-origin");
    }
    String origin = request.getHeader(HttpHeaders.ORIGIN);
    return origin != null && !authority(origin).equals(host(request));
  }

  private static @Nullable String host(HttpServletRequest request) {
    String host = request.getHeader(HttpHeaders.HOST);
    return host == null ? null : host.toLowerCase(Locale.ROOT);
  }

  /** Host and port of an origin; an invalid origin, such as null, equals no host. */
  private static String authority(String origin) {
    try {
      String authority = URI.create(origin).getAuthority();
      return authority == null ? "" : authority.toLowerCase(Locale.ROOT);
    } catch (IllegalArgumentException e) {
      return "";
    }
  }
}
