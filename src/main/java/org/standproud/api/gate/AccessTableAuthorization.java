package org.standproud.api.gate;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;
import org.standproud.access.AccessTable;
import org.standproud.access.AccessTable.Row;

/** The table of access as it meets requests. */
final class AccessTableAuthorization {

  /**
   * A row with what tells whether a request is its.
   *
   * @param row the row
   * @param fits tells
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

  /** The row that decides a request; the last one fits every request. */
  static Row row(HttpServletRequest request) {
    return RULES.stream().filter(r -> r.fits().matches(request)).findFirst().orElseThrow().row();
  }
}
