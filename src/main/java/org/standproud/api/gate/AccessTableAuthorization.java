package org.standproud.api.gate;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.standproud.access.AccessTable;
import org.standproud.access.AccessTable.Row;

/** Authorizes requests by the access table. */
final class AccessTableAuthorization {

  /**
   * A row with its request matcher.
   *
   * @param row the row
   * @param fits whether a request matches it
   */
  record Rule(Row row, RequestMatcher fits) {

    static Rule of(Row row) {
      RequestMatcher address = PathPatternRequestMatcher.withDefaults().matcher(row.pattern());
      return row.methods().isEmpty()
          ? new Rule(row, address)
          : new Rule(row, r -> row.methods().contains(r.getMethod()) && address.matches(r));
    }
  }

  private static final List<Rule> RULES = AccessTable.rows().stream().map(Rule::of).toList();

  private AccessTableAuthorization() {}

  static List<Rule> rules() {
    return RULES;
  }

  /** The row of a request; the last row matches every request. */
  static Row row(HttpServletRequest request) {
    return RULES.stream().filter(r -> r.fits().matches(request)).findFirst().orElseThrow().row();
  }
}
