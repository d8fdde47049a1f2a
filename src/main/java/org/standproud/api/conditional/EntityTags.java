package org.standproud.api.conditional;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;

/**
 * An answer that the caller, and nobody on the way, may keep, if it asks each time whether it still
 * holds: even an answer that never changes may be withheld one day.
 */
public final class EntityTags {

  /** What a kept answer is subject to. */
  public static final String ASK_EACH_TIME = "private, no-cache";

  private EntityTags() {}

  /**
   * Begins the answer; a request whose If-None-Match names the tag is answered with 304.
   *
   * @param response takes the header that says how the answer may be kept
   * @param tag changes when the answer does
   */
  public static ResponseEntity.BodyBuilder under(HttpServletResponse response, String tag) {
    response.setHeader(HttpHeaders.CACHE_CONTROL, ASK_EACH_TIME);
    return ResponseEntity.ok().eTag(tag);
  }
}
