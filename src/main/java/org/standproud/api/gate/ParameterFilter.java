package org.standproud.api.gate;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.web.filter.OncePerRequestFilter;
import org.standproud.api.problem.Problems;
import org.standproud.refusal.RefusalKind;

/**
 * Reads the parameters of a query and of a form once, before any other filter: strictly, within a
 * time and a length, and only so many at a time from callers who have not signed in. The server
 * itself would read a slow form for ever, and would throw at a broken escape wherever the first
 * parameter is read.
 */
final class ParameterFilter extends OncePerRequestFilter {

  /** For a form sent before sign-in: a key and a token. */
  static final int STRANGERS_BYTES = 16_384;

  /** For any other form: the longest card with every byte escaped, and its fields. */
  static final int FORM_BYTES = 262_144;

  private static final int PIECE_BYTES = 8_192;

  private final AccessDenialHandler refusals;
  private final @Nullable StrangerBodies strangers;
  private final Duration slowest;

  /**
   * Creates the filter.
   *
   * @param refusals answers refused requests
   * @param strangers limits concurrent forms of callers who have not signed in; null without access
   *     control
   * @param slowest how long a form may take to arrive
   */
  ParameterFilter(
      AccessDenialHandler refusals, @Nullable StrangerBodies strangers, Duration slowest) {
    this.refusals = refusals;
    this.strangers = strangers;
    this.slowest = slowest;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (request.getDispatcherType() != DispatcherType.REQUEST) {
      chain.doFilter(request, response);
      return;
    }
    byte[] form = null;
    if (isForm(request)) {
      if (strangers == null || isSignedIn(request)) {
        form = read(request, response, FORM_BYTES);
      } else {
        try (StrangerBodies.Place place = strangers.place(request.getRemoteAddr())) {
          if (place == null) {
            response.setHeader(HttpHeaders.RETRY_AFTER, "5");
            refuse(
                request, response, RefusalKind.TOO_MANY_CALLS, "Too many forms arrive at a time.");
            return;
          }
          form = read(request, response, STRANGERS_BYTES);
        }
      }
      if (form == null) {
        return;
      }
    }
    Map<String, String[]> parameters;
    try {
      String text = form == null ? null : new String(form, StandardCharsets.ISO_8859_1);
      parameters = FormParameters.of(request.getQueryString(), text);
    } catch (FormParameters.Malformed e) {
      refuse(request, response, RefusalKind.REFUSED, String.valueOf(e.getMessage()));
      return;
    }
    chain.doFilter(new ParsedRequest(request, parameters, form), response);
  }

  /** The form, or null if it was refused. */
  private byte @Nullable [] read(
      HttpServletRequest request, HttpServletResponse response, int mostBytes)
      throws ServletException, IOException {
    long end = System.nanoTime() + slowest.toNanos();
    ByteArrayOutputStream form = new ByteArrayOutputStream();
    byte[] piece = new byte[PIECE_BYTES];
    InputStream in = request.getInputStream();
    try {
      int read;
      while ((read = in.read(piece)) >= 0) {
        form.write(piece, 0, read);
        if (form.size() > mostBytes) {
          String detail = "A form has at most " + mostBytes + " bytes.";
          refuse(request, response, RefusalKind.TOO_LARGE, detail);
          return null;
        }
        if (System.nanoTime() - end > 0) {
          refuse(request, response, RefusalKind.TOO_SLOW, RefusalKind.TOO_SLOW.meaning());
          return null;
        }
      }
      return form.toByteArray();
    } catch (IOException e) {
      boolean stalled =
          e instanceof SocketTimeoutException || e.getCause() instanceof SocketTimeoutException;
      RefusalKind kind = stalled ? RefusalKind.TOO_SLOW : RefusalKind.REFUSED;
      refuse(request, response, kind, stalled ? kind.meaning() : "The form was cut short.");
      return null;
    }
  }

  private void refuse(
      HttpServletRequest request, HttpServletResponse response, RefusalKind kind, String detail)
      throws ServletException, IOException {
    // The error page must not read the parameters again.
    refusals.unread(
        new ParsedRequest(request, Map.of(), new byte[0]), response, Problems.of(kind, detail));
  }

  private static boolean isForm(HttpServletRequest request) {
    String type = request.getContentType();
    return type != null
        && type.strip()
            .toLowerCase(Locale.ROOT)
            .startsWith(MediaType.APPLICATION_FORM_URLENCODED_VALUE)
        && (request.getContentLengthLong() != 0
            || request.getHeader(HttpHeaders.TRANSFER_ENCODING) != null);
  }

  private static boolean isSignedIn(HttpServletRequest request) {
    HttpSession session = request.getSession(false);
    return session != null
        && session.getAttribute(HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY)
            != null;
  }
}
