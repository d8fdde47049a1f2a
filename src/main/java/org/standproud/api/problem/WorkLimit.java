package org.standproud.api.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.HandlerInterceptor;
import org.standproud.refusal.TooMuchWorkException;

/**
 * Limits concurrent calls that keep a core busy for seconds, first come, first served, so that
 * assessments go on meanwhile. A few more wait for a while; the rest are refused at once.
 */
public final class WorkLimit implements HandlerInterceptor {

  /** Addresses of long work. */
  public static final List<String> ADDRESSES =
      List.of(
          "/v1/assessments/*/remedies",
          "/v1/assessments/*/other-holds",
          "/v1/assessments/*/questions",
          "/v1/assessments/*/envelope",
          "/v1/assessments/*/envelope.svg",
          "/v1/assessments/*/plan",
          "/v1/assessments/*/chance",
          "/v1/jobs",
          "/v1/rule-base/checks",
          "/v1/tap-tests",
          "/v1/rule-base/trials",
          "/assessments/*/remedies",
          "/assessments/*/other-holds",
          "/assessments/*/questions",
          "/assessments/*/plan",
          "/assessments/*/plots",
          "/jobs/route",
          "/rules/edit");

  private static final String HELD = WorkLimit.class.getName();

  private final int most;
  private final int mostWaiting;
  private final Duration patience;
  private final Semaphore free;

  /**
   * Creates the limit.
   *
   * @param most concurrent calls
   * @param mostWaiting calls that may wait
   * @param patience how long each waits
   */
  public WorkLimit(int most, int mostWaiting, Duration patience) {
    this.most = most;
    this.mostWaiting = mostWaiting;
    this.patience = patience;
    this.free = new Semaphore(most, true);
  }

  @Override
  public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler)
      throws InterruptedException {
    boolean atOnce = !free.hasQueuedThreads() && free.tryAcquire();
    if (!atOnce
        && (free.getQueueLength() >= mostWaiting
            || !free.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS))) {
      throw new TooMuchWorkException(most);
    }
    request.setAttribute(HELD, free);
    return true;
  }

  @Override
  public void afterCompletion(
      HttpServletRequest request,
      HttpServletResponse response,
      Object handler,
      @Nullable Exception fault) {
    if (request.getAttribute(HELD) != null) {
      request.removeAttribute(HELD);
      free.release();
    }
  }

  /** Number of waiting calls. */
  public int waiting() {
    return free.getQueueLength();
  }
}
