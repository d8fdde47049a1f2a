package org.standproud.web.pages;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * What a browser may do with a page: run no script at all, load nothing but our own style sheet and
 * drawings, send forms only here, and be framed by no one. A form sent from another site's page is
 * refused by what browsers say of themselves: Sec-Fetch-Site where they send it, Origin otherwise.
 * There is no session and no cookie that a forged form could ride on. What comes from no browser
 * has neither header and passes: it could as well use the API.
 */
@Component
class PageHeaders extends OncePerRequestFilter {

  private static final String POLICY =
      "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self';"
          + " base-uri 'none'; frame-ancestors 'none'";

  @Override
  protected boolean shouldNotFilter(HttpServletRequest request) {
    return request.getRequestURI().startsWith("/v1/");
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    response.setHeader("Content-Security-Policy", POLICY);
    response.setHeader("Referrer-Policy", "same-origin");
    response.setHeader("Cross-Origin-Opener-Policy", "same-origin");
    response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
    if (!request.getRequestURI().startsWith("/look/")) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    }
    if (request.getMethod().equals("POST") && fromElsewhere(request)) {
      response.sendError(HttpServletResponse.SC_FORBIDDEN);
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

  /** Host and port of an origin; an origin that is none, such as null, equals no host. */
  private static String authority(String origin) {
    try {
      String authority = URI.create(origin).getAuthority();
      return authority == null ? "" : authority.toLowerCase(Locale.ROOT);
    } catch (IllegalArgumentException e) {
      return "";
    }
  }
}
