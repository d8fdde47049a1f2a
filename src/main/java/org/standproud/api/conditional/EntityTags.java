package org.standproud.api.conditional;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;

/**
 * Sets headers so that only the client may cache an answer, and must revalidate it each time: even
 * an immutable answer may be withheld later.
 */
public final class EntityTags {

  /** The Cache-Control value. */
  public static final String ASK_EACH_TIME = "private, no-cache";

  private EntityTags() {}

  /**
   * Starts the answer; a request whose If-None-Match matches the tag is answered with 304.
   *
   * @param response gets the Cache-Control header
   * @param tag changes when the answer does
   */
  public static ResponseEntity.BodyBuilder under(HttpServletResponse response, String tag) {
    response.setHeader(HttpHeaders.CACHE_CONTROL, ASK_EACH_TIME);
    return ResponseEntity.ok().eTag(tag);
  }
}
