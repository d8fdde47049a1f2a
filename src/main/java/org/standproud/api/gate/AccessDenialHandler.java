package org.standproud.api.gate;

import io.github.bucket4j.TimeMeter;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authorization.AuthorizationDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.firewall.RequestRejectedException;
import org.springframework.security.web.firewall.RequestRejectedHandler;
import org.standproud.access.AccessTable.Row;
import org.standproud.access.Caller;
import org.standproud.access.Role;
import org.standproud.access.journal.AccessEntry;
import org.standproud.access.journal.AccessJournal;
import org.standproud.api.problem.Problems;
import org.standproud.refusal.RefusalKind;
import tools.jackson.databind.json.JsonMapper;

/** Answers and journals denied calls: clients get a problem, browsers a page. */
final class AccessDenialHandler
    implements AuthenticationEntryPoint, AccessDeniedHandler, RequestRejectedHandler {

  /** The page for a person without the role. */
  static final String PAGE = "/refused";

  private static final String TOO_MANY_KEYS = "Too many invalid keys were sent from this address.";

  private static final int LONGEST_METHOD = 10;
  private static final int LONGEST_NOTE = 200;

  private final AccessJournal journal;
  private final JsonMapper mapper;
  private final RefusedAttempts attempts = new RefusedAttempts(TimeMeter.SYSTEM_NANOTIME);
  private final AuthenticationEntryPoint signIn = signIn();

  AccessDenialHandler(AccessJournal journal, JsonMapper mapper) {
    this.journal = journal;
    this.mapper = mapper;
  }

  /** 401: no caller is known. */
  @Override
  public void commence(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
      throws IOException, ServletException {
    String keyId = e instanceof KeyAuthenticationException refused ? refused.keyId() : null;
    if (isForPeople(request)) {
      signIn.commence(request, response, e);
      return;
    }
    boolean shown = request.getHeader(HttpHeaders.AUTHORIZATION) != null;
    String reason =
        !shown
            ? "No key was sent."
            : e instanceof KeyAuthenticationException
                ? String.valueOf(e.getMessage())
                : "No such key.";
    Duration wait = shown ? attempts.refused(request.getRemoteAddr()) : Duration.ZERO;
    if (!wait.isZero()) {
      tooOften(request, response, wait, TOO_MANY_KEYS);
      return;
    }
    journal.denied(about(request, HttpStatus.UNAUTHORIZED, keyId, reason));
    response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
    send(response, Problems.of(RefusalKind.KEY_WANTED, reason));
  }

  /** 403: the caller lacks the role. */
  @Override
  public void handle(
      HttpServletRequest request, HttpServletResponse response, AccessDeniedException e)
      throws IOException, ServletException {
    String reason = reason(request, e);
    journal.denied(about(request, HttpStatus.FORBIDDEN, null, reason));
    if (isForPeople(request)) {
      response.setStatus(HttpStatus.FORBIDDEN.value());
      request.setAttribute(PAGE, reason);
      request.getRequestDispatcher(PAGE).forward(request, response);
      return;
    }
    send(response, Problems.of(RefusalKind.NOT_ALLOWED, reason));
  }

  /** 400: the address, method or a header is invalid. */
  @Override
  public void handle(
      HttpServletRequest request, HttpServletResponse response, RequestRejectedException e)
      throws IOException {
    send(response, Problems.of(RefusalKind.REFUSED));
  }

  /** The request could not be read far enough to identify the caller. */
  void unread(HttpServletRequest request, HttpServletResponse response, ProblemDetail problem)
      throws IOException, ServletException {
    response.setStatus(problem.getStatus());
    if (isForPeople(request)) {
      request.setAttribute(PAGE, problem);
      request.getRequestDispatcher(PAGE).forward(request, response);
      return;
    }
    send(response, problem);
  }

  /** 429: too many calls. */
  void tooOften(HttpServletRequest request, HttpServletResponse response, Duration wait)
      throws IOException {
    tooOften(request, response, wait, "This caller has used up its calls for now.");
  }

  private void tooOften(
      HttpServletRequest request, HttpServletResponse response, Duration wait, String reason)
      throws IOException {
    journal.denied(about(request, HttpStatus.TOO_MANY_REQUESTS, null, reason));
    long seconds = Math.max(1, wait.plusMillis(999).toSeconds());
    response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(seconds));
    send(response, Problems.of(RefusalKind.TOO_MANY_CALLS, reason));
  }

  /** A sign-in with an invalid key. */
  void signInRefused(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
      throws IOException {
    String keyId = e instanceof KeyAuthenticationException refused ? refused.keyId() : null;
    Duration wait = attempts.refused(request.getRemoteAddr());
    if (!wait.isZero()) {
      tooOften(request, response, wait, TOO_MANY_KEYS);
      return;
    }
    journal.denied(about(request, HttpStatus.UNAUTHORIZED, keyId, String.valueOf(e.getMessage())));
    response.sendRedirect("/sign-in?refused");
  }

  private static String reason(HttpServletRequest request, AccessDeniedException e) {
    if (e instanceof CsrfException) {
      return "The form was not sent from a page of this service, or was open for too long.";
    }
    if (!(e instanceof AuthorizationDeniedException)) {
      return String.valueOf(e.getMessage());
    }
    return AccessTableAuthorization.row(request).roles().stream()
        .sorted()
        .map(Role::words)
        .collect(Collectors.joining(" or ", "It takes the role ", "."));
  }

  private static AccessEntry.About about(
      HttpServletRequest request, HttpStatus status, @Nullable String keyId, String reason) {
    Caller caller = caller();
    Row row = AccessTableAuthorization.row(request);
    return new AccessEntry.About(
        caller == null ? null : caller.name(),
        caller == null ? keyId : caller.keyId(),
        request.getRemoteAddr(),
        shortened(request.getMethod(), LONGEST_METHOD),
        row.pattern(),
        status.value(),
        shortened(reason, LONGEST_NOTE));
  }

  /** Never redirects to an address taken from a Host header. */
  private static AuthenticationEntryPoint signIn() {
    LoginUrlAuthenticationEntryPoint page = new LoginUrlAuthenticationEntryPoint("/sign-in");
    page.setFavorRelativeUris(true);
    return page;
  }

  private static @Nullable Caller caller() {
    return SecurityContextHolder.getContext().getAuthentication()
            instanceof CallerAuthentication known
        ? known.getPrincipal()
        : null;
  }

  /** Whether a browser shows a page, rather than a client calling the API. */
  static boolean isForPeople(HttpServletRequest request) {
    String accept = request.getHeader(HttpHeaders.ACCEPT);
    return accept != null
        && accept.toLowerCase(Locale.ROOT).contains(MediaType.TEXT_HTML_VALUE)
        && request.getHeader(HttpHeaders.AUTHORIZATION) == null;
  }

  private static String shortened(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest);
  }

  private void send(HttpServletResponse response, ProblemDetail problem) throws IOException {
    response.setStatus(problem.getStatus());
    response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
    response
        .getOutputStream()
        .write(mapper.writeValueAsString(problem).getBytes(StandardCharsets.UTF_8));
  }
}
