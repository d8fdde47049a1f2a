package org.standproud.access;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.standproud.settings.SettingRefused;

/**
 * Who may call.
 *
 * @param access open: every caller is anonymous, and only this machine may call. keys: every caller
 *     sends a key, or a token where spring.security.oauth2.resourceserver.jwt.issuer-uri (or
 *     jwk-set-uri) is set
 * @param tokens how tokens are read
 * @param limits limits of one caller
 */
@ConfigurationProperties("standproud")
public record AccessProperties(AccessMode access, Tokens tokens, Limits limits) {

  /** Refuses a missing mode. */
  public AccessProperties {
    SettingRefused.given("standproud.access", access, "One of open, keys is allowed.");
  }

  /**
   * How tokens are read.
   *
   * @param nameClaim the claim with the name of the caller
   * @param rolesClaim the claim with the roles: a list, or words separated by spaces, of caller
   *     rule-editor rule-publisher auditor operator
   */
  public record Tokens(String nameClaim, String rolesClaim) {

    /** Refuses a claim without a name. */
    public Tokens {
      SettingRefused.given("standproud.tokens.name-claim", nameClaim, "A claim is required.");
      SettingRefused.given("standproud.tokens.roles-claim", rolesClaim, "A claim is required.");
    }
  }

  /**
   * Limits of one caller.
   *
   * @param callsPerMinute calls of each caller with a key or a token, at each replica; 0 for no
   *     limit
   */
  public record Limits(long callsPerMinute) {

    /** Refuses a number out of range. */
    public Limits {
      SettingRefused.range(
          "standproud.limits.calls-per-minute", callsPerMinute, 0, Integer.MAX_VALUE);
    }
  }
}
