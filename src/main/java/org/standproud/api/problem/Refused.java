package org.standproud.api.problem;

import java.util.Map;

/** Something that is refused, as a problem of some kind with what that kind tells besides. */
public final class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final ProblemKind kind;
  private final transient Map<String, Object> members;

  /**
   * Says why.
   *
   * @param kind the kind of problem
   * @param detail what happened this time, in sentences
   */
  public Refused(ProblemKind kind, String detail) {
    this(kind, detail, Map.of());
  }

  /**
   * Says why, and lists what is wrong.
   *
   * @param kind the kind of problem
   * @param detail what happened this time, in sentences
   * @param members members of the problem by name
   */
  public Refused(ProblemKind kind, String detail, Map<String, Object> members) {
    super(detail);
    this.kind = kind;
    this.members = Map.copyOf(members);
  }

  /** The kind of problem. */
  public ProblemKind kind() {
    return kind;
  }

  /** Members of the problem by name. */
  public Map<String, Object> members() {
    return members;
  }
}
