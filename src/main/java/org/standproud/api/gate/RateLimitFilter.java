package org.standproud.api.gate;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.standproud.access.Caller;

/**
 * Limits the calls a minute of each known caller, at each replica, with an evenly refilled bucket.
 * Only callers with a key or a token have a bucket, so there are at most as many as the shop has
 * callers.
 */
final class RateLimitFilter extends OncePerRequestFilter {

  private final long perMinute;
  private final AccessDenialHandler refusals;
  private final Map<String, Bucket> buckets = new ConcurrentHashMap<>();

  /**
   * Creates the filter.
   *
   * @param perMinute calls a minute, at least one
   * @param refusals answers callers over the limit
   */
  RateLimitFilter(long perMinute, AccessDenialHandler refusals) {
    this.perMinute = perMinute;
    this.refusals = refusals;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (SecurityContextHolder.getContext().getAuthentication()
        instanceof CallerAuthentication known) {
      Caller caller = known.getPrincipal();
      ConsumptionProbe probe = bucket(caller.name()).tryConsumeAndReturnRemaining(1);
      if (!probe.isConsumed()) {
        refusals.tooOften(request, response, Duration.ofNanos(probe.getNanosToWaitForRefill()));
        return;
      }
    }
    chain.doFilter(request, response);
  }

  private Bucket bucket(String caller) {
    return buckets.computeIfAbsent(
        caller,
        name ->
            Bucket.builder()
                .addLimit(
                    limit ->
                        limit.capacity(perMinute).refillGreedy(perMinute, Duration.ofMinutes(1)))
                .build());
  }
}
