package org.standproud.refusal;

/** An invalid parameter. */
public final class BadParameterException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param name its name
   * @param wanted what is allowed
   */
  public BadParameterException(String name, String wanted) {
    super(RefusalKind.BAD_PARAMETER, "The parameter " + name + " cannot be used: " + wanted + ".");
  }
}
