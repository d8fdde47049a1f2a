package org.standproud.access;

import static org.standproud.access.Role.AUDITOR;
import static org.standproud.access.Role.CALLER;
import static org.standproud.access.Role.OPERATOR;
import static org.standproud.access.Role.RULE_EDITOR;
import static org.standproud.access.Role.RULE_PUBLISHER;

import java.util.List;
import java.util.Set;

/**
 * The access table: the first row that matches a request decides. It is the only definition; the
 * table in {@code api-docs/access.md} is generated from it, and a test refuses an address that only
 * the last row covers.
 */
public final class AccessTable {

  private static final Set<String> READ = Set.of("GET", "HEAD");
  private static final Set<String> WRITE = Set.of("POST", "PUT", "PATCH", "DELETE");
  private static final Set<String> ANY_METHOD = Set.of();
  private static final Set<Role> EVERYBODY = Set.of();
  private static final Set<Role> ANY_ROLE = Set.of(Role.values());

  private static final List<Row> ROWS =
      List.of(
          new Row(READ, "/actuator/health/**", EVERYBODY, "liveness and readiness"),
          new Row(READ, "/problems/**", EVERYBODY, "the meaning of each kind of problem"),
          new Row(READ, "/v3/**", EVERYBODY, "the contract"),
          new Row(READ, "/look/**", EVERYBODY, "style sheet and icon of the pages"),
          new Row(READ, "/webjars/**", EVERYBODY, "the library that replaces parts of a page"),
          new Row(ANY_METHOD, "/sign-in", EVERYBODY, "sign in to the pages with a key"),
          new Row(ANY_METHOD, "/sign-out", EVERYBODY, "sign out"),
          new Row(READ, "/actuator/**", ANY_ROLE, "metrics: counts and times, no job"),
          new Row(ANY_METHOD, "/v1/access/**", Set.of(OPERATOR), "keys"),
          new Row(WRITE, "/v1/audit/withholdings/**", Set.of(OPERATOR), "remove texts of records"),
          new Row(READ, "/v1/audit/chain", Set.of(AUDITOR, OPERATOR), "the whole chain, a backup"),
          new Row(READ, "/v1/audit/public-key", ANY_ROLE, "the key that verifies checkpoints"),
          new Row(
              ANY_METHOD, "/v1/audit/**", Set.of(AUDITOR), "records, use of cards, the journal"),
          new Row(
              READ,
              "/v1/assessments/*/replay",
              Set.of(AUDITOR, RULE_EDITOR, RULE_PUBLISHER),
              "replay an answer"),
          new Row(
              READ,
              "/v1/assessments/*/reassessment",
              Set.of(AUDITOR, RULE_EDITOR, RULE_PUBLISHER),
              "judge with today's cards"),
          new Row(READ, "/v1/assessments/**", ANY_ROLE, "assessments and their details"),
          new Row(WRITE, "/v1/assessments/**", Set.of(CALLER), "check set-ups; accept findings"),
          new Row(ANY_METHOD, "/v1/subscriptions/**", Set.of(OPERATOR), "webhook subscriptions"),
          new Row(WRITE, "/v1/tap-tests", ANY_ROLE, "find note and damping in a recording"),
          new Row(WRITE, "/v1/jobs", Set.of(CALLER), "plan a whole job; nothing is recorded"),
          new Row(READ, "/v1/vocabulary", ANY_ROLE, "the facts that cards read"),
          new Row(READ, "/v1/catalogue/**", ANY_ROLE, "machines, vises, cutters, materials"),
          new Row(WRITE, "/v1/catalogue/**", Set.of(RULE_EDITOR), "change the catalogue"),
          new Row(READ, "/v1/rules/**", ANY_ROLE, "the cards"),
          new Row(WRITE, "/v1/rules/reload", Set.of(RULE_PUBLISHER), "reload the folder of cards"),
          new Row(WRITE, "/v1/rules/**", Set.of(RULE_EDITOR), "propose a card"),
          new Row(READ, "/v1/rule-base/**", ANY_ROLE, "revisions, proposals and their effect"),
          new Row(
              WRITE,
              "/v1/rule-base/proposals/*/publication",
              Set.of(RULE_PUBLISHER),
              "publish proposed cards"),
          new Row(
              WRITE,
              "/v1/rule-base/revisions/*/rollback",
              Set.of(RULE_PUBLISHER),
              "restore old cards"),
          new Row(
              WRITE,
              "/v1/rule-base/**",
              Set.of(RULE_EDITOR, RULE_PUBLISHER),
              "check, try and propose cards; see what they would change"),
          new Row(READ, "/tap-test", ANY_ROLE, "the page that listens to a tapped plate"),
          new Row(READ, "/jobs/**", ANY_ROLE, "the page that plans a whole job"),
          new Row(READ, "/", ANY_ROLE, "the set-up page"),
          new Row(WRITE, "/", Set.of(CALLER), "check the set-up on the page"),
          new Row(WRITE, "/draft", ANY_ROLE, "check the set-up on the page without a record"),
          new Row(WRITE, "/assessments/*/compare", ANY_ROLE, "what a change would do"),
          new Row(READ, "/assessments/**", ANY_ROLE, "pages and sheet of an answer"),
          new Row(READ, "/records/all.*", Set.of(AUDITOR), "records as files"),
          new Row(READ, "/records/chain", Set.of(AUDITOR), "the page that checks the chain"),
          new Row(
              READ,
              "/records/*/replay",
              Set.of(AUDITOR, RULE_EDITOR, RULE_PUBLISHER),
              "the page that replays an answer"),
          new Row(
              READ,
              "/records/*/reassessment",
              Set.of(AUDITOR, RULE_EDITOR, RULE_PUBLISHER),
              "the page that judges with today's cards"),
          new Row(READ, "/records/**", ANY_ROLE, "the pages of the records"),
          new Row(WRITE, "/records/**", Set.of(CALLER), "accept findings on their page"),
          new Row(READ, "/rules/**", ANY_ROLE, "the pages of the cards"),
          new Row(WRITE, "/rules/publication", Set.of(RULE_PUBLISHER), "publish on the page"),
          new Row(
              WRITE,
              "/rules/proposals/*/publication",
              Set.of(RULE_PUBLISHER),
              "publish a proposal on the page"),
          new Row(
              WRITE,
              "/rules/history/*/rollback",
              Set.of(RULE_PUBLISHER),
              "restore old cards on" + " the page"),
          new Row(
              WRITE,
              "/rules/**",
              Set.of(RULE_EDITOR, RULE_PUBLISHER),
              "try and propose cards on the page"),
          new Row(ANY_METHOD, "/**", ANY_ROLE, "nothing: an unknown address"));

  private AccessTable() {}

  /**
   * One row.
   *
   * @param methods its methods; empty for any
   * @param pattern its addresses
   * @param roles roles that may, any of them; empty for everyone, with or without a key
   * @param what its content
   */
  public record Row(Set<String> methods, String pattern, Set<Role> roles, String what) {
    /** Copies the sets. */
    public Row {
      methods = Set.copyOf(methods);
      roles = Set.copyOf(roles);
    }

    /** Whether no key is needed. */
    public boolean open() {
      return roles.isEmpty();
    }
  }

  /** The rows; the first that matches decides. */
  public static List<Row> rows() {
    return ROWS;
  }
}
