package org.standproud.access;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.standproud.settings.SettingRefused;

/**
 * Who may call.
 *
 * @param access open: every caller is anonymous, and only this machine may call. keys: every caller
 *     shows a key, or a token where spring.security.oauth2.resourceserver.jwt.issuer-uri (or
 *     jwk-set-uri) is set
 * @param tokens how tokens are read
 * @param limits how often one caller may call
 */
@ConfigurationProperties("standproud")
public record AccessProperties(AccessMode access, Tokens tokens, Limits limits) {

  /** Refuses a mode that is not given. */
  public AccessProperties {
    SettingRefused.given("standproud.access", access, "Allowed is one of open, keys.");
  }

  /**
   * How tokens are read.
   *
   * @param nameClaim the claim that names the caller
   * @param rolesClaim the claim with the roles: a list, or words with spaces between, of caller
   *     rule-editor rule-publisher auditor operator
   */
  public record Tokens(String nameClaim, String rolesClaim) {

    /** Refuses a claim without a name. */
    public Tokens {
      SettingRefused.given("standproud.tokens.name-claim", nameClaim, "A claim has to be named.");
      SettingRefused.given("standproud.tokens.roles-claim", rolesClaim, "A claim has to be named.");
    }
  }

  /**
   * How often one caller may call.
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
