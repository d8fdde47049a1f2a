package org.standproud.refusal;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A request refused by a service, with a reason for the caller. It knows no HTTP. */
public class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final RefusalKind kind;
  private final transient Map<String, Object> members;

  /**
   * Creates a refusal without further members.
   *
   * @param kind the kind of refusal
   * @param detail what happened this time, in sentences for the caller
   */
  public Refusal(RefusalKind kind, String detail) {
    this(kind, detail, Map.of());
  }

  /**
   * Creates a refusal with members, such as a list of errors.
   *
   * @param kind the kind of refusal
   * @param detail what happened this time, in sentences for the caller
   * @param members further members of the problem by name
   */
  public Refusal(RefusalKind kind, String detail, Map<String, Object> members) {
    this(kind, detail, members, null);
  }

  /**
   * Creates a refusal with its cause.
   *
   * @param kind the kind of refusal
   * @param detail what happened this time, in sentences for the caller
   * @param members further members of the problem by name
   * @param cause the cause
   */
  public Refusal(
      RefusalKind kind, String detail, Map<String, Object> members, @Nullable Throwable cause) {
    super(detail, cause);
    this.kind = kind;
    this.members = Map.copyOf(members);
  }

  /** The kind of refusal. */
  public RefusalKind kind() {
    return kind;
  }

  /** Further members of the problem by name. */
  public Map<String, Object> members() {
    return members;
  }
}
