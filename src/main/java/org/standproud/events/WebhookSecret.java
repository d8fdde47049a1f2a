package org.standproud.events;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * A secret shared with one subscriber, which proves that an event comes from here, unchanged and
 * recent. Format and use follow the Standard Webhooks specification 1.0.0: {@code whsec_} and
 * base64; the signature is HMAC-SHA256 over id, time and body, separated by full stops.
 */
public final class WebhookSecret {

  private static final String PREFIX = "whsec_";
  private static final int NEW_BYTES = 32;
  private static final String HMAC = "HmacSHA256";

  private final byte[] key;

  private WebhookSecret(byte[] key) {
    this.key = key;
  }

  /** A new random secret. */
  public static WebhookSecret fresh() {
    byte[] key = new byte[NEW_BYTES];
    new SecureRandom().nextBytes(key);
    return new WebhookSecret(key);
  }

  /**
   * A stored secret.
   *
   * @param text the text from {@link #text()}
   */
  static WebhookSecret of(String text) {
    return new WebhookSecret(Base64.getDecoder().decode(text.substring(PREFIX.length())));
  }

  /** The text returned to the subscriber, once. */
  public String text() {
    return PREFIX + Base64.getEncoder().encodeToString(key);
  }

  /**
   * The signature of a message.
   *
   * @param id id of the message
   * @param seconds time of the attempt, in seconds since 1970
   * @param body its body
   */
  String sign(String id, long seconds, String body) {
    try {
      Mac mac = Mac.getInstance(HMAC);
      mac.init(new SecretKeySpec(key, HMAC));
      byte[] signed =
          mac.doFinal((id + "." + seconds + "." + body).getBytes(StandardCharsets.UTF_8));
      return "v1," + Base64.getEncoder().encodeToString(signed);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java platform has " + HMAC, e);
    }
  }

  /** Hides the secret, which must not get into a log. */
  @Override
  public String toString() {
    return PREFIX + "…";
  }
}
